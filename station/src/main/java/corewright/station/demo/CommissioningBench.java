package corewright.station.demo;

import corewright.bench.port.PortInfo;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.Miswiring;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.station.work.Refused;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/**
 * An emulated bench that nobody has described yet, with a resistor in the place of a unit: to
 * practise commissioning on. Its ports are told without what hangs on them.
 */
public final class CommissioningBench implements AutoCloseable {
  /** What the emulated resistor is. */
  public static final double OHM = 10;

  private final EmulatedBench bench;

  private CommissioningBench(EmulatedBench bench) {
    this.bench = bench;
  }

  /**
   * Opens it.
   *
   * @param family whose fixture, as {@code sd48}
   * @param wrong how it is wired wrongly, a name of {@link Miswiring}; empty: well
   * @param silent role of an instrument that does not answer; empty: all do
   */
  public static CommissioningBench open(String family, String wrong, String silent, long seed) {
    try {
      Setup setup = Setup.of(UnitParameters.resistor(family, OHM), seed);
      Harness harness = wrong.isEmpty() ? setup.harness() : named(wrong).in(setup.harness());
      EmulatedBench bench = EmulatedBench.open(setup.on(harness));
      return new CommissioningBench(silenced(bench, silent));
    } catch (IOException | IllegalArgumentException missing) {
      throw new Refused(
          "The emulated bench cannot be opened: " + missing.getMessage(),
          "Emulated are sd48, ie110 and pv65; without pseudo-terminals start with"
              + " COREWRIGHT_JAVA_OPTIONS=-Dcorewright.lines=loopback.");
    }
  }

  /** A bench without an instrument of that name is closed again. */
  private static EmulatedBench silenced(EmulatedBench bench, String silent) {
    if (!silent.isEmpty() && !bench.ports().containsKey(silent)) {
      List<String> roles = List.copyOf(bench.ports().keySet());
      bench.close();
      throw new Refused(
          "The emulated bench has no instrument '" + silent + "'",
          "There are: " + String.join(", ", roles) + ".");
    }
    if (!silent.isEmpty()) {
      bench.unplug(silent);
    }
    return bench;
  }

  private static Miswiring named(String wrong) {
    return Arrays.stream(Miswiring.values())
        .filter(m -> m.name().equalsIgnoreCase(wrong))
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "'" + wrong + "' is no wrong wiring that can be emulated",
                    "There are: " + Arrays.toString(Miswiring.values())));
  }

  /** Its ports, as a computer lists them. */
  public List<PortInfo> ports() {
    return bench.ports().values().stream()
        .sorted()
        .map(path -> new PortInfo(path, "emulated port", "", ""))
        .toList();
  }

  @Override
  public void close() {
    bench.close();
  }
}
