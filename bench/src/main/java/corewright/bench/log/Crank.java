package corewright.bench.log;

import corewright.bench.record.Qualifier;
import java.util.List;
import java.util.Optional;

/**
 * One crank, judged alone.
 *
 * @param start_s first drop of the supply, s
 * @param end_s middle between the last sample in it and the first after it, s
 * @param shownBy engine speed, or the supply alone
 * @param window that was judged; empty where it was too short
 * @param supplies nearest to the module's terminals first
 * @param qualifier of the worst supply; empty where none is known
 * @param started whether the engine ran by itself at the end
 * @param load whether the output was loaded
 * @param reasons why it concludes so, most important first
 * @param doubts why that could be wrong
 * @param traces for the picture; empty for cranks beyond the first dozen
 */
public record Crank(
    double start_s,
    double end_s,
    String shownBy,
    Optional<Window> window,
    List<Supply> supplies,
    List<Output> outputs,
    Optional<Qualifier> qualifier,
    boolean started,
    Load load,
    Conclusion conclusion,
    List<String> reasons,
    List<String> doubts,
    List<Trace> traces) {

  public Crank {
    supplies = List.copyOf(supplies);
    outputs = List.copyOf(outputs);
    reasons = List.copyOf(reasons);
    doubts = List.copyOf(doubts);
    traces = List.copyOf(traces);
  }

  /** Whether anything was drawn from the output. */
  public enum Load {
    /** The engine started, or a fuel quantity was logged. */
    PROVEN,
    /** Nothing shows it, nothing speaks against it. */
    NOT_SHOWN,
    /** The log says that no fuel was injected. */
    INHIBITED
  }

  Crank withoutTraces() {
    return new Crank(
        start_s,
        end_s,
        shownBy,
        window,
        supplies,
        outputs,
        qualifier,
        started,
        load,
        conclusion,
        reasons,
        doubts,
        List.of());
  }
}
