package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.PortInfo;
import corewright.bench.run.Clock;
import corewright.bench.wire.PortFinder.Heard;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import corewright.station.work.commission.Answering;
import corewright.station.work.commission.Answering.Candidate;
import corewright.station.work.commission.Survey;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Only what cannot be told from the answers is asked, port by port. */
class BenchTalkTest {
  private static final Survey SURVEY =
      new Survey(
          Home.fromSystem(),
          Home.fromSystem().dialects(),
          (role, port, baud, characters) -> {
            throw new AssertionError("opened " + port);
          },
          Clock.system());

  private final StringWriter said = new StringWriter();

  @Test
  void whatIsKnownByItsAnswerIsNotAsked() {
    Map<String, Connection> found = found("", Map.of(), known());
    assertEquals("idn:MAKER,source,7", found.get("source").port());
    assertEquals("", found.get("digitizer").dialect());
    assertEquals(11_520, found.get("load").bytesPerSecond()); // 115 200 bit/s, ten bits a byte
    assertTrue(!said.toString().contains("What is it?"), said.toString());
  }

  @Test
  void aStrangerIsAskedForAndItsDialectIsTheOneOfItsPart() {
    List<Answering> ports = new ArrayList<>(known());
    ports.removeIf(p -> p.name().contains("load"));
    ports.add(port("/dev/ttyUSB9", Optional.of("SOMEBODY,E-LOAD,1,2"), List.of()));
    Map<String, Connection> found = found("1\n", Map.of(), ports);
    assertEquals("emulated-load", found.get("load").dialect());
    assertTrue(
        said.toString().contains("/dev/ttyUSB9: SOMEBODY,E-LOAD,1,2.\nWhat is it?"),
        said.toString());
  }

  @Test
  void anInstrumentThatDoesNotAnswerIsNamedWithItsPortAndWhy() {
    List<Answering> ports = new ArrayList<>(known());
    ports.removeIf(p -> p.name().contains("source"));
    ports.add(port("/dev/ttyUSB3", Optional.empty(), List.of()));
    Refused refused = assertThrows(Refused.class, () -> found("", Map.of(), ports));
    assertEquals("No port answers as the DC source", refused.getMessage());
    assertTrue(
        said.toString().contains("/dev/ttyUSB3: no answer. It is left out."), said.toString());
  }

  @Test
  void aLoadThatIsSetByHandIsAskedForAndNothingElseCanBe() {
    List<Answering> ports = new ArrayList<>(known());
    ports.removeIf(p -> p.name().contains("load"));
    assertTrue(found("1\n", Map.of(), ports).get("load").isByHand());
    Refused refused = assertThrows(Refused.class, () -> found("", Map.of(), ports));
    assertTrue(refused.remedy().contains("--load-by-hand"), refused.remedy());
  }

  @Test
  void whatIsSaidBeforehandIsNotAskedAndTwoOfOnePartAreRefused() {
    List<Answering> ports = new ArrayList<>(known());
    ports.add(port("/dev/ttyUSB9", Optional.of("SOMEBODY,X,1,2"), List.of()));
    Candidate none = new Candidate("none", "");
    assertEquals(5, found("", Map.of("/dev/ttyUSB9", none), ports).size());
    Candidate load = new Candidate("load", "emulated-load");
    assertThrows(Refused.class, () -> found("", Map.of("/dev/ttyUSB9", load), ports));
  }

  @Test
  void aPartThatNoBenchHasIsRefusedWithThoseThatThereAre() {
    assertEquals("relay", BenchTalk.part("relay"));
    assertEquals("none", BenchTalk.part("none"));
    Refused refused = assertThrows(Refused.class, () -> BenchTalk.part("lod"));
    assertEquals("'lod' is no part of a bench", refused.getMessage());
    assertTrue(refused.remedy().startsWith("There are: load, source, "), refused.remedy());
  }

  private Map<String, Connection> found(
      String typed, Map<String, Candidate> beforehand, List<Answering> ports) {
    said.getBuffer().setLength(0);
    PrintWriter err = new PrintWriter(said, true);
    Asking asking = new Asking(new BufferedReader(new StringReader(typed)), err);
    return new BenchTalk(asking, err, SURVEY)
        .instruments(ports, beforehand, false, 0, false).stream()
            .collect(Collectors.toMap(Connection::role, c -> c));
  }

  private static List<Answering> known() {
    return List.of("load", "source", "digitizer", "switch", "interlock").stream()
        .map(
            role ->
                new Answering(
                    new Heard(
                        new PortInfo("/dev/" + role, "", "", ""),
                        Optional.of("MAKER," + role + ",7,1"),
                        role.equals("digitizer"),
                        ""),
                    115_200,
                    "idn:MAKER," + role + ",7",
                    List.of(new Candidate(role, role.equals("digitizer") ? "" : "own-" + role))))
        .toList();
  }

  private static Answering port(String path, Optional<String> identity, List<Candidate> may) {
    Heard heard = new Heard(new PortInfo(path, "", "", ""), identity, false, "no answer");
    return new Answering(heard, 115_200, path, may);
  }
}
