package corewright.bench.log.made;

import java.util.List;
import java.util.Optional;

/**
 * What a vehicle does, without noise and at any time.
 *
 * @param nominal_V of the output, V
 * @param battery_V of the supply at rest, V
 * @param injects whether fuel is injected while the starter turns
 */
public record Vehicle(
    double nominal_V, double battery_V, double length_s, boolean injects, List<Turn> turns) {

  public double supply_V(double t_s) {
    Optional<Turn> turn = turning(t_s);
    if (turn.isEmpty()) {
      return running(t_s) ? battery_V * 1.13 : battery_V - (ended(t_s) ? 0.02 * battery_V : 0);
    }
    double since_s = t_s - turn.get().at_s();
    double ripple_V = Turn.RIPPLE_V * Math.sin(2 * Math.PI * 7.3 * since_s);
    return since_s < Turn.INRUSH_S
        ? turn.get().plateau_V() - 0.06 * battery_V
        : turn.get().plateau_V() + ripple_V;
  }

  /** The sensor sees nothing in the first part of a turn. */
  public double speed(double t_s) {
    Optional<Turn> turn = turning(t_s);
    if (turn.isEmpty()) {
      return running(t_s) ? 780 + 12 * Math.sin(3 * t_s) : 0;
    }
    double since_s = t_s - turn.get().at_s();
    return since_s < 0.12 ? 0 : 172 + 8 * Math.sin(2 * Math.PI * 7.3 * since_s);
  }

  public double output_V(double t_s) {
    Optional<Turn> turn = turning(t_s);
    if (turn.isPresent()) {
      return turn.get().output().applyAsDouble(t_s - turn.get().at_s());
    }
    return nominal_V * (running(t_s) ? 0.992 : 0.995);
  }

  public double fuel(double t_s) {
    return injects && (turning(t_s).isPresent() || running(t_s)) ? 28 : 0;
  }

  private Optional<Turn> turning(double t_s) {
    return turns.stream().filter(u -> t_s >= u.at_s() && t_s < u.end_s()).findFirst();
  }

  private boolean ended(double t_s) {
    return turns.stream().anyMatch(u -> t_s >= u.end_s());
  }

  private boolean running(double t_s) {
    return turns.stream().anyMatch(u -> u.starts() && t_s >= u.end_s());
  }
}
