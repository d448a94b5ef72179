package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Which of the columns are supplies, which the output, which only sound like it. */
final class VoltageColumns {
  private static final double SURE = 0.95;
  private static final double LIKELY = 0.8;
  private static final double GUESS = 0.5;

  /** Share of dates among the cells from which on what is left is no fair sample. */
  private static final double MANGLED = 0.03;

  /** Supplies of 12 V and 24 V vehicles, engine running included, V. */
  private static final double SUPPLY_LOW_V = 6;

  private static final double SUPPLY_HIGH_V = 33;

  /** An output may rest this far from nominal and still be told by range, as a share of it. */
  private static final double FAR_BELOW = 0.7;

  private static final double FAR_ABOVE = 1.3;

  /** Without any word of volts it must rest this near: 100 kPa is not 110 V. */
  private static final double NEAR = 0.06;

  private final double[] nominals_V;
  private final Choices choices;

  VoltageColumns(double[] nominals_V, Choices choices) {
    this.nominals_V = nominals_V.clone();
    this.choices = choices;
  }

  /** The columns that say something about a voltage, of those that nothing else has taken. */
  List<Column> among(List<ColumnFacts> left, Predicate<Role> open) {
    List<Column> found = new ArrayList<>();
    List<Column> low = new ArrayList<>();
    for (ColumnFacts f : left) {
      Optional<Column> column = of(f);
      boolean restsLow =
          column.filter(c -> c.role() == Role.OUTPUT && c.confidence() < GUESS).isPresent();
      column.filter(c -> open.test(c.role())).ifPresent(restsLow ? low::add : found::add);
    }
    if (found.stream().noneMatch(c -> c.role() == Role.OUTPUT)) {
      found.addAll(low);
    }
    return found.stream().filter(c -> !outdone(c, found)).toList();
  }

  /** A guess gives way where another column is known by its name. */
  private static boolean outdone(Column c, List<Column> all) {
    return c.confidence() <= GUESS
        && all.stream().anyMatch(o -> o.role() == c.role() && o.confidence() > GUESS);
  }

  /** The unit of a column whose role a person gave. */
  Column said(ColumnFacts f, Column column) {
    boolean supply = column.role() == Role.SUPPLY;
    if (!supply && column.role() != Role.OUTPUT) {
      return column;
    }
    Optional<LogUnit> stated =
        stated(column.role()).or(() -> f.unit().filter(u -> u.kind() == LogUnit.Kind.VOLT));
    VoltScale.Found scale =
        VoltScale.into(
            f.sorted(), stated, SUPPLY_LOW_V, supply ? SUPPLY_HIGH_V : highest() * FAR_ABOVE);
    double factor =
        scale instanceof VoltScale.Found.Scale s
            ? s.scale().scale()
            : stated.map(LogUnit::scale).orElse(1.0);
    return column.scaled(factor, "V").near(supply ? nearness(f.label()) : 0);
  }

  private Optional<LogUnit> stated(Role role) {
    return Optional.ofNullable(choices.units().get(role)).flatMap(LogUnit::of);
  }

  private Optional<Column> of(ColumnFacts f) {
    Label label = f.label();
    boolean boostNamed = Vocabulary.OUTPUT.in(label);
    boolean volt = f.isA(LogUnit.Kind.VOLT);
    VoltageName name = VoltageName.of(label, volt);
    boolean counts = f.isA(LogUnit.Kind.COUNT) || Vocabulary.COUNTS.in(label);
    boolean share = f.isA(LogUnit.Kind.PERCENT) && (name.volts() || name.boost());
    boolean scaleless = counts || share;
    if (f.unit().isPresent() && !volt && !scaleless) {
      boolean trap = f.isA(LogUnit.Kind.PRESSURE) && boostNamed;
      return trap ? Optional.of(Column.of(f, Role.MANIFOLD, SURE, "its unit")) : Optional.empty();
    }
    if (f.dates() > MANGLED && (volt || boostNamed || Vocabulary.SUPPLY.in(label))) {
      return Optional.of(
          Column.of(f, Role.NO_SCALE, SURE, "a spreadsheet has turned numbers into dates"));
    }
    boolean named = boostNamed || Vocabulary.SUPPLY.in(label) || name.volts();
    if (f.numeric() < 0.2
        || f.empty()
        || (!named && !label.blank())
        || Vocabulary.NOT_A_FEED.in(label)) {
      return Optional.empty();
    }
    if (!volt && boostNamed && Vocabulary.PRESSURE.in(label)) {
      return Optional.of(Column.of(f, Role.MANIFOLD, LIKELY, "its name"));
    }
    if (Vocabulary.COMMANDED.in(label)) {
      return boostNamed
          ? Optional.of(Column.of(f, Role.COMMANDED, LIKELY, "its name"))
          : Optional.empty();
    }
    if (boostNamed && !name.volts() && !scaleless && !Quantities.onlyTheOutput(label)) {
      return Optional.of(Column.of(f, Role.NOT_SAID, GUESS, "its name, and no unit"));
    }
    return scaleless ? withoutScale(f, boostNamed, counts) : byRange(f, name);
  }

