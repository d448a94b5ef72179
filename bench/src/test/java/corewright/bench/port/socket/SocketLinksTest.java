package corewright.bench.port.socket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SocketLinksTest {
  private static final Duration SHORT = Duration.ofMillis(50);
  private static final Clock CLOCK = Clock.system();
  private final SocketLinks links =
      new SocketLinks(
          CLOCK,
          (role, port, baud, characters) -> {
            throw new InstrumentFault(role, "opening " + port, "handed on", "Nothing.");
          });

  @ParameterizedTest
  @ValueSource(strings = {"tcp:192.0.2.1:5025", "tcp:no.such.host.invalid:1", "tcp:127.0.0.1:0"})
  void nothingBeyondThisComputerIsEverReached(String port) {
    InstrumentFault fault = assertThrows(InstrumentFault.class, () -> links.open("load", port, 1));
    assertEquals("that is no port of this computer", fault.found());
  }

  @Test
  void whatIsNoSocketIsHandedOn() {
    InstrumentFault fault =
        assertThrows(InstrumentFault.class, () -> links.open("load", "/dev/ttyUSB0", 1));
    assertEquals("handed on", fault.found());
  }

  @Test
  void bytesGoBothWaysAndAPeerThatIsGoneIsALostLine() throws IOException {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Link link = links.open("load", "tcp:127.0.0.1:" + server.getLocalPort(), 1)) {
      byte[] into = new byte[10];
      assertEquals(0, link.read(into, SHORT), "nothing has come");
      try (Socket peer = server.accept()) {
        link.write(new byte[] {1, 2}, SHORT);
        assertEquals(1, peer.getInputStream().read());
        assertEquals(2, peer.getInputStream().read());
        peer.getOutputStream().write(7);
        assertEquals(1, link.read(into, Duration.ofSeconds(5)));
        assertEquals(7, into[0]);
      }
      InstrumentFault lost =
          assertThrows(InstrumentFault.class, () -> link.read(into, Duration.ofSeconds(5)));
      assertEquals("the line is lost", lost.found());
    }
  }

  @Test
  void aPeerThatDoesNotListenHoldsNobodyUp() throws IOException {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Link link = links.open("load", "tcp:127.0.0.1:" + server.getLocalPort(), 1);
        Socket peer = server.accept()) {
      InstrumentFault stuck =
          assertThrows(
              InstrumentFault.class,
              () -> link.write(new byte[50_000_000], Duration.ofMillis(200)));
      assertTrue(stuck.found().contains("were not taken within 200 ms"), stuck.found());
      assertTrue(peer.isConnected());
    }
  }

  @Test
  void whereNobodyListensItSaysSo() throws IOException {
    int free;
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      free = server.getLocalPort();
    }
    InstrumentFault fault =
        assertThrows(InstrumentFault.class, () -> links.open("load", "tcp:127.0.0.1:" + free, 1));
    assertTrue(fault.found().startsWith("nobody listens there"), fault.found());
  }
}
