package corewright.station.demo;

import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * An emulated bench with a healthy unit on it, to practise on: it writes a bench description with
 * its own ports, for {@code run --bench}. Its runs are specimens, as all emulated runs are.
 */
public final class PracticeBench implements AutoCloseable {
  private final EmulatedBench bench;
  private final Path description;

  private PracticeBench(EmulatedBench bench, Path description) {
    this.bench = bench;
    this.description = description;
  }

  /**
   * Opens it and writes its description.
   *
   * @param family {@code sd48}, {@code ie110} or {@code pv65}
   * @param plug_ohm a resistor or a link in the place of a unit; empty: a healthy unit
   * @param description the file to write; must not be there yet
   */
  public static PracticeBench open(
      Home home, String family, long seed, Optional<Double> plug_ohm, Path description) {
    Path shipped = home.benches().resolve("emulated-" + family + ".json");
    if (!Files.isRegularFile(shipped)) {
      throw new Refused(
          "There is no emulated bench for family " + family,
          "Emulated are the families that have a fixtures/benches/emulated-….json.");
    }
    if (Files.exists(description)) {
      throw new Refused(description + " is there already", "Name a new file with --out.");
    }
    try {
      EmulatedBench bench =
          EmulatedBench.open(
              plug_ohm
                  .map(ohm -> UnitParameters.resistor(family, ohm))
                  .orElseGet(() -> new UnitDraw(seed).healthy(family)),
              seed);
      String text = Files.readString(shipped);
      for (var port : bench.ports().entrySet()) {
        text = text.replace("emulated:" + port.getKey(), port.getValue());
      }
      Files.writeString(description, text);
      return new PracticeBench(bench, description);
    } catch (IOException missing) {
      throw new Refused(
          "The practice bench cannot be opened: " + missing.getMessage(),
          "It needs a folder that can be written, and serial or loopback ports.");
    }
  }

  /** The file that {@code run --bench} takes. */
  public Path description() {
    return description;
  }

  @Override
  public void close() {
    bench.close();
  }
}
