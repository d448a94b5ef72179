package corewright.bench.log.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What each column of a sheet is taken for: by what a person said, else by name, unit and behaviour
 * together.
 */
final class ColumnRoles {
  private static final double SURE = 0.95;
  private static final double LIKELY = 0.8;
  private static final double GUESS = 0.5;

  private final String file;
  private final SheetSample sheet;
  private final Choices choices;
  private final List<ColumnFacts> facts = new ArrayList<>();
  private final Column[] taken;

  ColumnRoles(String file, SheetSample sheet, Choices choices) {
    this.file = file;
    this.sheet = sheet;
    this.choices = choices;
    for (int c = 0; c < sheet.columns(); c++) {
      facts.add(ColumnFacts.of(sheet, c));
    }
    this.taken = new Column[facts.size()];
  }

  List<ColumnFacts> facts() {
    return facts;
  }

  /** All columns in the order of the file, times still open. */
  List<Column> columns(double[] nominals_V, TimeColumns times) {
    said();
    personal();
    times.columns().forEach(t -> take(t.facts(), Role.TIME, t.confidence(), t.why()));
    times.frame().ifPresent(f -> take(f, Role.FRAME, LIKELY, "its name, and it counts up by one"));
    speed();
    plain(Role.FUEL);
    plain(Role.SYNC);
    VoltageColumns voltages = new VoltageColumns(nominals_V, choices);
    for (ColumnFacts f : facts) {
      if (!free(f) && taken[f.index()].confidence() == 1) {
        taken[f.index()] = voltages.said(f, taken[f.index()]);
      }
    }
    List<ColumnFacts> left = facts.stream().filter(this::free).toList();
    voltages.among(left, this::open).forEach(c -> taken[c.index()] = c);
    List<Column> all = new ArrayList<>();
    for (ColumnFacts f : facts) {
      all.add(free(f) ? Column.of(f, Role.NONE, 1, "nothing that is judged") : taken[f.index()]);
    }
    return all;
  }

  private boolean free(ColumnFacts f) {
    return taken[f.index()] == null;
  }

  private void take(ColumnFacts f, Role role, double confidence, String why) {
    if (free(f)) {
      taken[f.index()] = Column.of(f, role, confidence, why);
    }
  }

  /** What a person said comes first, and takes the role from every other column. */
  private void said() {
    for (Role role : Role.values()) {
      for (String which : choices.columns().getOrDefault(role, List.of())) {
        if (!which.equalsIgnoreCase("none")) {
          take(named(role, which), role, 1, "as said");
        }
      }
    }
  }

  private ColumnFacts named(Role role, String which) {
    for (ColumnFacts f : facts) {
      if (which.equals(String.valueOf(f.index() + 1))
          || Folded.of(which).equals(Folded.of(f.label().original()))) {
        return f;
      }
    }
    throw Unreadable.at(
        file,
        Math.max(1, sheet.head().headerLine()),
        1,
        "no column is number or name '"
            + Inert.text(which)
            + "', which was said to be the "
            + role.words(),
        "The log has " + facts.size() + " columns; name one of them, or its number from 1");
  }

  private boolean open(Role role) {
    return !choices.columns().containsKey(role);
  }

  private void personal() {
    for (ColumnFacts f : facts) {
      boolean voltage = f.isA(LogUnit.Kind.VOLT) || Vocabulary.VOLT.in(f.label());
      boolean says = Vocabulary.PERSONAL.in(f.label()) || Vocabulary.POSITION.in(f.label());
      boolean named = says && !voltage && !ofTheEngine(f);
      if (named || f.identities() > 0.2) {
        take(f, Role.PERSONAL, SURE, "says who or where");
      }
    }
  }

  private static boolean ofTheEngine(ColumnFacts f) {
    boolean drives =
        f.numeric() > 0.5
            && (Vocabulary.OUTPUT_SURE.in(f.label()) || Vocabulary.INPUT.in(f.label()))
            && !Vocabulary.POSITION.in(f.label());
    return drives
        || Vocabulary.SPEED.in(f.label())
        || f.isA(LogUnit.Kind.SPEED)
        || f.clocks() > 0.5;
  }