  private Optional<Column> withoutScale(ColumnFacts f, boolean boostNamed, boolean counts) {
    Role role = boostNamed ? Role.OUTPUT : Role.SUPPLY;
    if (!boostNamed && !Vocabulary.SUPPLY.in(f.label())) {
      return Optional.empty();
    }
    return stated(role)
        .map(u -> Column.of(f, role, LIKELY, "its name, scaled as said").scaled(u.scale(), "V"))
        .or(
            () ->
                Optional.of(
                    Column.of(
                        f,
                        Role.NO_SCALE,
                        LIKELY,
                        "its unit is " + (counts ? "counts" : "per cent"))));
  }

  private Optional<Column> byRange(ColumnFacts f, VoltageName name) {
    Optional<LogUnit> unit = f.unit().filter(u -> u.kind() == LogUnit.Kind.VOLT);
    VoltScale.Found asOutput =
        scale(f, Role.OUTPUT, unit, lowest() * FAR_BELOW, highest() * FAR_ABOVE);
    VoltScale.Found asSupply = scale(f, Role.SUPPLY, unit, SUPPLY_LOW_V, SUPPLY_HIGH_V);
    if (asOutput instanceof VoltScale.Found.Scale s && isOutput(name, s.scale())) {
      return Optional.of(
          scaled(f, Role.OUTPUT, name.confidence(name.out()), s.scale(), name.out() > 0));
    }
    if (asSupply instanceof VoltScale.Found.Scale s) {
      Optional<Column> supply = supply(f, name, s.scale());
      if (supply.isPresent()) {
        return supply;
      }
    }
    boolean mixed =
        asOutput instanceof VoltScale.Found.Mixed || asSupply instanceof VoltScale.Found.Mixed;
    if (name.out() <= 0 && name.in() <= 0) {
      return Optional.empty();
    }
    if (name.boost() && !name.volts() && !mixed) {
      return Optional.of(
          Column.of(f, Role.MANIFOLD, GUESS, "its range is none of an output in volts"));
    }
    return Optional.of(
        Column.of(
            f,
            Role.NO_SCALE,
            GUESS,
            mixed
                ? "some values are ten times the others: a decimal mark was lost"
                : "no scale brings it into the range of its name"));
  }

  /** A scale that nothing states must bring the channel right to nominal. */
  private boolean isOutput(VoltageName name, VoltScale scale) {
    boolean near = nearNominal(scale.rest());
    boolean told = name.out() > 0 || name.volts() || name.blank();
    boolean fits = scale.natural() ? near || name.volts() : near;
    boolean supplyByName = name.in() > 0 && name.out() <= 0;
    return told && fits && !(supplyByName && (name.battery() || !near || !scale.natural()));
  }

  private Optional<Column> supply(ColumnFacts f, VoltageName name, VoltScale scale) {
    boolean rests =
        (scale.rest() >= 11 && scale.rest() <= 15.5) || (scale.rest() >= 22 && scale.rest() <= 31);
    if (!scale.natural() && !rests) {
      return Optional.empty();
    }
    if (name.outputRatherThanSupply()) {
      // Half as sure as a guess: taken only if no other column is the output.
      return name.volts() && scale.natural() // 110 V of another family are never read as 11 V
          ? Optional.of(scaled(f, Role.OUTPUT, GUESS / 2, scale, true))
          : Optional.empty();
    }
    boolean dips = rests && f.least() * scale.scale() < scale.rest() - 0.8;
    if (name.in() <= 0 && !name.volts() && !(name.blank() && dips && scale.natural())) {
      return Optional.empty();
    }
    return Optional.of(
        scaled(f, Role.SUPPLY, name.confidence(name.in()), scale, name.in() > 0)
            .near(nearness(f.label())));
  }

  private VoltScale.Found scale(
      ColumnFacts f, Role role, Optional<LogUnit> unit, double low_V, double high_V) {
    Optional<LogUnit> said = stated(role);
    return VoltScale.into(f.sorted(), said.isPresent() ? said : unit, low_V, high_V);
  }

  private static Column scaled(
      ColumnFacts f, Role role, double confidence, VoltScale scale, boolean byName) {
    String why = (byName ? "its name and range, " : "its range, ") + scale.words();
    return Column.of(f, role, confidence, why).scaled(scale.scale(), "V");
  }

  static int nearness(Label label) {
    boolean computer = Vocabulary.ENGINE_COMPUTER.in(label);
    if (Vocabulary.INPUT.in(label) || (Vocabulary.AT_THE_MODULE.in(label) && !computer)) {
      return 3;
    }
    return computer ? 2 : Vocabulary.FAR_OFF.in(label) ? 0 : 1;
  }

  private boolean nearNominal(double rest_V) {
    return Arrays.stream(nominals_V).anyMatch(n -> Math.abs(rest_V - n) <= NEAR * n);
  }

  private double lowest() {
    return Arrays.stream(nominals_V).min().orElse(48);
  }

  private double highest() {
    return Arrays.stream(nominals_V).max().orElse(110);
  }
}
