package corewright.profiles;

import java.util.List;
import java.util.Map;

/**
 * One build of a family.
 *
 * @param serviceable whether and how far this build can be rebuilt
 * @param why one plain clause a customer could be read, as "its converter is set in hard resin"
 * @param kit parts kit, empty where there is none
 * @param prior share of this build among arriving cores, 0 to 1
 * @param expected for each cue id the answers that agree with this build
 */
public record Variant(
    String id,
    String title,
    Serviceable serviceable,
    String why,
    String kit,
    double prior,
    Map<String, List<String>> expected) {

  public Variant {
    expected = Map.copyOf(expected);
  }

  /** Whether a build can be rebuilt. */
  public enum Serviceable {
    YES,
    CONDITIONAL,
    NO
  }
}
