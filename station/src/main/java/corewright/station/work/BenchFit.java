package corewright.station.work;

import static corewright.files.Section.shown;

import corewright.bench.run.Abilities;
import corewright.bench.run.Framing;
import corewright.files.JsonFile;
import corewright.files.Mistake;
import corewright.fixtures.describe.Argument;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.PortName;
import corewright.fixtures.describe.Samples;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.profiles.SupplyFeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A profile against the bench that shall run it: line, fixture, channels, instruments' ranges. */
final class BenchFit {
  /** What a bench may lack, and what then stands as not measured whatever the profile asks. */
  private static final Map<String, String> LACKS =
      new TreeMap<>(
          Map.of(
              "inputCurrent",
              "No channel inputCurrent: input current, efficiency, inrush and what is drawn without"
                  + " load stand as not measured.",
              "meter",
              "No meter: a short is found by the limited first power, and nothing is held against"
                  + " the digitizer.",
              "thermometer",
              "No thermometer: the case stands as not measured, no run ends because it is hot, and"
                  + " only room temperature may be asked for."));

  private final JsonFile file;
  private final Profile profile;
  private final Family family;
  private final BenchDescription bench;
  private final Function<String, Optional<Dialect>> dialectOf;
  private final Optional<Samples> samples;
  private final Abilities able;
  private final Map<String, String> left;

  /**
   * @param file the profile's
   * @param dialectOf the dialect of a role on the bench
   */
  BenchFit(
      JsonFile file,
      Profile profile,
      Family family,
      BenchDescription bench,
      Function<String, Optional<Dialect>> dialectOf) {
    this.dialectOf = dialectOf;
    this.samples = dialectOf.apply("digitizer").flatMap(Dialect::samples);
    this.file = file;
    this.profile = profile;
    this.family = family;
    this.bench = bench;
    this.able = BenchAbilities.of(bench, dialectOf);
    this.left = able.leaves(profile);
  }

  /** What of a bench description names something that is not there. */
  static List<Mistake> references(
      JsonFile file,
      BenchDescription bench,
      Catalogue catalogue,
      Function<String, Optional<Dialect>> dialects) {
    List<Mistake> found = new ArrayList<>();
    for (int i = 0; i < bench.instruments().size(); i++) {
      Connection instrument = bench.instruments().get(i);
      String where = "/instruments/" + i + "/dialect";
      Optional<Dialect> dialect = dialects.apply(instrument.dialect());
      if (!instrument.dialect().isEmpty() && !instrument.isByHand() && dialect.isEmpty()) {
        found.add(
            file.mistake(
                where,
                "there is no dialect '" + instrument.dialect() + "'",
                "Name a file in fixtures/dialects, without .json"));
      }
      dialect
          .filter(d -> !d.role().equals(instrument.role()))
          .ifPresent(
              d ->
                  found.add(
                      file.mistake(
                          where,
                          "'" + d.id() + "' speaks to a " + d.role(),
                          "Name a dialect for a " + instrument.role())));
    }
    found.addAll(unanswered(file, bench, dialects));
    for (int i = 0; i < bench.fixture().families().size(); i++) {
      String named = bench.fixture().families().get(i);
      if (!catalogue.familyIds().contains(named)) {
        found.add(
            file.mistake(
                "/fixture/families/" + i,
                "there is no family '" + named + "'",
                "Use one of: " + String.join(", ", catalogue.familyIds())));
      }
    }
    return found;
  }

  /** Registers are no answer: their instrument cannot be found by what it says. */
  private static List<Mistake> unanswered(
      JsonFile file, BenchDescription bench, Function<String, Optional<Dialect>> dialects) {
    List<Mistake> found = new ArrayList<>();
    for (int i = 0; i < bench.instruments().size(); i++) {
      Connection instrument = bench.instruments().get(i);
      boolean registers =
          dialects
              .apply(instrument.dialect())
              .flatMap(Dialect::samples)
              .filter(s -> s.form() instanceof Samples.Registers)
              .isPresent();
      if (registers && PortName.of(instrument.port()) instanceof PortName.Answer) {
        found.add(
            file.mistake(
                "/instruments/" + i + "/port",
                "what is read over Modbus does not answer *IDN?",
                "Name its adapter: usb:VENDOR:PRODUCT:SERIAL"));
      }
    }
    return found;
  }

  /** Why this bench cannot run the profile; empty if it can. */
  List<Mistake> mistakes() {
    List<Mistake> found = new ArrayList<>();
    samples.ifPresentOrElse(s -> plain(s, found), () -> line(found));
    fixture(found);
    feeds(found);
    range(dialectOf.apply("load"), "current_A", "load_A", Step::load_A, "A", found);
    range(dialectOf.apply("load"), "high_A", "pulse_A", this::highest_A, "A", found);
    range(dialectOf.apply("source"), "voltage_V", "input_V", Step::highest_V, "V", found);
    range(dialectOf.apply("source"), "limit_A", "inputLimit_A", Step::inputLimit_A, "A", found);
    return found;
  }

  /** What a person should know of a bench that can run the profile, each a sentence. */
  List<String> sentences() {
    List<String> all = new ArrayList<>(List.of(sentence()));
    profile.steps().stream()
        .filter(step -> left.containsKey(step.id()))
        .map(step -> leftOut(step, left.getOrDefault(step.id(), "")))
        .forEach(all::add);
    able.leavesInPart(profile)
        .forEach((id, lacks) -> all.add("Step " + id + ": " + String.join(" ", lacks)));
    LACKS.forEach(
        (lacking, sentence) -> {
          if (!has(lacking)) {
            all.add(sentence);
          }
        });
    return all;
  }

