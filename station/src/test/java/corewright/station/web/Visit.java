package corewright.station.web;

import corewright.bench.life.Role;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;

/**
 * A console on a free port, and somebody in front of it with a browser's manners and no browser.
 */
public final class Visit implements AutoCloseable {
  public static final String OWNER = "H. Oduya";
  public static final String PASSWORD = "copper and comb";

  private static final Pattern PROOF =
      Pattern.compile("name=\"proof\" (?:content|value)=\"([^\"]*)\"");

  private final Console console;
  private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
  private final HttpClient client;
  private final String base;
  private final boolean closes;
  private String proof = "";

  private Visit(Console console, boolean closes) {
    this(console, "http://127.0.0.1:" + console.port(), closes);
  }

  private Visit(Console console, String base, boolean closes) {
    this(console, base, closes, HttpClient.newBuilder());
  }

  private Visit(Console console, String base, boolean closes, HttpClient.Builder browser) {
    this.client = browser.cookieHandler(cookies).followRedirects(HttpClient.Redirect.NEVER).build();
    this.console = console;
    this.base = base;
    this.closes = closes;
  }

  /** A console on a shop's folder that has no account yet; nobody is signed in. */
  public static Visit to(Path folder) {
    return to(folder, Clock.system());
  }

  /** The same by another clock. */
  public static Visit to(Path folder, Clock clock) {
    return to(folder, clock, true);
  }

  private static Visit to(Path folder, Clock clock, boolean paced) {
    return new Visit(
        Console.open(
            () -> Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "console", clock),
            clock,
            Reach.here(0),
            paced),
        true);
  }

  /** The shop behind the console, to look at or to prepare. */
  public static Workshop workshop(Path folder) {
    return Workshop.open(
        Catalogue.ofHome(), folder, ShopFile.in(folder), "counter", Clock.system());
  }

  /**
   * A console in a process of its own; nobody is signed in.
   *
   * @param base as {@code http://127.0.0.1:7348}
   */
  public static Visit elsewhere(String base) {
    return new Visit(null, base, false);
  }

  /** The same over TLS, by somebody who trusts its certificate. */
  static Visit elsewhere(String base, SSLContext trust) {
    return new Visit(null, base, false, HttpClient.newBuilder().sslContext(trust));
  }

  /** Gives a shop its owner. */
  public static void owned(Path folder) {
    try (Workshop workshop = workshop(folder)) {
      workshop.ledger().accounts().put(OWNER, Role.OWNER, PASSWORD.toCharArray(), OWNER);
    }
  }

  /** A console with an owner, who is signed in. */
  public static Visit asOwner(Path folder) {
    return asOwner(folder, Clock.system(), true);
  }

  /** The same where emulated benches go as fast as they can, and nobody watches. */
  public static Visit asOwnerInHaste(Path folder) {
    return asOwner(folder, Clock.system(), false);
  }

  /** The same by another clock. */
  public static Visit asOwnerInHaste(Path folder, Clock clock) {
    return asOwner(folder, clock, false);
  }

  private static Visit asOwner(Path folder, Clock clock, boolean paced) {
    owned(folder);
    Visit visit = to(folder, clock, paced);
    visit.signIn(OWNER, PASSWORD);
    return visit;
  }

  /** Somebody else in front of the same console, with another browser; nobody is signed in. */
  public Visit another() {
    return new Visit(console, false);
  }

  /** A colleague with an account of their own, signed in at another browser. */
  public Visit colleague(String name, Role role) {
    console.house().workshop().ledger().accounts().put(name, role, PASSWORD.toCharArray(), OWNER);
    Visit other = another();
    other.signIn(name, PASSWORD);
    return other;
  }

  /** Where an answer sends the browser on to. */
  public static String location(HttpResponse<String> answer) {
    if (answer.statusCode() / 100 != 3) {
      throw new AssertionError(answer.statusCode() + " " + answer.body());
    }
    return answer.headers().firstValue("Location").orElse("");
  }

  /** Sends a form with one file in it. */
  public HttpResponse<String> upload(
      String path, Map<String, String> fields, String field, String filename, byte[] file) {
    String boundary = "----corewright-visit";
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    fields.forEach(
        (name, value) ->
            body.writeBytes(
                ("--"
                        + boundary
                        + "\r\nContent-Disposition: form-data; name=\""
                        + name
                        + "\"\r\n\r\n"
                        + value
                        + "\r\n")
                    .getBytes(StandardCharsets.UTF_8)));
    body.writeBytes(
        ("--"
                + boundary
                + "\r\nContent-Disposition: form-data; name=\""
                + field
                + "\"; filename=\""
                + filename
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8));
    body.writeBytes(file);
    body.writeBytes(("\r\n--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
    return send(
        HttpRequest.newBuilder(URI.create(at(path)))
            .header("Content-Type", "multipart/form-data; boundary=" + boundary)
            .header("X-Proof", proof)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
  }

  public Console console() {
    return console;
  }

  public String at(String path) {
    return base + path;
  }

  /** Signs in; what is asked for afterwards is asked as this person. */
  public HttpResponse<String> signIn(String name, String password) {
    get("/in");
    HttpResponse<String> answer = post("/in", Map.of("name", name, "password", password));
    if (answer.statusCode() == 303) {
      get("/");
    }
    return answer;
  }

  /** Asks for a page, and remembers the proof that its forms carry. */
  public HttpResponse<String> get(String path) {
    HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(at(path))).GET());
    Matcher found = PROOF.matcher(answer.body());
    if (found.find()) {
      proof = found.group(1);
    }
    return answer;
  }

  /** Sends a form with the proof of the last page. */
  public HttpResponse<String> post(String path, Map<String, String> fields) {
    return post(path, fields, proof);
  }

  /** Sends a form with any proof. */
  public HttpResponse<String> post(String path, Map<String, String> fields, String withProof) {
    return post(
        path,
        Stream.concat(fields.entrySet().stream(), Stream.of(Map.entry("proof", withProof)))
            .toList());
  }

  /** Sends a form as it is, several values for one name too. */
  public HttpResponse<String> post(String path, List<Map.Entry<String, String>> fields) {
    String body =
        fields.stream()
            .map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue()))
            .collect(Collectors.joining("&"));
    return send(
        HttpRequest.newBuilder(URI.create(at(path)))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  public HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(
          request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The proof that the forms of the last page carry. */
  public String proof() {
    return proof;
  }

  public CookieManager cookies() {
    return cookies;
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    if (closes) {
      console.close();
    }
  }
}
