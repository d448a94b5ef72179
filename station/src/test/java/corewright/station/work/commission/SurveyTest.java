package corewright.station.work.commission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.PortInfo;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.Clock;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.station.work.Home;
import corewright.station.work.commission.Answering.Candidate;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever is asked who is there gets a name under which it is found again. */
class SurveyTest {
  private static final Clock CLOCK = Clock.system();
  private static final List<Integer> RATES = List.of(115_200);

  private final Survey survey =
      new Survey(
          Home.fromSystem(),
          Home.fromSystem().dialects(),
          new SocketLinks(CLOCK, new SerialLinks(CLOCK)),
          CLOCK);

  @Test
  void aPortThatNoListHasIsAskedWhereSomebodyNamesItAndCalledSo() throws IOException {
    try (EmulatedBench bench = loopback()) {
      String path = bench.ports().get("load");
      List<Answering> heard = survey.of(List.of(), Set.of(path), RATES);
      assertEquals(1, heard.size());
      assertEquals(path, heard.get(0).name()); // in no list: its answer could not be looked for
      assertEquals(List.of(new Candidate("load", "emulated-load")), heard.get(0).may());
    }
  }

  @Test
  void twoThatGiveTheSameAnswerAreToldByTheirPorts() throws IOException {
    try (EmulatedBench one = loopback();
        EmulatedBench other = loopback()) {
      List<String> loads = List.of(one.ports().get("load"), other.ports().get("load"));
      String source = one.ports().get("source");
      List<PortInfo> listed =
          Stream.of(loads.get(0), loads.get(1), source)
              .map(path -> new PortInfo(path, "adapter", "", ""))
              .toList();
      List<Answering> heard = survey.of(listed, Set.of(source), RATES);
      assertEquals(
          List.of(loads.get(0), loads.get(1), "idn:COREWRIGHT,EMULATED-SOURCE,3"),
          heard.stream().map(Answering::name).toList());
      assertTrue(heard.get(0).isOnlyAPath() && !heard.get(2).isOnlyAPath());
    }
  }

  private static EmulatedBench loopback() throws IOException {
    return EmulatedBench.open(Setup.of(UnitParameters.healthy("sd48"), 3).over(LineKind.LOOPBACK));
  }
}
