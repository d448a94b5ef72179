package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.run.Guard.Answer;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.BenchDescription.FixtureDescription;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.profiles.SupplyFeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Guards that ask the bench. To add one: its line in ALL, its method, its case. */
final class BenchGuards {
  /** A discharge resistor this far from the family's is another fixture's, or has failed. */
  private static final double RESISTOR_FACTOR = 2;

  /** What a room counts as, °C. */
  private static final double ROOM_C = 23;

  private static final Guard.OnPaper RATED = Guard.onPaper("fixture-rated", BenchGuards::rated);
  private static final Guard.OnPaper RESISTOR =
      Guard.onPaper("discharge-path", BenchGuards::resistor);

  /** Those that the bench's description answers. */
  static final List<Guard.OnPaper> ON_PAPER = List.of(RATED, RESISTOR);

  static final List<Guard> ALL =
      List.of(
          new Guard("interlock-whole", BenchGuards::interlock),
          new Guard("discharge-connected", BenchGuards::discharging),
          new Guard("fixture-fits-family", BenchGuards::fixture),
          RATED.guard(),
          RESISTOR.guard(),
          new Guard("channels-sampled", BenchGuards::channels),
          new Guard("sample-rate", BenchGuards::sampleRate),
          new Guard("line-rate", BenchGuards::lineRate),
          new Guard("temperature-fits-profile", BenchGuards::temperature));

  private BenchGuards() {}

  private static Answer interlock(RunPlan plan, BenchInstruments bench) {
    boolean reader = bench.interlock().whole();
    boolean board = bench.relay().heartbeat().interlockWhole();
    return Answer.of(
        reader && board,
        reader && board
            ? "The interlock chain is whole."
            : reader == board
                ? "The interlock chain is open."
                : "Interlock and fixture disagree about the chain.",
        "Close the cover and release the stop button.");
  }

  private static Answer discharging(RunPlan plan, BenchInstruments bench) {
    boolean connected = bench.discharge().discharging();
    return Answer.of(
        connected,
        "The discharge resistor is " + (connected ? "" : "not ") + "connected.",
        "Have the discharge switch checked; until then treat every unit as charged.");
  }

  private static Answer fixture(RunPlan plan, BenchInstruments bench) {
    FixtureDescription described = plan.bench().fixture();
    Optional<String> plugged = bench.relay().fixture();
    boolean fits =
        plugged.orElse(described.id()).equals(described.id())
            && described.families().contains(plan.family().id());
    return Answer.of(
        fits,
        plugged
                .map(id -> "Fixture " + id + " is plugged in, ")
                .orElse(
                    "Which fixture is plugged in it cannot say itself, and "
                        + plan.operator()
                        + " answers for it; ")
            + described.id()
            + " is described for "
            + String.join(", ", described.families())
            + "; the unit is a "
            + plan.family().id()
            + ".",
        "Plug in the family's fixture, or correct the bench description.");
  }

  private static Answer rated(RunPlan plan) {
    double abort_V = plan.family().abort().outputOver_V();
    double ceiling_V = plan.bench().fixture().ceiling_V();
    return Answer.of(
        abort_V <= ceiling_V,
        "The fixture may see "
            + Figures.number(ceiling_V, 0)
            + " V; the run is cut off at "
            + Figures.number(abort_V, 0)
            + " V.",
        "Use a fixture that is rated for this family.");
  }

  private static Answer resistor(RunPlan plan) {
    double there_ohm = plan.bench().fixture().discharge_ohm();
    double asked_ohm = plan.family().discharge().resistor_ohm();
    return Answer.of(
        there_ohm <= asked_ohm * RESISTOR_FACTOR && there_ohm >= asked_ohm / RESISTOR_FACTOR,
        "The fixture's discharge resistor is "
            + Figures.number(there_ohm, 0)
            + " Ω; the family asks for "
            + Figures.number(asked_ohm, 0)
            + " Ω.",
        "Use the family's fixture.");
  }

