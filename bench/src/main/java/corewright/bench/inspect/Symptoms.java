package corewright.bench.inspect;

import corewright.bench.inspect.Symptom.Kind;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Verdict;
import corewright.measures.Figures;
import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the customer's codes and complaint point at, by Bayes' rule. Evidence and no test: it is set
 * against the bench, never above it, and no verdict and no row of the decision table looks at it.
 *
 * @param said one for each question that was answered
 * @param codes the customer's codes as given, each with where it belongs
 */
public record Symptoms(List<Symptom> said, List<Code> codes) {
  /** Under this prefix the record keeps single codes; the answer is where, the text is as read. */
  public static final String CODE = "symptom/code/";

  /** Where a code can belong besides an output, which is given by its number. */
  public static final List<String> PLACES =
      List.of("every output", "supply", "ground", "module", "bus");

  private static final String EVERY = PLACES.get(0);

  public Symptoms {
    said = List.copyOf(said);
    codes = List.copyOf(codes);
  }

  /** One fault code: its text as given, and an output's number or one of {@link #PLACES}. */
  public record Code(String text, String where) {}

  /** What the answers of a visit say; single codes count before what was said of them at large. */
  public static Symptoms of(Family family, List<CueAnswer> answers) {
    List<Code> codes =
        answers.stream()
            .filter(a -> a.cue().startsWith(CODE))
            .map(a -> new Code(a.read(), a.answer()))
            .toList();
    List<Symptom> said = new ArrayList<>();
    pattern(family, codes).or(() -> said(answers, Kind.CODES)).ifPresent(said::add);
    said(answers, Kind.WHEN).ifPresent(said::add);
    said(answers, Kind.AFTER).ifPresent(said::add);
    return new Symptoms(said, codes);
  }

  /** Probability of each suspect given what was said; the bench is not asked. */
  public Map<Suspect, Double> posterior() {
    return posterior(EnumSet.allOf(Suspect.class));
  }

  /** Whether the complaint names a condition under which a unit must be tried before it is good. */
  public boolean names(Symptom condition) {
    return said.contains(condition);
  }

  /** Sentences: what it points at, and what the bench says to that; none where nothing was said. */
  public List<String> sentences(Optional<Verdict> bench) {
    if (said.isEmpty()) {
      return List.of();
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(pointing());
    sentences.add(
        bench
            .map(
                v ->
                    switch (v) {
                      case FAIL, UNSAFE ->
                          "The bench finds the unit itself at fault, and stands above what was"
                              + " reported.";
                      case PASS -> "The bench finds the unit good; what is left is " + left() + ".";
                      case MARGINAL, VOID, INCOMPLETE ->
                          "The bench has not settled it, and a report does not.";
                    })
            .orElse("It was not tested yet, and a report is no test."));
    return sentences;
  }

  private String pointing() {
    Map<Suspect, Double> p = posterior();
    String shared = listed(p, EnumSet.of(Suspect.MODULE, Suspect.FEED, Suspect.GROUND));
    String one = listed(p, EnumSet.of(Suspect.ONE_OUTPUT));
    if (said.contains(Symptom.EVERY_OUTPUT)) {
      return "Every output has a code at once, which points at what they share: "
          + shared
          + "; not at each load ("
          + number(p, Suspect.ONE_OUTPUT)
          + ").";
    }
    if (said.contains(Symptom.ONE_OUTPUT)) {
      return "One output alone has a code, which points at "
          + one
          + " rather than at what all share: "
          + shared
          + ".";
    }
    return "What was reported ("
        + String.join(", ", said.stream().map(Symptom::words).toList())
        + ") leaves "
        + listed(p, EnumSet.allOf(Suspect.class))
        + ".";
  }

  private String left() {
    Set<Suspect> others = EnumSet.complementOf(EnumSet.of(Suspect.MODULE));
    return listed(posterior(others), others);
  }

  private Map<Suspect, Double> posterior(Set<Suspect> of) {
    Map<Suspect, Double> weight = new EnumMap<>(Suspect.class);
    for (Suspect suspect : of) {
      double p = suspect.prior();
      for (Symptom symptom : said) {
        p *= symptom.given(suspect);
      }
      weight.put(suspect, p);
    }
    double sum = weight.values().stream().mapToDouble(Double::doubleValue).sum();
    weight.replaceAll((s, p) -> p / sum);
    return weight;
  }

  private static Optional<Symptom> pattern(Family family, List<Code> codes) {
    if (codes.isEmpty()) {
      return Optional.empty();
    }
    Set<String> outputs = new TreeSet<>();
    codes.stream().map(Code::where).filter(w -> !PLACES.contains(w)).forEach(outputs::add);
    boolean every =
        codes.stream().anyMatch(c -> c.where().equals(EVERY))
            || (outputs.size() > 1 && outputs.size() == family.outputs());
    if (every) {
      return Optional.of(Symptom.EVERY_OUTPUT);
    }
    return Optional.of(
        switch (outputs.size()) {
          case 0 -> Symptom.SHARED_ONLY;
          case 1 -> Symptom.ONE_OUTPUT;
          default -> Symptom.SEVERAL_OUTPUTS;
        });
  }

  private static Optional<Symptom> said(List<CueAnswer> answers, Kind kind) {
    return answers.stream()
        .filter(a -> a.cue().equals(kind.id()))
        .reduce((a, b) -> b)
        .flatMap(a -> Symptom.of(kind, a.answer()));
  }

  private static String listed(Map<Suspect, Double> p, Set<Suspect> of) {
    return String.join(
        ", ",
        p.entrySet().stream()
            .filter(e -> of.contains(e.getKey()))
            .sorted(Map.Entry.<Suspect, Double>comparingByValue().reversed())
            .map(e -> e.getKey().words() + " (" + Figures.number(e.getValue(), 2) + ")")
            .toList());
  }

  private static String number(Map<Suspect, Double> p, Suspect suspect) {
    return Figures.number(p.getOrDefault(suspect, 0.0), 2);
  }
}
