package corewright.bench.port.serial;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.PortInfo;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Characters;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.line.Port;
import corewright.fixtures.emulate.line.PtyLine;
import corewright.fixtures.emulate.line.Served;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the serial library leaves to its user, over a pseudo-terminal. */
class SerialLinkTest {
  private static final Clock CLOCK = Clock.system();
  private static final Duration SECOND = Duration.ofSeconds(1);

  @TempDir Path folder;
  private final Peer peer = new Peer();
  private Port port;

  private static Link open(String path, int baud) {
    return new SerialLinks(CLOCK).open("load", path, baud);
  }

  /** Keeps what it hears; says what it is told to. */
  private static final class Peer implements Served {
    final ByteArrayOutputStream heard = new ByteArrayOutputStream();
    volatile byte[] toSay = {};
    volatile boolean deaf;

    @Override
    public synchronized void received(byte[] bytes, int count, Sender out) {
      heard.write(bytes, 0, count);
      while (deaf) {
        CLOCK.pause(Duration.ofMillis(5));
      }
    }

    @Override
    public void idle(Sender out) {
      if (toSay.length > 0) {
        out.send(toSay, toSay.length);
        toSay = new byte[0];
      }
    }

    @Override
    public int patience_ms() {
      return 5;
    }

    synchronized String heard() {
      return heard.toString(US_ASCII);
    }
  }

  @BeforeEach
  void plug() throws IOException {
    assumeTrue(PtyLine.isPossible(), "pseudo-terminals are made on Linux only");
    port = new Port("peer", LineKind.PSEUDO_TERMINAL, peer);
    port.start();
  }

  @AfterEach
  void unplug() {
    peer.deaf = false;
    if (port != null) {
      port.close();
    }
  }

  private Link open() {
    return open(port.path(), 115_200);
  }

  private static double seconds(Runnable action) {
    long begin = CLOCK.nanos();
    action.run();
    return (CLOCK.nanos() - begin) / 1e9;
  }

  private static InstrumentFault fault(Runnable action) {
    InstrumentFault fault = assertThrows(InstrumentFault.class, action::run);
    assertEquals("load", fault.instrument());
    assertFalse(fault.remedy().isEmpty());
    return fault;
  }

  private static String read(Link link, int wanted) {
    StringBuilder text = new StringBuilder();
    byte[] chunk = new byte[100];
    for (int i = 0; i < 100 && text.length() < wanted; i++) {
      text.append(new String(chunk, 0, link.read(chunk, SECOND), US_ASCII));
    }
    return text.toString();
  }

  /**
   * As another program reads them off the line. A pseudo-terminal has no parity: that one is asked
   * for shows by what the line then does with a character in error, and by its being odd.
   */
  @ParameterizedTest
  @CsvSource({
    "NONE_1, -cstopb, -parodd, -inpck",
    "NONE_2, cstopb, -parodd, -inpck",
    "EVEN_1, -cstopb, -parodd, inpck",
    "ODD_1, -cstopb, parodd, inpck"
  })
  void theLineIsSetAsTheDescriptionSays(
      Characters characters, String stopBits, String odd, String checked) throws Exception {
    try (Link link = new SerialLinks(CLOCK).open("digitizer", port.path(), 19_200, characters)) {
      Process stty = new ProcessBuilder("stty", "-a", "-F", link.name()).start();
      List<String> said =
          List.of(new String(stty.getInputStream().readAllBytes(), US_ASCII).split("[\\s;]+"));
      assertTrue(said.containsAll(List.of("19200", "cs8", stopBits, odd, checked)), "" + said);
    }
  }

  @Test
  void bytesGoBothWays() {
    try (Link link = open()) {
      link.write("*IDN?\n".getBytes(US_ASCII), SECOND);
      peer.toSay = "hello\n".getBytes(US_ASCII);
      assertEquals("hello\n", read(link, 6));
      assertEquals("*IDN?\n", peer.heard());
    }
  }

  @Test
  void waitingEndsWhenItIsDueWhateverTheLibraryRoundsTo() {
    try (Link link = open()) {
      byte[] chunk = new byte[10];
      for (int ms : new int[] {0, 20, 130, 350}) {
        double s =
            seconds(() -> assertEquals(0, link.read(chunk, Duration.ofMillis(ms)), ms + " ms"));
        // late by less than one slice, even on a busy computer
        assertTrue(s >= ms / 1e3 && s < ms / 1e3 + 0.1, ms + " ms took " + s + " s");
      }
    }
  }

