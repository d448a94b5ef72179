package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Somebody who means harm: each is refused, and stands in the record. */
class HostileClientTest {
  @TempDir private static Path shop;
  private static Visit owner;

  @BeforeAll
  static void open() {
    owner = Visit.asOwner(shop);
  }

  @AfterAll
  static void close() {
    owner.close();
  }

  /** DNS rebinding: a foreign name that was pointed at this machine. */
  @ParameterizedTest
  @ValueSource(
      strings = {"evil.example", "evil.example:80", "127.0.0.1.evil.example", "localhost.evil", ""})
  void aForgedHostIsRefusedAndWritten(String host) throws IOException {
    String answer = raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 4"), answer);
    assertFalse(answer.contains("needs someone"), answer);
    if (!host.isEmpty()) { // Jetty itself refuses an empty one
      assertWritten("host " + host);
    }
  }

  /** RFC 6454: a browser names the page's origin with every post. */
  @Test
  void aPostFromAnotherSiteIsRefusedEvenWithTheProof() {
    HttpResponse<String> answer =
        owner.send(
            HttpRequest.newBuilder(URI.create(owner.at("/mode")))
                .header("Origin", "https://evil.example")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("mode=dark&proof=" + owner.proof())));
    assertEquals(403, answer.statusCode());
    assertWritten("form without proof");
  }

  @Test
  void aFormWithoutProofOrWithSomebodyElsesIsRefused() {
    assertEquals(403, owner.post("/mode", Map.of("mode", "dark"), "").statusCode());
    account("M. Reyes", Role.TECHNICIAN);
    Visit reyes = owner.another();
    reyes.signIn("M. Reyes", "slow solder iron");
    assertEquals(403, owner.post("/mode", Map.of("mode", "dark"), reyes.proof()).statusCode());
    assertWritten("form without proof");
  }

  /** A session that was left is over: neither its cookie nor its proof opens anything again. */
  @Test
  void aTokenOfASessionThatIsOverIsWorthNothing() throws Exception {
    account("K. Lund", Role.TECHNICIAN);
    Visit lund = owner.another();
    lund.signIn("K. Lund", "slow solder iron");
    String cookie =
        lund.cookies().getCookieStore().getCookies().stream()
            .filter(c -> c.getName().equals("corewright"))
            .findFirst()
            .orElseThrow()
            .getValue();
    String proof = lund.proof();
    lund.post("/out", Map.of());
    String replayed =
        raw(
            "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: corewright="
                + cookie
                + "\r\nConnection: close\r\n\r\n");
    assertTrue(replayed.contains("Location: /in"), replayed);
    String body = "mode=dark&proof=" + proof;
    String posted =
        raw(
            "POST /mode HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: corewright="
                + cookie
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                + body.length()
                + "\r\nConnection: close\r\n\r\n"
                + body);
    assertTrue(posted.startsWith("HTTP/1.1 403"), posted);
  }

  @Test
  void cookiesAreStrictAndOutOfReachOfScripts() throws Exception {
    Visit fresh = owner.another();
    fresh.get("/in");
    HttpResponse<String> in =
        fresh.post("/in", Map.of("name", Visit.OWNER, "password", Visit.PASSWORD));
    List<String> set = in.headers().allValues("Set-Cookie");
    assertFalse(set.isEmpty());
    for (String cookie : set) {
      assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
    }
  }

  /** OWASP: at most a few guesses; the right password does not help while it has to wait. */
  @Test
  void passwordsCannotBeGuessedQuickly() {
    account("A. Voss", Role.INSPECTOR);
    Visit thief = owner.another();
    thief.get("/in");
    for (int i = 0; i < 5; i++) {
      assertEquals(
          422, thief.post("/in", Map.of("name", "A. Voss", "password", "guess " + i)).statusCode());
    }
    HttpResponse<String> sixth =
        thief.post("/in", Map.of("name", "A. Voss", "password", "slow solder iron"));
    assertEquals(422, sixth.statusCode());
    assertTrue(sixth.body().contains("quarter of an hour"), sixth.body());
    assertWritten("wrong password");
    assertWritten("too many wrong passwords");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/static/../../../../etc/passwd",
        "/static/css/../../../shop.json",
        "/static/%2e%2e/%2e%2e/ledger.db",
        "/static/css/..%2f..%2fledger.db",
        "/static/css/%00.css",
        "/static/js/house.js/../../Console.class"
      })
  void pathsLeadNowhereElse(String path) throws IOException {
    String answer =
        raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n");
    assertTrue(answer.matches("(?s)HTTP/1.1 (4\\d\\d|303).*"), answer);
    assertFalse(answer.contains("root:") || answer.contains("SQLite"), answer);
  }

  @Test
  void aPostLargerThanAnyFormIsRefused() throws IOException {
    String head =
        "POST /in HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-www-form-urlencoded"
            + "\r\nContent-Length: 50000000\r\nConnection: close\r\n\r\nname=";
    String answer = raw(head + "x".repeat(2_000_000));
    assertTrue(answer.isEmpty() || answer.matches("(?s)HTTP/1.1 4\\d\\d.*"), answer);
    assertEquals(200, owner.get("/").statusCode());
  }

  @Test
  void whatPeopleTypeIsNeverAScript() {
    String script = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>";
    HttpResponse<String> found = owner.get("/scan?code=" + encoded(script));
    assertFalse(found.body().contains("<script>alert"), found.body());
    assertFalse(found.body().contains("<img src=x"), found.body());
    String policy = found.headers().firstValue("Content-Security-Policy").orElse("");
    assertTrue(policy.contains("script-src 'self'") && !policy.contains("unsafe"), policy);
    assertTrue(policy.contains("frame-ancestors 'none'"), policy);
  }

  @Test
  void nobodySeesAnythingWithoutBeingSignedIn() {
    Visit nobody = owner.another();
    for (PlaceName place : PlaceName.values()) {
      assertEquals("/in", FirstDayTest.location(nobody.get(place.path())), place.path());
    }
  }

  /** The page of a role that went meanwhile: roles are read at each request. */
  @Test
  void aRoleThatWasTakenAwayIsGoneAtOnce() {
    account("M. Reyes", Role.INSPECTOR);
    Visit reyes = owner.another();
    reyes.signIn("M. Reyes", "slow solder iron");
    assertTrue(reyes.get("/").body().contains("M. Reyes, inspector"));
    account("M. Reyes", Role.COUNTER);
    assertTrue(reyes.get("/").body().contains("M. Reyes, counter"));
  }

  private static void account(String name, Role role) {
    try (var workshop = Visit.workshop(shop)) {
      workshop.ledger().accounts().put(name, role, "slow solder iron".toCharArray(), Visit.OWNER);
    }
  }

  private static void assertWritten(String what) {
    try (var workshop = Visit.workshop(shop)) {
      assertTrue(
          workshop.ledger().lives().history("DOOR").stream()
              .anyMatch(h -> h.body().path("what").asText().equals(what)),
          what);
      assertTrue(workshop.ledger().verify().whole());
    }
  }

  private static String raw(String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", owner.console().port())) {
      socket.setSoTimeout(10_000);
      OutputStream out = socket.getOutputStream();
      try {
        out.write(request.getBytes(StandardCharsets.UTF_8));
        out.flush();
      } catch (IOException refused) {
        // the server had read enough
      }
      try {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException cut) {
        return "";
      }
    }
  }

  private static String encoded(String text) {
    return java.net.URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
