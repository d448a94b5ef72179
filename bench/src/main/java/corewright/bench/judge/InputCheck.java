package corewright.bench.judge;

import corewright.bench.record.Qualifier;
import corewright.measures.FeedReadings;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.profiles.SupplyFeed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether the input held well enough for the output to be judged: the lowest 1 ms median of every
 * supply feed over each whole judged hold. A run is as good as its worst judged hold.
 */
final class InputCheck {
  /** Asked for whenever the input was the doubtful part. */
  static final String STIFFER = "Repeat on a stiffer supply.";

  private static final String LOST =
      "Repeat the test; if samples are lost again, use a shorter cable or another adapter for the"
          + " digitizer.";

  private static final String NO_CHANNEL = "no channel has it";
  private static final String CONNECT = "Connect its sense leads, then repeat the test.";

  /** How far the input may lie under what a supply drop asks for: sources do not land on it. */
  private static final double DROP_TOLERANCE = 0.05;

  private final Family family;
  private final Profile profile;
  private final Plan plan;

  InputCheck(Family family, Profile profile, Plan plan) {
    this.family = family;
    this.profile = profile;
    this.plan = plan;
  }

  /**
   * What one feed allows in one hold.
   *
   * @param spare_V how far above its good edge; negative infinity where it was not read
   * @param sentence what was seen, with the reading; the most telling where several are joined
   * @param remedy what to do about it, where it is not valid
   */
  record Seen(Qualifier qualifier, double spare_V, String sentence, String remedy) {
    private Seen(Qualifier qualifier, double spare_V, String sentence) {
      this(qualifier, spare_V, sentence, STIFFER);
    }

    /** Whether there is a reading; without one the supply is not what is in doubt. */
    boolean read() {
      return spare_V != Double.NEGATIVE_INFINITY;
    }

    private static final Comparator<Seen> WORST_FIRST =
        Comparator.comparing(Seen::qualifier).reversed().thenComparingDouble(Seen::spare_V);
  }

  /** The worst of holds and cranking. */
  Seen run(MeasuredRun run) {
    Seen ofHolds = holds(run.holds());
    return crank(run.reading(Quantity.CRANK_INPUT))
        .filter(seen -> Seen.WORST_FIRST.compare(seen, ofHolds) < 0)
        .orElse(ofHolds);
  }

  /**
   * The lowest feed of all crankings against the highest edges of the feeds; empty where the run
   * has none.
   */
  private Optional<Seen> crank(Reading lowest) {
    double good_V = profile.feeds().stream().mapToDouble(f -> f.zones().good_V()).max().orElse(0);
    double tolerated_V =
        profile.feeds().stream().mapToDouble(f -> f.zones().tolerated_V()).max().orElse(0);
    return lowest
        .measurement()
        .map(
            m -> {
              Qualifier is =
                  m.value() >= good_V
                      ? Qualifier.VALID
                      : m.value() >= tolerated_V ? Qualifier.TOLERATED : Qualifier.VOID;
              String bound = Figures.like(is == Qualifier.VOID ? tolerated_V : good_V, m);
              return new Seen(
                  is,
                  m.value() - good_V,
                  switch (is) {
                    case VALID ->
                        "The input stayed at or above "
                            + Figures.withU(m)
                            + " while cranking: a valid test.";
                    case TOLERATED ->
                        "The input fell to "
                            + Figures.withU(m)
                            + " while cranking, below "
                            + bound
                            + ": a pass counts, a fail does not.";
                    case VOID ->
                        "The input fell to "
                            + Figures.withU(m)
                            + " while cranking, below "
                            + bound
                            + ": too low for a valid test.";
                  });
            });
  }

  /** The worst of all judged holds; of all holds if none is judged; void if there are none. */
  private Seen holds(List<MeasuredHold> holds) {
    List<MeasuredHold> judged = holds.stream().filter(plan::judged).toList();
    return (judged.isEmpty() ? holds : judged)
        .stream()
            .map(this::hold)
            .min(Seen.WORST_FIRST)
            .orElse(new Seen(Qualifier.VOID, 0, "The input was not measured."));
  }

  /** The worst feed of one hold. */
  Seen hold(MeasuredHold hold) {
    Seen worst =
        hold.feeds().stream()
            .map(feed -> feed(hold, feed))
            .min(Seen.WORST_FIRST)
            .orElse(missing(hold, "input", Reading.none(NO_CHANNEL)));
    boolean named = profile.feeds().size() > 1;
    return profile.feeds().stream()
        .map(SupplyFeed::name)
        .filter(name -> named && hold.feeds().stream().noneMatch(f -> f.name().equals(name)))
        .findFirst()
        .map(name -> missing(hold, name, Reading.none(NO_CHANNEL)))
        .orElse(worst);
  }

  private Seen feed(MeasuredHold hold, FeedReadings feed) {
    Optional<Measurement> lowest = feed.lowestMedian().measurement();
    if (lowest.isEmpty()) {
      return missing(hold, feed.name(), feed.lowestMedian());
    }
    Measurement m = lowest.get();
    InputZones asked = edges(feed);
    InputZones zones = lowered(asked, hold);
    String at = Sentences.atLoad(hold);
    String who = profile.feeds().size() > 1 ? "The supply feed " + feed.name() : "The input";
    if (m.value() >= zones.good_V()) {
      String held =
          zones.good_V() < asked.good_V()
              ? " dropped to %s%s, as the profile asks."
              : " stayed at or above %s%s: a valid test.";
      return new Seen(
          Qualifier.VALID,
          m.value() - zones.good_V(),
          who + String.format(java.util.Locale.ROOT, held, Figures.withU(m), at));
    }
    boolean tolerated = m.value() >= zones.tolerated_V();
    String bound = Figures.like(tolerated ? zones.good_V() : zones.tolerated_V(), m);
    return new Seen(
        tolerated ? Qualifier.TOLERATED : Qualifier.VOID,
        m.value() - zones.good_V(),
        who
            + " fell to "
            + Figures.withU(m)
            + at
            + ", below "
            + bound
            + (tolerated ? ": a pass counts, a fail does not." : ": too low for a valid test."));
  }

  /** The feed's own edges; the family's where the profile does not name the feed. */
  private InputZones edges(FeedReadings feed) {
    return profile.feeds().stream()
        .filter(f -> profile.feeds().size() == 1 || f.name().equals(feed.name()))
        .map(SupplyFeed::zones)
        .findFirst()
        .orElse(family.zones());
  }

  /**
   * A profile that drops the supply lowers the zones to what it asks for, and never raises them.
   */
  private InputZones lowered(InputZones asked, MeasuredHold hold) {
    if (!profile.supplyDrops()) {
      return asked;
    }
    double drop =
        plan.steps(hold).stream().mapToDouble(Step::input_V).min().orElse(Double.MAX_VALUE);
    double allowed = drop * (1 - DROP_TOLERANCE);
    return new InputZones(
        Math.min(asked.good_V(), allowed), Math.min(asked.tolerated_V(), allowed));
  }

  private static Seen missing(MeasuredHold hold, String feed, Reading reading) {
    String why = reading instanceof Reading.NotMeasured none ? none.reason() : NO_CHANNEL;
    return new Seen(
        Qualifier.VOID,
        Double.NEGATIVE_INFINITY,
        "The supply feed "
            + feed
            + " was not read"
            + Sentences.atLoad(hold)
            + " ("
            + why
            + "): without it nothing is said about the unit.",
        why.equals(NO_CHANNEL) ? CONNECT : LOST);
  }
}
