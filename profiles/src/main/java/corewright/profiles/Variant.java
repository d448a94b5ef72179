package corewright.profiles;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One build of a family.
 *
 * @param serviceable whether and how far this build can be rebuilt
 * @param why one plain clause a customer could be read, as "its converter is set in hard resin"
 * @param kit parts kit, empty where there is none
 * @param prior share of this build among arriving cores, 0 to 1
 * @param expected for each cue id the answers that agree with this build
 * @param mass what a complete unit of this build weighs; empty where nobody has weighed enough
 */
public record Variant(
    String id,
    String title,
    Serviceable serviceable,
    String why,
    String kit,
    double prior,
    Map<String, List<String>> expected,
    Optional<Mass> mass) {

  public Variant {
    expected = Map.copyOf(expected);
  }

  /** By the id alone: what is weighed looks builds up by the thousand. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** A build whose mass is not known. */
  public Variant(
      String id,
      String title,
      Serviceable serviceable,
      String why,
      String kit,
      double prior,
      Map<String, List<String>> expected) {
    this(id, title, serviceable, why, kit, prior, expected, Optional.empty());
  }

  /**
   * What units of one build weigh, complete and without bracket.
   *
   * @param expected_g mean, g
   * @param spread_g standard deviation from unit to unit, g
   */
  public record Mass(double expected_g, double spread_g) {}

  /** Whether a build can be rebuilt. */
  public enum Serviceable {
    YES,
    CONDITIONAL,
    NO
  }
}