  /** A step that does without its events asks for none. */
  private double highest_A(Step step) {
    return able.pulses() ? step.highest_A() : step.load_A();
  }

  private boolean has(String roleOrChannel) {
    return bench.instrument(roleOrChannel).isPresent()
        || bench.channels().stream().anyMatch(c -> c.channel().equals(roleOrChannel));
  }

  private static String leftOut(Step step, String why) {
    return "Step "
        + step.id()
        + ", \""
        + step.title()
        + "\": "
        + why
        + ". It stands as not measured"
        + (step.byHand().isPresent()
            ? " unless somebody enters it: --hand " + step.id() + "=VALUE±U,INSTRUMENT"
            : "")
        + (step.detail().needed() ? "; where a limit asks for it, there is no verdict." : ".");
  }

  /** What the bench's line is asked for, when it can give it. */
  private String sentence() {
    return "Bench "
        + bench.id()
        + " can run it: its line carries "
        + shown(carries())
        + " bytes a second, and "
        + shown(Math.ceil(needs()))
        + " are needed.";
  }

  /** A digitizer that only samples: its own fastest rate, and its own form on the line. */
  private void plain(Samples samples, List<Mistake> found) {
    double rate_Hz = profile.sampleRate_Hz();
    if (rate_Hz > samples.most_Hz()) {
      found.add(
          file.mistake(
              "/sampleRate_Hz",
              "it asks for "
                  + shown(rate_Hz)
                  + " samples a second, and the digitizer of "
                  + bench.id()
                  + " takes at most "
                  + shown(samples.most_Hz()),
              "Use a faster digitizer, or a profile that was made for this one"));
      return;
    }
    if (needs() > carries()) {
      found.add(
          file.mistake(
              "/sampleRate_Hz",
              "the digitizer's line on "
                  + bench.id()
                  + " carries "
                  + shown(carries())
                  + " bytes a second, and "
                  + shown(Math.ceil(needs()))
                  + " are needed",
              "Lower the rate, or use a faster line"));
    }
  }

  private void line(List<Mistake> found) {
    if (needs() <= carries()) {
      return;
    }
    int highest = Framing.highestRate_Hz(carries(), bench.channels().size());
    found.add(
        file.mistake(
            "/sampleRate_Hz",
            "with "
                + bench.channels().size()
                + " channels it needs "
                + shown(Math.ceil(needs()))
                + " bytes a second, and the digitizer's line on "
                + bench.id()
                + " carries "
                + shown(carries()),
            highest > 0
                ? "The highest rate that fits is "
                    + highest
                    + " Hz; if the line carries more, as USB does, say so in the bench's"
                    + " bytesPerSecond"
                : "No rate fits: use a faster line"));
  }

  private void fixture(List<Mistake> found) {
    if (!bench.fixture().families().contains(family.id())) {
      found.add(
          file.mistake(
              "/family",
              "the fixture on "
                  + bench.id()
                  + " fits "
                  + String.join(", ", bench.fixture().families())
                  + ", not "
                  + family.id(),
              "Plug in the family's fixture and name its bench"));
    }
    double cut_V = family.abort().outputOver_V();
    if (bench.fixture().ceiling_V() < cut_V) {
      found.add(
          file.mistake(
              "/family",
              "the run is cut off at "
                  + shown(cut_V)
                  + " V, and the fixture may see "
                  + shown(bench.fixture().ceiling_V())
                  + " V",
              "Use a fixture that is rated for this family"));
    }
  }

  private void feeds(List<Mistake> found) {
    List<String> channels =
        bench.channels().stream().map(BenchDescription.ChannelCalibration::channel).toList();
    for (int i = 0; i < profile.feeds().size(); i++) {
      SupplyFeed feed = profile.feeds().get(i);
      if (!channels.contains(feed.name())) {
        found.add(
            file.mistake(
                "/feeds/" + i + "/name",
                bench.id() + " has no channel '" + feed.name() + "'",
                "It has " + String.join(", ", channels)));
      }
    }
  }

  private void range(
      Optional<Dialect> dialect,
      String argument,
      String key,
      ToDoubleFunction<Step> level,
      String unit,
      List<Mistake> found) {
    Optional<Argument> range = dialect.map(d -> d.arguments().get(argument));
    for (int i = 0; range.isPresent() && i < profile.steps().size(); i++) {
      Step step = profile.steps().get(i);
      double asked = level.applyAsDouble(step);
      if (asked > range.get().most() && !left.containsKey(step.id())) {
        found.add(
            file.mistake(
                "/steps/" + i + "/" + key,
                shown(asked)
                    + " "
                    + unit
                    + " is above what the "
                    + dialect.get().role()
                    + " of "
                    + bench.id()
                    + " takes, "
                    + shown(range.get().most())
                    + " "
                    + unit,
                "Write at most " + shown(range.get().most()) + ", or use another bench"));
      }
    }
  }

  private double needs() {
    int channels = bench.channels().size();
    return BenchAbilities.needs(samples, Framing.of(profile, channels), channels);
  }

  private double carries() {
    return bench.instrument("digitizer").map(Connection::bytesPerSecond).orElse(0.0);
  }
}
