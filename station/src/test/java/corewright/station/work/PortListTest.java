package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.run.Clock;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What hangs on a port is spoken to only when somebody asks for it. */
class PortListTest {

  @Test
  void listingOpensNoPort() {
    Links closed =
        (role, port, baud, characters) -> {
          throw new AssertionError("opened " + port);
        };
    PortList list = new PortList(closed, List.of(port("/dev/ttyUSB7")), Clock.system());
    assertEquals(
        List.of(Optional.empty()),
        list.list(false, 115_200).stream().map(PortList.Entry::answer).toList());
  }

  @Test
  void askedAnInstrumentSaysWhoItIs() throws IOException {
    assumeTrue(Files.isDirectory(Path.of("/dev/pts")), "no pseudo-terminals on this system");
    try (EmulatedBench bench = EmulatedBench.open(UnitParameters.healthy("sd48"), 1)) {
      PortInfo load = port(bench.ports().get("load"));
      PortList list = new PortList(new SerialLinks(Clock.system()), List.of(load), Clock.system());
      String answer = list.list(true, 115_200).get(0).answer().orElseThrow();
      assertTrue(answer.contains("EMULATED-LOAD"), answer);
    }
  }

  @Test
  void aPortThatCannotBeOpenedSaysWhy() {
    PortInfo gone = port("/dev/ttyUSB77");
    PortList list = new PortList(new SerialLinks(Clock.system()), List.of(gone), Clock.system());
    String answer = list.list(true, 115_200).get(0).answer().orElseThrow();
    assertTrue(!answer.isBlank(), answer);
  }

  private static PortInfo port(String path) {
    return new PortInfo(path, "a port", "", "");
  }
}
