package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.port.Load;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.work.Folders;
import corewright.station.work.KeptWire;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bench whose load a hand sets, driven from the console: the page asks, the record says who. */
class HandLoadTest {
  @TempDir private Path folder;

  @Test
  void thePageAsksTheDriverAndThePulsesAreLeftToAHand() throws Exception {
    Clock clock = Clock.system();
    Setup setup = Setup.of(UnitParameters.healthy("sd48"), 1).over(LineKind.LOOPBACK);
    try (EmulatedBench emulated = EmulatedBench.open(setup);
        KeptWire wire = KeptWire.none(Folders.at(folder), clock)) {
      RealBench real = new RealBench(described(emulated), clock);
      LiveBench bench = new LiveBench(real, "/did/", () -> null, clock);
      Profile profile = Catalogue.ofHome().profile("sd48-full");
      List<String> left = bench.byHand(profile).stream().map(Step::id).toList();
      assertEquals(List.of("pins", "insulation", "key-off", "pulses"), left);
      Course course =
          new Course(Catalogue.ofHome().family("sd48"), profile, real.description().channels());
      LiveRun run =
          new LiveRun(
              new Start("U-1", profile.id(), "I. Marsh", Optional.empty()), course, 1, clock);
      try (Bench.Opened opened =
          real.open(new Bench.Unit("U-1", "sd48", false), run.hands(), wire)) {
        Load load = opened.instruments().load();
        assertEquals("BY HAND,I. Marsh,0,0", load.identity());
        load.set(1);
        load.input(true);
        ObjectNode now = NowJson.of(bench, run);
        assertEquals("Set the load to 1.00 A and switch it on.", now.path("hand").asText());
        run.step(profile.steps().get(0), 0, 1);
        assertFalse(NowJson.of(bench, run).has("hand"));
        load.off();
        assertTrue(NowJson.of(bench, run).path("hand").asText().contains("Switch the load off."));
      }
    }
  }

  private BenchDescription described(EmulatedBench emulated) throws Exception {
    Path shipped = Path.of(System.getProperty("corewright.home"), "fixtures", "benches");
    String text =
        Files.readString(shipped.resolve("emulated-sd48.json"))
            .replace("\"dialect\": \"emulated-load\"", "\"dialect\": \"by-hand\"");
    return Descriptions.bench(Files.writeString(folder.resolve("bench.json"), text))
        .withPorts(emulated.ports());
  }
}
