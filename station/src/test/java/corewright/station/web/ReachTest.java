package corewright.station.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Core;
import corewright.bench.run.Clock;
import corewright.reports.document.QrDrawing;
import corewright.reports.ledger.Attached;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.awt.image.BufferedImage;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody else reaches the console by accident, and nobody reads along. */
class ReachTest {
  private static final String SECRET = "flux and copper";

  @TempDir private Path folder;

  @Test
  void othersReachItOnlyEncryptedAndOnlyOnceItHasAnOwner() throws Exception {
    Reach open = new Reach("0.0.0.0", 0, Optional.empty(), Set.of());
    assertTrue(assertThrows(Refused.class, () -> open.checked(true)).getMessage().contains("read"));
    Reach secured = new Reach("0.0.0.0", 0, Optional.of(tls()), Set.of());
    assertTrue(
        assertThrows(Refused.class, () -> secured.checked(false)).getMessage().contains("owner"));
    assertEquals(secured, secured.checked(true));
    Reach lost =
        new Reach(
            "127.0.0.1", 0, Optional.of(new Reach.Tls(folder.resolve("no.p12"), "")), Set.of());
    assertThrows(Refused.class, () -> lost.checked(true));
    assertEquals(Reach.here(7348), Reach.here(7348).checked(false));
  }

  @Test
  void overTlsACookieGoesNowhereElse() throws Exception {
    Reach.Tls tls = tls();
    Path shop = folder.resolve("shop");
    Visit.asOwner(shop).close();
    Reach reach = new Reach("127.0.0.1", 0, Optional.of(tls), Set.of("bench-room.lan"));
    try (Console console = Console.open(() -> Visit.workshop(shop), Clock.system(), reach)) {
      assertTrue(console.address().startsWith("https://"), console.address());
      HttpResponse<String> page =
          HttpClient.newBuilder()
              .sslContext(trusting(tls))
              .build()
              .send(
                  HttpRequest.newBuilder(URI.create(console.address() + "in")).build(),
                  HttpResponse.BodyHandlers.ofString());
      assertEquals(200, page.statusCode());
      String cookie = page.headers().firstValue("Set-Cookie").orElse("");
      assertTrue(cookie.contains("Secure"), cookie);
      assertTrue(page.headers().firstValue("Strict-Transport-Security").isPresent());
    }
  }

  /** Demanded: photographs from a telephone of the same network, when the owner allows it. */
  @Test
  void aTelephoneScansItsWayToTheUnitAndPhotographsIt() throws Exception {
    Reach.Tls tls = tls();
    Path shop = folder.resolve("shop");
    String tag;
    try (Visit alone = Visit.asOwner(shop)) {
      try (Workshop workshop = Visit.workshop(shop)) {
        tag = workshop.ledger().nextTag();
        workshop
            .ledger()
            .receive(
                new Core(
                    tag, "sd48", "77", "", "", "repair", "", Clock.system().wall(), Visit.OWNER));
      }
      for (String page : new String[] {"/counter/" + tag, "/unit/" + tag}) {
        String closed = alone.get(page).body();
        assertTrue(closed.contains("The owner lets telephones in by starting"), closed);
        assertFalse(closed.contains("Code to scan"), closed);
      }
    }
    Reach reach = new Reach("0.0.0.0", 0, Optional.of(tls), Set.of("bench-room.lan"));
    try (Console console = Console.open(() -> Visit.workshop(shop), Clock.system(), reach)) {
      Visit phone = Visit.elsewhere("https://127.0.0.1:" + console.port(), trusting(tls));
      String page = "/photograph/" + tag;
      assertEquals("/in?to=" + page, Visit.location(phone.get(page)));
      phone.get("/in?to=" + page);
      Map<String, String> in = Map.of("name", Visit.OWNER, "password", Visit.PASSWORD);
      Map<String, String> onward = new HashMap<>(in);
      onward.put("to", "https://evil.example/");
      Visit lured = Visit.elsewhere("https://127.0.0.1:" + console.port(), trusting(tls));
      lured.get("/in?to=https://evil.example/");
      assertEquals("/", Visit.location(lured.post("/in", onward)), "never to elsewhere");
      onward.put("to", page);
      assertEquals(page, Visit.location(phone.post("/in", onward)));
      assertEquals(page, Visit.location(phone.get("/in?to=" + page)), "is in already");

      String desk = phone.get("/counter/" + tag).body();
      String address = "https://bench-room.lan:" + console.port() + page;
      assertTrue(desk.contains("Code to scan with a telephone: " + address), desk);
      assertTrue(desk.contains(QrDrawing.of(address).path()), desk);
      String camera = phone.get(page).body();
      assertTrue(camera.contains("capture=\"environment\""), camera);
      byte[] png = Files.readAllBytes(picture());
      assertEquals(
          page, Visit.location(phone.upload(page, Map.of(), "photo-label", "IMG_1.png", png)));
      assertTrue(phone.get(page).body().contains("1 kept with " + tag));
      assertEquals(
          422,
          phone.upload(page, Map.of(), "photo-top", "x.png", "MZ".getBytes(UTF_8)).statusCode());
    }
    try (Workshop workshop = Visit.workshop(shop)) {
      Attached kept = workshop.ledger().lives().attached(tag).get(0);
      assertEquals("label", kept.note());
    }
  }

  private Path picture() throws Exception {
    Path file = folder.resolve("label.png");
    ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  /** RFC 7292 store with a certificate of its own, by the JDK's keytool. */
  private Reach.Tls tls() throws Exception {
    Path store = folder.resolve("bench.p12");
    if (!Files.exists(store)) {
      Process made =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                  "-genkeypair",
                  "-alias",
                  "bench",
                  "-keyalg",
                  "EC",
                  "-dname",
                  "CN=127.0.0.1",
                  "-ext",
                  "SAN=ip:127.0.0.1",
                  "-storetype",
                  "PKCS12",
                  "-keystore",
                  store.toString(),
                  "-storepass",
                  SECRET)
              .redirectErrorStream(true)
              .start();
      made.getInputStream().readAllBytes();
      assertEquals(0, made.waitFor());
    }
    return new Reach.Tls(store, SECRET);
  }

  private static SSLContext trusting(Reach.Tls tls) throws Exception {
    KeyStore store = KeyStore.getInstance(tls.store().toFile(), tls.password().toCharArray());
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(store);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return context;
  }
}