  private void speed() {
    if (!open(Role.SPEED)) {
      return;
    }
    Comparator<Map.Entry<ColumnFacts, Double>> best =
        Map.Entry.<ColumnFacts, Double>comparingByValue().reversed();
    List<Map.Entry<ColumnFacts, Double>> candidates = new ArrayList<>();
    for (ColumnFacts f : facts) {
      double score = free(f) && f.numeric() > 0.3 ? speedScore(f) : 0;
      if (score > 0) {
        candidates.add(Map.entry(f, score));
      }
    }
    candidates.sort(best);
    candidates.stream()
        .findFirst()
        .ifPresent(
            e -> {
              String why =
                  e.getValue() >= 2 ? "its name" : e.getValue() >= 1 ? "its unit" : "its behaviour";
              double confidence = e.getValue() >= 2 ? SURE : e.getValue() >= 1 ? LIKELY : GUESS;
              take(e.getKey(), Role.SPEED, confidence, why);
              Column c = taken[e.getKey().index()];
              taken[c.index()] = c.scaled(speedScale(e.getKey()), "1/min");
            });
  }

  private static double speedScale(ColumnFacts f) {
    return f.unit().filter(u -> u.kind() == LogUnit.Kind.SPEED).map(LogUnit::scale).orElse(1.0);
  }

  private double speedScore(ColumnFacts f) {
    Label label = f.label();
    boolean otherUnit =
        f.unit().isPresent() && !f.isA(LogUnit.Kind.SPEED) && !f.isA(LogUnit.Kind.OTHER);
    if (otherUnit || Vocabulary.NOT_ENGINE.in(label) || Vocabulary.COMMANDED.in(label)) {
      return 0;
    }
    boolean alone = label.words().size() == 1 && label.words().get(0).equals("n");
    double byName = Vocabulary.SPEED.in(label) || alone ? 2 : 0;
    double byUnit = f.isA(LogUnit.Kind.SPEED) ? 1 : 0;
    double byBehaviour = label.blank() && behavesAsSpeed(f) ? 0.5 : 0;
    double score = byName + byUnit + byBehaviour;
    return score + (score > 0 && f.greatest() > 0 ? 0.25 : 0);
  }

  /** Rests at nothing, turns at a starter's pace. */
  private static boolean behavesAsSpeed(ColumnFacts f) {
    return f.least() == 0
        && f.greatest() >= 80
        && f.greatest() <= 6000
        && f.within(80, 400) > 0.02
        && f.within(0, 0) > 0.02;
  }

  private void plain(Role role) {
    if (!open(role)) {
      return;
    }
    for (ColumnFacts f : facts) {
      boolean is = role == Role.FUEL ? isFuel(f) : isSync(f.label());
      if (free(f) && is) {
        take(f, role, LIKELY, f.isA(LogUnit.Kind.QUANTITY) ? "its unit" : "its name");
      }
    }
  }

  private static boolean isSync(Label label) {
    return Vocabulary.SYNC.in(label) && !Vocabulary.NOT_SYNC.in(label);
  }

  private static boolean isFuel(ColumnFacts f) {
    boolean wrongUnit =
        f.isA(LogUnit.Kind.PRESSURE)
            || f.isA(LogUnit.Kind.TEMPERATURE)
            || f.isA(LogUnit.Kind.PERCENT)
            || f.isA(LogUnit.Kind.VOLT)
            || f.isA(LogUnit.Kind.SPEED);
    boolean named = Vocabulary.FUEL.in(f.label()) || f.isA(LogUnit.Kind.QUANTITY);
    return named
        && !wrongUnit
        && f.numeric() > 0.3
        && !Vocabulary.NOT_FUEL.in(f.label())
        && !Vocabulary.COMMANDED.in(f.label());
  }

  /** The kept column of a role with the highest confidence. */
  static Optional<Column> first(List<Column> columns, Role role) {
    return columns.stream()
        .filter(c -> c.role() == role)
        .max(Comparator.comparingDouble(Column::confidence));
  }
}
