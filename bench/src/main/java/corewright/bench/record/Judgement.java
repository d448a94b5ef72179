package corewright.bench.record;

import java.util.List;
import java.util.Optional;

/**
 * What the run says about the unit.
 *
 * @param verdict empty where no family says what is good, or where nothing was loaded; then {@code
 *     reasons} says why
 * @param qualifier empty where no family says what a good input is, or the input was not read, or
 *     it fell on a bench that is itself in doubt
 * @param decisionRule {@code simple acceptance} or {@code guard band U = 2u}, as printed
 * @param findings in the order of holds, then limits
 * @param reasons sentences with the readings that decided, most important first
 */
public record Judgement(
    Optional<Verdict> verdict,
    Optional<Qualifier> qualifier,
    String decisionRule,
    List<Finding> findings,
    List<String> reasons) {

  public Judgement {
    findings = List.copyOf(findings);
    reasons = List.copyOf(reasons);
  }
}
