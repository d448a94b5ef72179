package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.run.Clock;
import corewright.station.work.Refused;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.Optional;
import java.util.Set;
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
