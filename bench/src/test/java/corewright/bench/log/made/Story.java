package corewright.bench.log.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** What happened to the vehicle of a made log, and so what its log must come to. */
public enum Story {
  FAULT("supports-fault"),
  GOOD("supports-good"),
  GOOD_AND_STARTS("supports-good"),
  VOID("void"),
  WEAK("inconclusive"),
  SHORT("inconclusive"),
  NO_FUEL("inconclusive"),
  COLD_BAD_WARM_GOOD("supports-fault"),
  LOW_THEN_GOOD("supports-good");

  private final String conclusion;

  Story(String conclusion) {
    this.conclusion = conclusion;
  }

  public String conclusion() {
    return conclusion;
  }

  boolean wantsFuel() {
    return this == NO_FUEL;
  }

  /** A vehicle of this story; levels away from every edge, so that the answer is not in doubt. */
  Vehicle vehicle(double nominal_V, double rate_Hz, Random random) {
    double k = nominal_V / 48;
    double battery_V = (nominal_V > 100 ? 25.2 : 12.5) + 0.2 * random.nextDouble();
    double edge_V = nominal_V > 100 ? 20 : 10;
    double plateau_V = edge_V + (0.35 + 0.5 * random.nextDouble()) * edge_V / 10;
    double low_V = edge_V * (0.9 - 0.06 - 0.1 * random.nextDouble());
    double length_s = rate_Hz < 4 ? 6.5 + random.nextDouble() : 4.6 + 1.5 * random.nextDouble();
    double at_s = 5.5 + random.nextDouble();
    double fall_V_s = k * (0.9 + 0.6 * random.nextDouble());
    double droop_V = k * (0.25 + 0.25 * random.nextDouble());
    double weak_V = k * (45.55 + 0.4 * random.nextDouble());
    List<Turn> turns = new ArrayList<>();
    switch (this) {
      case FAULT -> turns.add(falling(at_s, length_s, plateau_V, nominal_V, fall_V_s, false));
      case GOOD, NO_FUEL -> turns.add(level(at_s, length_s, plateau_V, nominal_V - droop_V, false));
      case GOOD_AND_STARTS ->
          turns.add(level(at_s, length_s, plateau_V, nominal_V - droop_V, true));
      case VOID -> turns.add(falling(at_s, length_s, low_V, nominal_V, fall_V_s, false));
      case WEAK -> turns.add(level(at_s, length_s, plateau_V, weak_V, false));
      case SHORT ->
          turns.add(
              level(at_s, 0.75 + 0.1 * random.nextDouble(), plateau_V, nominal_V - droop_V, true));
      case COLD_BAD_WARM_GOOD -> {
        turns.add(falling(at_s, length_s, plateau_V, nominal_V, fall_V_s, false));
        turns.add(level(at_s + 25, length_s, plateau_V, nominal_V - droop_V, false));
      }
      case LOW_THEN_GOOD -> {
        turns.add(falling(at_s, length_s, low_V, nominal_V, fall_V_s, false));
        turns.add(level(at_s + 25, length_s, plateau_V, nominal_V - droop_V, false));
      }
    }
    double end_s = turns.get(turns.size() - 1).end_s() + 6;
    return new Vehicle(nominal_V, battery_V, end_s, this != NO_FUEL, turns);
  }

  private static Turn falling(
      double at_s,
      double length_s,
      double supply_V,
      double nominal_V,
      double fall_V_s,
      boolean starts) {
    return new Turn(at_s, length_s, supply_V, t -> nominal_V - 0.4 - fall_V_s * t, starts);
  }

  private static Turn level(
      double at_s, double length_s, double supply_V, double output_V, boolean starts) {
    return new Turn(at_s, length_s, supply_V, t -> output_V, starts);
  }
}
