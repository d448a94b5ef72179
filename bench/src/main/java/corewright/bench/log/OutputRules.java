package corewright.bench.log;

import corewright.bench.record.Qualifier;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** From what one output did in one crank to a conclusion. The first row that applies decides. */
final class OutputRules {
  private OutputRules() {}

  /** What a row of the table concludes. */
  record Decided(Conclusion conclusion, String reason) {}

  private record Rule(
      Predicate<OutputCase> applies, Conclusion conclusion, Function<OutputCase, String> reason) {}

  private static final List<Rule> TABLE =
      List.of(
          new Rule(
              OutputRules::sagsRunning,
              Conclusion.SUPPORTS_FAULT,
              c ->
                  "Once the engine ran, the output lay at "
                      + volts(c.running().orElseThrow().lowestQuarter_V())
                      + " with the supply at or above "
                      + volts(c.running().orElseThrow().supply_V())
                      + ": consistent with a fault of the module."),
          new Rule(
              c -> c.crank().judged().isEmpty() && c.length_s() >= LogRule.LONGEST_S,
              Conclusion.INCONCLUSIVE,
              c ->
                  "No starter turns for "
                      + Figures.number(c.length_s(), 0)
                      + " s: the times of this log are wrong, or this is no crank."),
          new Rule(
              c -> c.crank().judged().isEmpty(),
              Conclusion.INCONCLUSIVE,
              c ->
                  "The crank lasted "
                      + Figures.number(c.length_s(), 1)
                      + " s; what is left without inrush and release is too short to judge."),
          new Rule(
              c -> c.qualifier().filter(q -> q == Qualifier.VOID).isPresent(),
              Conclusion.VOID,
              OutputRules::voidReason),
          new Rule(
              OutputCase::clipped,
              Conclusion.INCONCLUSIVE,
              c ->
                  "The output keeps to one round number far above nominal: the tool cuts it off"
                      + " there, so it is not measured."),
          new Rule(
              OutputCase::still,
              Conclusion.INCONCLUSIVE,
              c ->
                  "The output does not move by one step before, in and after the crank: it may be"
                      + " what was asked for, or held, so it is not taken as measured."),
          new Rule(
              c -> c.silent() > 0.5,
              Conclusion.INCONCLUSIVE,
              c ->
                  "The log is silent for "
                      + Figures.number(100 * c.silent(), 0)
                      + " % of the judged time; tools and modules fall silent when their supply is"
                      + " low, so nothing is known of it."),
          new Rule(
              c -> c.samples().size() < LogRule.FAULT_SAMPLES,
              Conclusion.INCONCLUSIVE,
              c -> "Only " + samples(c) + " in the judged window: too few."),
          new Rule(
              OutputCase::scatters,
              Conclusion.INCONCLUSIVE,
              c ->
                  "The output scatters by "
                      + volts(c.scatter_V())
                      + " from sample to sample about a good middle of "
                      + volts(c.middle_V())
                      + ": possibly lost output capacitance; this log is too slow to say."),
          new Rule(
              c -> c.falls() && c.qualifier().isEmpty(),
              Conclusion.INCONCLUSIVE,
              c ->
                  fell(c)
                      + ", but nothing is known of the supply meanwhile: a weak battery looks the"
                      + " same."),
          new Rule(
              OutputCase::falls,
              Conclusion.SUPPORTS_FAULT,
              c -> fell(c) + " while " + held(c) + ": consistent with a fault of the module."),
          new Rule(
              c -> c.holds() && c.load() == Crank.Load.INHIBITED,
              Conclusion.INCONCLUSIVE,
              c ->
                  stayed(c)
                      + ", but no fuel was injected: the output was not loaded, and at rest"
                      + " half-dead ones hold too."),
          new Rule(
              c -> c.holds() && c.qualifier().isEmpty(),
              Conclusion.INCONCLUSIVE,
              c -> stayed(c) + ", but nothing is known of the supply meanwhile."),
          new Rule(
              c -> c.holds() && !c.longEnough(),
              Conclusion.INCONCLUSIVE,
              c ->
                  stayed(c)
                      + ", but the record is short: "
                      + samples(c)
                      + " over "
                      + Figures.number(c.samples().span_s(), 1)
                      + " s; it takes 8 over 3 s to speak for a module."),
          new Rule(
              OutputCase::holds,
              Conclusion.SUPPORTS_GOOD,
              c -> stayed(c) + " while " + held(c) + ": nothing in it speaks against the module."),
          new Rule(c -> true, Conclusion.INCONCLUSIVE, OutputRules::between));

  static Decided decide(OutputCase c) {
    return TABLE.stream()
        .filter(r -> r.applies.test(c))
        .findFirst()
        .map(r -> new Decided(r.conclusion, r.reason.apply(c)))
        .orElseThrow();
  }

  private static boolean sagsRunning(OutputCase c) {
    return c.running().isPresent()
        && !c.clipped()
        && c.running().get().lowestQuarter_V() < c.rule().low_V()
        && c.running().get().supply_V()
            >= c.worst().map(Supply::good_V).orElse(c.family().good_V());
  }

  private static String voidReason(OutputCase c) {
    Supply s = c.worst().orElseThrow();
    Measurement m = s.minimum().orElseThrow();
    return "The supply '"
        + s.name()
        + "' fell to "
        + Figures.withU(m)
        + ", below "
        + Figures.like(s.tolerated_V(), m)
        + ": this crank says nothing about the module. Charge or replace the battery, clean the"
        + " cables, and repeat.";
  }

  private static String fell(OutputCase c) {
    Measurement low = c.lowestQuarter();
    return "The output went from "
        + volts(c.samples().first())
        + " to "
        + volts(c.samples().last())
        + " in "
        + Figures.number(c.samples().span_s(), 1)
        + " s of cranking, its lowest quarter "
        + Figures.withU(low)
        + " against a limit of "
        + Figures.like(c.rule().low_V(), low)
        + ",";
  }

  private static String stayed(OutputCase c) {
    return "The output stayed at or above "
        + volts(c.low_V())
        + " over "
        + Figures.number(c.samples().span_s(), 1)
        + " s of cranking";
  }

  private static String held(OutputCase c) {
    Supply s = c.worst().orElseThrow();
    return "the supply '"
        + s.name()
        + "' stayed at or above "
        + Figures.withU(s.minimum().orElseThrow());
  }

  private static String between(OutputCase c) {
    return "The output's lowest quarter of "
        + volts(c.low_V())
        + " with a drift of "
        + Figures.number(60 * c.drift().slope_V_s(), 0)
        + " V/min lies between what speaks for a fault (below "
        + volts(c.rule().low_V())
        + ") and what speaks for the module ("
        + volts(c.rule().good_V())
        + " and steady).";
  }

  private static String samples(OutputCase c) {
    int n = c.samples().size();
    return n + (n == 1 ? " distinct sample" : " distinct samples");
  }

  private static String volts(double value_V) {
    return Figures.number(value_V, 2) + " V";
  }
}