  @Test
  void aByteIsGivenAsSoonAsItIsThere() {
    try (Link link = open()) {
      peer.toSay = "x".getBytes(US_ASCII);
      assertTrue(seconds(() -> assertEquals("x", read(link, 1))) < 0.5);
    }
  }

  @Test
  void whatCameBeforeThePortWasOpenedBelongsToNobody() {
    peer.toSay = "old".getBytes(US_ASCII);
    while (peer.toSay.length > 0) {
      CLOCK.pause(Duration.ofMillis(5));
    }
    try (Link link = open()) {
      assertEquals(0, link.read(new byte[10], Duration.ofMillis(50)));
    }
  }

  @Test
  void anUnpluggedLineIsLostForReaderAndWriterAtOnce() {
    try (Link link = open()) {
      port.close();
      assertTrue(
          seconds(
                  () -> {
                    InstrumentFault lost = fault(() -> link.read(new byte[10], SECOND));
                    assertEquals("the line is lost", lost.found());
                    assertEquals("reading from " + link.name(), lost.doing());
                    assertEquals(
                        "the line is lost", fault(() -> link.write(new byte[10], SECOND)).found());
                  })
              < 0.5);
    }
  }

  @Test
  void aPeerThatDoesNotReadIsNotWaitedForForEver() {
    Link link = open();
    peer.deaf = true;
    byte[] much = new byte[1 << 20];
    double s =
        seconds(
            () ->
                assertEquals(
                    much.length + " bytes were not taken within 300 ms",
                    fault(() -> link.write(much, Duration.ofMillis(300))).found()));
    assertTrue(s > 0.25 && s < 1.5, s + " s");
    assertEquals("the port is closed", fault(() -> link.write(much, SECOND)).found());
    assertEquals("the port is closed", fault(() -> link.read(much, SECOND)).found());
    link.close();
  }

  @Test
  void closingFromAnotherThreadEndsAWait() throws InterruptedException {
    Link link = open();
    Thread closer =
        new Thread(
            () -> {
              CLOCK.pause(Duration.ofMillis(150));
              link.close();
            });
    closer.start();
    double s = seconds(() -> fault(() -> link.read(new byte[10], Duration.ofSeconds(20))));
    assertTrue(s < 2, s + " s");
    closer.join();
  }

  @Test
  void aPortIsOpenedOnceAndThePersonIsToldWhoHasIt() {
    Link first = open();
    InstrumentFault fault = fault(this::open);
    assertEquals("this program has it open already", fault.found());
    assertEquals("opening " + port.path(), fault.doing());
    first.close();
    open().close(); // given back
  }

  @Test
  void aPathThatDoesNotExistIsNeverTakenForAnotherPort() {
    // the library would open /dev/<last part> instead
    InstrumentFault fault = fault(() -> open(folder + "/tty", 9600));
    assertEquals("there is no such port", fault.found());
    assertTrue(fault(() -> open("emulated:load", 9600)).remedy().contains("'corewright practice'"));
    fault(() -> open("/dev/no-such-port", 9600));
    fault(() -> open("COM999", 9600));
    fault(() -> open("", 9600));
  }

  @Test
  void aFileThatIsNoPortIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    fault(() -> open(file.toString(), 9600));
  }

  @Test
  void aSymbolicLinkToAPortIsFollowed() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("bench-load"), Path.of(port.path()));
    try (Link opened = open(link.toString(), 115_200)) {
      opened.write("a".getBytes(US_ASCII), SECOND);
      peer.toSay = "b".getBytes(US_ASCII);
      assertEquals("b", read(opened, 1));
    }
  }

  @Test
  void closingTwiceIsNothing() {
    Link link = open();
    link.close();
    link.close();
  }

  @Test
  void thePortsOfThisComputerAreListedWithoutAskingThem() {
    for (PortInfo info : new SerialLinks(CLOCK).list()) {
      assertFalse(info.path().isEmpty());
    }
  }

  @Test
  void theNativePartIsUnpackedWhereNobodyElseCanReachIt() {
    open().close();
    String folder = System.getProperty("fazecast.jSerialComm.appid");
    assertTrue(folder.startsWith("../corewright-serial-"), folder);
    assertFalse(
        Files.exists(Path.of(System.getProperty("java.io.tmpdir"), folder.substring(3))),
        "and nothing of it is left");
  }
}
