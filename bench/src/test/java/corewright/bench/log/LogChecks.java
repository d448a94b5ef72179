package corewright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Language;
import corewright.bench.log.made.Layout;
import corewright.bench.log.made.Poll;
import corewright.bench.log.made.Stamp;
import corewright.bench.log.made.Vehicles;
import java.util.List;

/** The two logs that all kinds are variations of, and what every variation must still say. */
final class LogChecks {
  static final List<Poll.Shot> FAILING = Logs.shots(Vehicles.failing());
  static final List<Poll.Shot> GOOD = Logs.shots(Vehicles.good());

  static Export export(
      Language language, char delimiter, Stamp stamp, Layout layout, boolean milli) {
    return new Export(language, delimiter, stamp, layout, milli, false, "8", "\n");
  }

  /** The crank that really was, and how far the output really fell, whatever the export did. */
  static void isTheFailingOne(LogReading reading) {
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion(), reading.reasons().toString());
    assertEquals(1, reading.cranks().size());
    Crank crank = reading.cranks().get(0);
    assertEquals(Vehicles.LENGTH_S, crank.end_s() - crank.start_s(), 0.5);
    Output output = crank.outputs().get(0);
    assertEquals(-1.1 * 60, output.drift().orElseThrow().value(), 5);
    assertEquals(42.7, output.lowestQuarter().orElseThrow().value(), 0.4);
    assertEquals(10.4, crank.supplies().get(0).minimum().orElseThrow().value(), 0.15);
  }

  static void isTheGoodOne(LogReading reading) {
    assertEquals(Conclusion.SUPPORTS_GOOD, reading.conclusion(), reading.reasons().toString());
    Output output = reading.cranks().get(0).outputs().get(0);
    assertEquals(47.5, output.lowestQuarter().orElseThrow().value(), 0.15);
    assertEquals(0, output.drift().orElseThrow().value(), 3);
  }

  private LogChecks() {}
}
