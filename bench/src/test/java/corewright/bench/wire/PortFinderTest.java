package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.wire.PortFinder.Heard;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An instrument is found by what it or its adapter says of itself, never by a port's number. */
class PortFinderTest {
  private static final Clock CLOCK = Clock.system();
  private static final Links LINKS = new SocketLinks(CLOCK, new SerialLinks(CLOCK));
  private static final BenchDescription BENCH = Descriptions.shippedBench("emulated-sd48");
  private static final Links CLOSED =
      (role, port, baud, characters) -> {
        throw new AssertionError("opened " + port);
      };

  @Test
  void twoEqualAdaptersAreToldApartByTheirSerialNumbersWhereverTheyArePlugged() {
    Map<String, String> names = Map.of("load", "usb:0403:6001:A1", "source", "usb:0403:6001:a2");
    List<PortInfo> ports =
        List.of(usb("/dev/ttyUSB0", "A1"), usb("/dev/ttyUSB1", "A2"), usb("/dev/ttyUSB2", ""));
    BenchDescription bound = finder(CLOSED, ports).bind(BENCH.withPorts(names));
    assertEquals(List.of("/dev/ttyUSB0", "/dev/ttyUSB1"), portsOf(bound, "load", "source"));
    assertEquals(List.of("emulated:switch"), portsOf(bound, "switch"), "named as it stands");
    ports = List.of(usb("/dev/ttyUSB0", "A2"), usb("/dev/ttyUSB1", "A1"));
    bound = finder(CLOSED, ports).bind(BENCH.withPorts(names));
    assertEquals(List.of("/dev/ttyUSB1", "/dev/ttyUSB0"), portsOf(bound, "load", "source"));
  }

  @Test
  void aBenchThatNamesItsPortsAsTheyStandIsLeftAlone() {
    PortFinder finder =
        new PortFinder(
            CLOSED,
            () -> {
              throw new AssertionError("listed");
            },
            CLOCK);
    assertSame(BENCH, finder.bind(BENCH));
  }

  @Test
  void anAdapterThatIsNotThereIsRefusedWithThoseThatAre() {
    InstrumentFault none =
        refused(Map.of("load", "usb:0403:6001:A9"), List.of(usb("/dev/ttyUSB0", "A1")));
    assertEquals("load", none.instrument());
    assertEquals("finding the USB adapter 0403:6001:A9", none.doing());
    assertEquals(
        "none is plugged in; there are /dev/ttyUSB0 (0403:6001:A1)", none.found(), none::remedy);
    assertEquals(
        "none is plugged in; there is no other port",
        refused(Map.of("load", "usb:0403:6001"), List.of()).found());
  }

  @Test
  void twoAdaptersThatFitAreRefusedWithWhatTellsThemApart() {
    Map<String, String> name = Map.of("load", "usb:0403:6001");
    InstrumentFault two =
        refused(name, List.of(usb("/dev/ttyUSB0", "A1"), usb("/dev/ttyUSB1", "A2")));
    assertEquals(
        "2 are plugged in: /dev/ttyUSB0 (0403:6001:A1), /dev/ttyUSB1 (0403:6001:A2)", two.found());
    assertEquals(
        "Add the serial number to its port in the bench description: usb:0403:6001:SERIAL.",
        two.remedy());
    assertEquals(
        "Their serial numbers do not tell them apart: name the instrument by its answer,"
            + " idn:MAKER,MODEL,SERIAL.",
        refused(name, List.of(usb("/dev/ttyUSB0", ""), usb("/dev/ttyUSB1", ""))).remedy());
  }

  @Test
  void twoNamesForOnePortAreRefused() {
    InstrumentFault twice =
        refused(
            Map.of("load", "usb:0403:6001", "source", "usb:0403:6001:A1"),
            List.of(usb("/dev/ttyUSB0", "A1")));
    assertEquals("source", twice.instrument());
    assertEquals("/dev/ttyUSB0 is the load's already", twice.found());
  }

  @Test
  void aPortThatASystemListsTwiceIsOne() {
    List<PortInfo> ports = List.of(usb("/dev/tty.usb-A1", "A1"), usb("/dev/cu.usb-A1", "A1"));
    BenchDescription bound =
        finder(CLOSED, ports).bind(BENCH.withPorts(Map.of("load", "usb:0403:6001:A1")));
    assertEquals(List.of("/dev/cu.usb-A1"), portsOf(bound, "load"));
  }

