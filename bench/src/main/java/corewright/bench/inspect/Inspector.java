package corewright.bench.inspect;

import corewright.bench.identify.Identifier;
import corewright.bench.identify.Quantified;
import corewright.bench.inspect.Inspection.Line;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
import corewright.profiles.Grade;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the answers about a unit say of its condition. The rules are the family's own file. */
public final class Inspector {
  /** The cue that is a mass. */
  private static final String MASS = "mass";

  private final Family family;
  private final List<CueAnswer> answers;
  private final Map<String, String> worst;

  private Inspector(Family family, List<CueAnswer> answers) {
    this.family = family;
    this.answers = answers;
    this.worst = Checklist.worst(family, answers);
  }

  /**
   * Reads a checklist.
   *
   * @param answers of the whole visit; of several to one line the latest last
   * @param identification the build whose mass is expected; empty where it is not known
   */
  public static Inspection of(
      Family family, List<CueAnswer> answers, Optional<Identification> identification) {
    Inspector inspector = new Inspector(family, answers);
    List<Line> lines = inspector.lines();
    Optional<Grade> grade =
        lines.stream()
            .map(l -> grade(l.item(), l.answer()))
            .reduce((a, b) -> a.worseThan(b) ? a : b);
    return new Inspection(
        lines,
        grade,
        lines.stream()
            .filter(l -> grade(l.item(), l.answer()) != Grade.A)
            .filter(l -> grade.map(g -> g == grade(l.item(), l.answer())).orElse(false))
            .map(l -> l.item().id() + ": " + l.answer())
            .toList(),
        lines.stream()
            .filter(l -> l.item().blocks().contains(l.answer()))
            .map(l -> l.item().id() + ": " + l.answer())
            .toList(),
        inspector.open(),
        inspector.mass(identification));
  }

  private static Grade grade(CheckItem item, String answer) {
    return item.grades().getOrDefault(answer, Grade.A);
  }

  private List<Line> lines() {
    Map<String, CueAnswer> latest = new LinkedHashMap<>();
    answers.forEach(a -> latest.put(a.cue(), a));
    List<Line> lines = new ArrayList<>();
    for (CheckItem item : family.checklist()) {
      String answer = worst.getOrDefault(item.id(), "");
      if (item.answers().contains(answer)) {
        lines.add(
            new Line(item, answer, Optional.ofNullable(latest.get(item.id())), pins(item, latest)));
      }
    }
    return lines;
  }

  private static List<CueAnswer> pins(CheckItem item, Map<String, CueAnswer> latest) {
    return latest.values().stream()
        .filter(a -> item.perPin() && a.cue().startsWith(item.id() + Checklist.PIN))
        .filter(a -> item.answers().contains(a.answer()))
        .toList();
  }

  private List<String> open() {
    List<String> open = new ArrayList<>();
    for (CheckItem item : Checklist.asked(family, worst)) {
      String answer = worst.getOrDefault(item.id(), "");
      boolean told = worst.keySet().stream().anyMatch(id -> id.startsWith(item.id() + "/"));
      if (!item.answers().contains(answer)) {
        open.add(item.id());
      } else if (item.perPin() && !answer.equals(item.unremarkable()) && !told) {
        open.add(item.id() + ", by pin");
      }
    }
    boolean weighed = answers.stream().anyMatch(a -> a.cue().equals(MASS) && isSeen(a));
    if (!weighed && family.cues().stream().anyMatch(c -> c.id().equals(MASS))) {
      open.add(MASS);
    }
    return open;
  }

  private Optional<MassCheck> mass(Optional<Identification> identification) {
    Optional<String> read =
        answers.stream()
            .filter(a -> a.cue().equals(MASS) && !a.read().isEmpty())
            .reduce((a, b) -> b)
            .map(CueAnswer::read);
    return read.flatMap(
        text ->
            identification
                .filter(i -> i.band() != Band.UNCERTAIN)
                .flatMap(i -> family.variant(i.variant()))
                .flatMap(
                    v -> v.mass().map(m -> MassCheck.of(Quantified.of(text, "g"), v.id(), m))));
  }

  private static boolean isSeen(CueAnswer answer) {
    return !answer.read().isEmpty() || !answer.answer().equals(Identifier.NOT_SEEN);
  }
}
