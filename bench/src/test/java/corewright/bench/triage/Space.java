package corewright.bench.triage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Every case that the inputs of the decision table can make. */
final class Space {
  /** A failed repair job of a build that can be rebuilt, with nothing in the way. */
  static final Case PLAIN =
      new Case(
          Custody.CLEAR,
          new Build(Build.Identity.IDENTIFIED, Build.Candidates.AGREE, Build.Rebuildable.YES),
          new Proof(Proof.Evidence.FAIL, Proof.Coverage.COMPLETE),
          Terms.plain(Terms.Mode.REPAIR),
          Means.PLAIN);

  private Space() {}

  static final List<Custody> CUSTODIES =
      product(
          product(List.of(Custody.Lock.values()), Custody.Safety.values(), Space::custody),
          Custody.Condition.values(),
          (c, v) -> new Custody(c.lock(), c.safety(), v));

  static final List<Build> BUILDS =
      product(
          product(
              List.of(Build.Identity.values()),
              Build.Candidates.values(),
              (i, c) -> new Build(i, c, Build.Rebuildable.YES)),
          Build.Rebuildable.values(),
          (b, v) -> new Build(b.identity(), b.candidates(), v));

  static final List<Proof> PROOFS =
      product(List.of(Proof.Evidence.values()), Proof.Coverage.values(), Proof::new);

  static final List<Terms> TERMS = terms();
  static final List<Means> MEANS = means();

  static final long SIZE =
      (long) CUSTODIES.size() * BUILDS.size() * PROOFS.size() * TERMS.size() * MEANS.size();

  private static Custody custody(Custody.Lock lock, Custody.Safety safety) {
    return new Custody(lock, safety, Custody.Condition.SOUND);
  }

  private static List<Terms> terms() {
    List<Terms> terms = List.of(PLAIN.terms());
    terms =
        product(
            terms,
            Terms.Mode.values(),
            (t, v) -> new Terms(v, t.claim(), t.data(), t.cause(), t.approval()));
    terms =
        product(
            terms,
            Terms.Claim.values(),
            (t, v) -> new Terms(t.mode(), v, t.data(), t.cause(), t.approval()));
    terms =
        product(
            terms,
            Terms.Data.values(),
            (t, v) -> new Terms(t.mode(), t.claim(), v, t.cause(), t.approval()));
    terms =
        product(
            terms,
            Terms.Cause.values(),
            (t, v) -> new Terms(t.mode(), t.claim(), t.data(), v, t.approval()));
    return product(terms, Terms.Approval.values(), Terms::with);
  }

  private static List<Means> means() {
    List<Means> means = List.of(PLAIN.means());
    means = product(means, Means.Economy.values(), Means::with);
    means = product(means, Means.NextTest.values(), Space::with);
    means = product(means, Means.Parts.values(), Space::with);
    return product(means, Means.Preventive.values(), Space::with);
  }

  private static Means with(Means m, Means.NextTest v) {
    return new Means(m.economy(), v, m.parts(), m.preventive());
  }

  private static Means with(Means m, Means.Parts v) {
    return new Means(m.economy(), m.nextTest(), v, m.preventive());
  }

  private static Means with(Means m, Means.Preventive v) {
    return new Means(m.economy(), m.nextTest(), m.parts(), v);
  }

  /**
   * The plain case with some inputs set, as {@code Evidence=PASS Mode=STOCK}.
   *
   * @throws IllegalArgumentException if a word is no input or no value of one
   */
  static Case plainBut(String inputs) {
    Case c = PLAIN;
    for (String input : inputs.split(" ")) {
      if (!input.isEmpty()) {
        String[] pair = input.split("=");
        c = set(c, pair[0], pair[1]);
      }
    }
    return c;
  }

  private static Case set(Case c, String input, String value) {
    Custody y = c.custody();
    Build b = c.build();
    Proof p = c.proof();
    Terms t = c.terms();
    Means m = c.means();
    switch (input) {
      case "Lock" -> y = new Custody(Custody.Lock.valueOf(value), y.safety(), y.condition());
      case "Safety" -> y = new Custody(y.lock(), Custody.Safety.valueOf(value), y.condition());
      case "Condition" -> y = new Custody(y.lock(), y.safety(), Custody.Condition.valueOf(value));
      case "Identity" ->
          b = new Build(Build.Identity.valueOf(value), b.candidates(), b.rebuildable());
      case "Candidates" ->
          b = new Build(b.identity(), Build.Candidates.valueOf(value), b.rebuildable());
      case "Rebuildable" ->
          b = new Build(b.identity(), b.candidates(), Build.Rebuildable.valueOf(value));
      case "Evidence" -> p = new Proof(Proof.Evidence.valueOf(value), p.coverage());
      case "Coverage" -> p = new Proof(p.evidence(), Proof.Coverage.valueOf(value));
      case "Mode" ->
          t = new Terms(Terms.Mode.valueOf(value), t.claim(), t.data(), t.cause(), t.approval());
      case "Claim" ->
          t = new Terms(t.mode(), Terms.Claim.valueOf(value), t.data(), t.cause(), t.approval());
      case "Data" ->
          t = new Terms(t.mode(), t.claim(), Terms.Data.valueOf(value), t.cause(), t.approval());
      case "Cause" ->
          t = new Terms(t.mode(), t.claim(), t.data(), Terms.Cause.valueOf(value), t.approval());
      case "Approval" -> t = t.with(Terms.Approval.valueOf(value));
      case "Economy" -> m = m.with(Means.Economy.valueOf(value));
      case "NextTest" -> m = with(m, Means.NextTest.valueOf(value));
      case "Parts" -> m = with(m, Means.Parts.valueOf(value));
      case "Preventive" -> m = with(m, Means.Preventive.valueOf(value));
      default -> throw new IllegalArgumentException("no input is called " + input);
    }
    return new Case(y, b, p, t, m);
  }

  private static <T, V, R> List<R> product(List<T> first, V[] second, BiFunction<T, V, R> make) {
    List<R> all = new ArrayList<>();
    for (T t : first) {
      for (V v : second) {
        all.add(make.apply(t, v));
      }
    }
    return all;
  }
}