  private static Answer channels(RunPlan plan, BenchInstruments bench) {
    List<Channel> sampled = bench.digitizer().channels();
    List<String> wrong = new ArrayList<>();
    reaches(sampled, "output", "V", plan.family().abort().outputOver_V(), wrong);
    LeftOpen open = LeftOpen.by(plan, bench);
    double most_A =
        plan.profile().steps().stream()
            .filter(step -> !open.has(step))
            .mapToDouble(s -> bench.load().canPulse() ? s.highest_A() : s.load_A())
            .max()
            .orElse(0);
    reaches(sampled, "load", "A", Math.max(most_A, plan.family().ratedLoad_A()), wrong);
    for (SupplyFeed feed : plan.profile().feeds()) {
      reaches(sampled, feed.name(), "V", plan.family().inputCeiling_V(), wrong);
    }
    return Answer.of(
        wrong.isEmpty(),
        wrong.isEmpty()
            ? "Every channel that the profile needs is sampled."
            : String.join("; ", wrong) + ".",
        "Set the digitizer up for this family.");
  }

  private static void reaches(
      List<Channel> sampled, String name, String unit, double level, List<String> wrong) {
    sampled.stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .ifPresentOrElse(
            c -> {
              double top = c.offset() + c.lsb() * (Short.MAX_VALUE - 1);
              if (!c.unit().equals(unit)) {
                wrong.add("Channel " + name + " is in " + c.unit() + ", not in " + unit);
              } else if (top < level) {
                wrong.add(
                    "Channel "
                        + name
                        + " reaches "
                        + Figures.number(top, 1)
                        + " "
                        + unit
                        + ", and must see "
                        + Figures.number(level, 1)
                        + " "
                        + unit);
              }
            },
            () -> wrong.add("Channel " + name + " is not sampled"));
  }

  private static Answer sampleRate(RunPlan plan, BenchInstruments bench) {
    double asked_Hz = plan.profile().sampleRate_Hz();
    int most_Hz = bench.digitizer().most_Hz();
    return Answer.of(
        asked_Hz <= most_Hz,
        "The profile asks for "
            + Figures.number(asked_Hz, 0)
            + " samples a second"
            + (asked_Hz <= most_Hz ? "." : "; the digitizer takes at most " + most_Hz + "."),
        "Use a faster digitizer, or a profile that was made for this one.");
  }

  private static Answer lineRate(RunPlan plan, BenchInstruments bench) {
    Digitizer digitizer = bench.digitizer();
    int channels = digitizer.channels().size();
    Framing framing = Framing.of(plan.profile(), channels);
    double needs = digitizer.bytesPerSecond(framing.rate_Hz(), framing.samples());
    double carries =
        plan.bench().instrument(digitizer.role()).map(Connection::bytesPerSecond).orElse(0.0);
    return Answer.of(
        needs <= carries,
        "The profile needs "
            + Figures.number(needs, 0)
            + " bytes a second, the digitizer's line carries "
            + Figures.number(carries, 0)
            + ".",
        "Lower the sample rate in the profile, or use a faster line.");
  }

  /** Without a thermometer only a profile for room temperature may be run, and it says so. */
  private static Answer temperature(RunPlan plan, BenchInstruments bench) {
    double nominal_C = plan.profile().temperature_C();
    double tolerance_K = plan.profile().temperatureTolerance_K();
    String asked =
        "the profile asks for "
            + Figures.number(nominal_C, 0)
            + " ± "
            + Figures.number(tolerance_K, 0)
            + " °C.";
    if (bench.thermometer().isEmpty()) {
      return Answer.of(
          Math.abs(nominal_C - ROOM_C) <= tolerance_K,
          "The unit's temperature is not measured; " + asked,
          "Use a bench with a thermometer for what is not run at room temperature.");
    }
    Measurement unit = bench.thermometer().get().temperature();
    return Answer.of(
        Math.abs(unit.value() - nominal_C) <= tolerance_K,
        "The unit is at " + Figures.withU(unit) + "; " + asked,
        "Leave the unit until it has the temperature that the profile asks for.");
  }
}
