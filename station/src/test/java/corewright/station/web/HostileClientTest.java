package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.run.Clock;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
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
    Visit.owned(shop);
    owner = Visit.to(shop, CLOCK);
    owner.signIn(Visit.OWNER, Visit.PASSWORD);
  }

  @AfterAll
  static void close() {
    owner.close();
  }

  /** The book takes so many notes a minute, whoever writes them. */
  @BeforeEach
  void anotherMinute() {
    later = later.plus(Duration.ofMinutes(2));
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
    assertWritten("session that is over");
  }

  /** OWASP: a session ends by itself, after hours without its person and after a long day. */
  @Test
  void aSessionThatNobodyUsesIsOver() {
    account("E. Quist", Role.TECHNICIAN);
    Visit quist = owner.another();
    quist.signIn("E. Quist", "slow solder iron");
    String proof = quist.proof();
    Duration now = later;
    try {
      later = now.plus(Duration.ofMinutes(239));
      assertEquals(200, quist.get("/").statusCode());
      later = later.plus(Duration.ofMinutes(241));
      assertEquals("/in", FirstDayTest.location(quist.get("/")));
      assertEquals(403, quist.post("/mode", Map.of("mode", "dark"), proof).statusCode());
    } finally {
      later = now;
    }
  }

  /** What a role does not allow is refused by the server, whatever page the form came from. */
  @Test
  void aStepAboveTheRoleIsRefusedAndWritten() {
    account("B. Tarn", Role.COUNTER);
    Visit tarn = owner.another();
    tarn.signIn("B. Tarn", "slow solder iron");
    Map<String, String> owns =
        Map.of("name", "B. Tarn", "role", "OWNER", "password", "longer than 8", "again", "x");
    for (String path : List.of("/rules/account", "/rules/shop", "/rules/backup", "/rules/sign")) {
      assertEquals(403, tarn.post(path, owns).statusCode(), path);
    }
    assertTrue(tarn.get("/").body().contains("B. Tarn, counter"));
    assertWritten("step above the role");
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
    assertWritten("path or request that is none");
  }

  @Test
  void aPostLargerThanAnyFormIsRefused() throws IOException {
    String head =
        "POST /in HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-www-form-urlencoded"
            + "\r\nContent-Length: 50000000\r\nConnection: close\r\n\r\nname=";
    String answer = raw(head + "x".repeat(2_000_000));
    assertTrue(answer.isEmpty() || answer.matches("(?s)HTTP/1.1 4\\d\\d.*"), answer);
    assertEquals(200, owner.get("/").statusCode());
    assertWritten("request too large");
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

  /** The computer's own time, and as much later as a test wants. */
  private static final Clock CLOCK =
      new Clock() {
        @Override
        public long nanos() {
          return Clock.system().nanos();
        }

        @Override
        public Instant wall() {
          return Clock.system().wall().plus(later);
        }

        @Override
        public void pause(Duration time) {
          Clock.system().pause(time);
        }
      };

  private static volatile Duration later = Duration.ZERO;

  private static void account(String name, Role role) {
    try (var workshop = Visit.workshop(shop)) {
      workshop.ledger().accounts().put(name, role, "slow solder iron".toCharArray(), Visit.OWNER);
    }
  }

  /** What the server turns away is written down after it was answered. */
  private static void assertWritten(String what) {
    try (var workshop = Visit.workshop(shop)) {
      for (int tries = 0; tries < 50 && !isWritten(workshop, what); tries++) {
        Clock.system().pause(Duration.ofMillis(100));
      }
      assertTrue(isWritten(workshop, what), what);
      assertTrue(workshop.ledger().verify().whole());
    }
  }

  private static boolean isWritten(Workshop workshop, String what) {
    return workshop.ledger().lives().history("DOOR").stream()
        .anyMatch(h -> h.body().path("what").asText().equals(what));
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