  @Test
  void twoEqualLoadsAreToldApartByTheSerialNumberInTheirAnswer() throws IOException {
    try (EmulatedBench one = bench(1);
        EmulatedBench other = bench(2)) {
      List<PortInfo> ports = List.of(port(one, "load"), port(other, "load"));
      String model = "idn:COREWRIGHT,EMULATED-LOAD";
      BenchDescription bound =
          finder(LINKS, ports).bind(BENCH.withPorts(Map.of("load", model + ",2")));
      assertEquals(other.ports().get("load"), bound.instrument("load").orElseThrow().port());
      PortFinder finder = finder(LINKS, ports);
      InstrumentFault two =
          assertThrows(
              InstrumentFault.class, () -> finder.bind(BENCH.withPorts(Map.of("load", model))));
      assertEquals(
          "2 do: %s (COREWRIGHT,EMULATED-LOAD,1,1.0), %s (COREWRIGHT,EMULATED-LOAD,2,1.0)"
              .formatted(one.ports().get("load"), other.ports().get("load")),
          two.found());
      assertEquals(
          "Add the serial number to its port in the bench description: idn:MAKER,MODEL,SERIAL.",
          two.remedy());
      InstrumentFault none =
          assertThrows(
              InstrumentFault.class,
              () -> finder.bind(BENCH.withPorts(Map.of("load", model + ",3"))));
      assertEquals("finding the instrument that answers COREWRIGHT,EMULATED-LOAD,3", none.doing());
      assertEquals(
          two.found().replace("2 do: ", "none does; there are "), none.found(), none::remedy);
    }
  }

  /** The board is no instrument of program messages: it is found by its own answer. */
  @Test
  void aWholeBenchIsFoundByItsAnswersInWhateverOrderItIsPlugged() throws IOException {
    try (EmulatedBench emulated = bench(7)) {
      Map<String, String> names =
          Map.of(
              "load", "idn:,EMULATED-LOAD",
              "source", "idn:COREWRIGHT,EMULATED-SOURCE,7",
              "digitizer", "idn:COREWRIGHT,EMULATED-BOARD",
              "switch", "idn:,emulated-switch",
              "interlock", "idn:,EMULATED-INTERLOCK,7,1.0",
              "thermometer", "idn:,EMULATED-THERMOMETER",
              "meter", "idn:,EMULATED-METER");
      List<PortInfo> ports = new ArrayList<>();
      emulated.ports().keySet().forEach(role -> ports.add(port(emulated, role)));
      Collections.reverse(ports);
      BenchDescription bound = finder(LINKS, ports).bind(BENCH.withPorts(names));
      names
          .keySet()
          .forEach(role -> assertEquals(List.of(emulated.ports().get(role)), portsOf(bound, role)));
      try (BenchInstruments open =
          new BenchOpener(LINKS, Descriptions::shippedDialect, CLOCK).open(bound)) {
        assertEquals("COREWRIGHT,EMULATED-BOARD,7,1.0", open.digitizer().identity());
      }
    }
  }

  @Test
  void whoIsThereIsToldWithANameThatLasts() throws IOException {
    try (EmulatedBench emulated = bench(7)) {
      PortInfo load = new PortInfo(emulated.ports().get("load"), "", "0403:6001", "A1");
      PortInfo board = new PortInfo(emulated.ports().get("digitizer"), "", "1a86:7523", "");
      PortInfo gone = new PortInfo("/dev/ttyUSB77", "", "1a86:7523", "");
      List<PortInfo> ports = List.of(load, board, gone);
      List<Heard> heard = finder(LINKS, ports).survey(115_200);
      assertEquals(
          List.of(
              new Heard(load, Optional.of("COREWRIGHT,EMULATED-LOAD,7,1.0"), false, ""),
              new Heard(board, Optional.of("COREWRIGHT,EMULATED-BOARD,7,1.0"), true, ""),
              new Heard(gone, Optional.empty(), false, "there is no such port")),
          heard);
      assertEquals(
          List.of("usb:0403:6001:A1", "idn:COREWRIGHT,EMULATED-BOARD,7", "/dev/ttyUSB77"),
          heard.stream().map(h -> PortChoice.lasting(h, ports)).toList());
    }
  }

  /** A system that lists one adapter twice does not make it two. */
  @Test
  void anAdapterThatIsListedAsTtyAndAsCuIsOneAlone() {
    List<PortInfo> twice =
        List.of(
            new PortInfo("/dev/tty.usbserial-A1", "adapter", "0403:6001", "A1"),
            new PortInfo("/dev/cu.usbserial-A1", "adapter", "0403:6001", "A1"));
    Heard heard = new Heard(twice.get(1), Optional.empty(), false, "");
    assertEquals("usb:0403:6001:A1", PortChoice.lasting(heard, twice));
  }

  private static InstrumentFault refused(Map<String, String> names, List<PortInfo> ports) {
    PortFinder finder = finder(CLOSED, ports);
    return assertThrows(InstrumentFault.class, () -> finder.bind(BENCH.withPorts(names)));
  }

  private static PortFinder finder(Links links, List<PortInfo> ports) {
    return new PortFinder(links, () -> ports, CLOCK, Duration.ofMillis(200));
  }

  private static List<String> portsOf(BenchDescription bench, String... roles) {
    return List.of(roles).stream().map(r -> bench.instrument(r).orElseThrow().port()).toList();
  }

  private static EmulatedBench bench(long seed) throws IOException {
    return EmulatedBench.open(
        Setup.of(UnitParameters.healthy("sd48"), seed).over(LineKind.LOOPBACK));
  }

  private static PortInfo port(EmulatedBench bench, String role) {
    return new PortInfo(bench.ports().get(role), "", "", "");
  }

  private static PortInfo usb(String path, String serial) {
    return new PortInfo(path, "", "0403:6001", serial);
  }
}
