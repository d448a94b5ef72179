package corewright.bench.diagnose;

import java.util.Arrays;
import java.util.Optional;

/**
 * A group of components that fails as one. What a bench sees from outside is consistent with a
 * group, never proof of a part.
 */
public enum Group {
  OUTPUT_CAPACITANCE(
      "a loss of output capacitance", 0.12, "Compare the charge of a load pulse with its dip."),
  OUTPUT_ESR(
      "dried-out output capacitors, with a raised series resistance",
      0.18,
      "Measure the ripple again after ten minutes at full load: warm, it is less."),
  JOINT(
      "a cracked joint at the inductor, the connector or a shunt",
      0.25,
      "Tap and flex zone by zone at half load and watch for steps."),
  POWER_STAGE_WEAK(
      "a power stage that cannot deliver: gate drive, switch or current sense",
      0.12,
      "Look at the input current in overload: flat at one value, it is the current limit."),
  DEAD_PHASE(
      "one phase of the power stage not working",
      0.04,
      "Compare the ripple frequency with that of a healthy unit of the same build."),
  POWER_STAGE_LOSSY(
      "losses in the power stage: a leaking switch or diode, or a shorted turn",
      0.07,
      "Look for the hot part with an infrared camera at half load."),
  NOT_SWITCHING(
      "a converter that does not switch: its controller, that one's supply, or the gate drive",
      0.04,
      "Measure the controller's own supply after opening."),
  NO_PATH(
      "an open path between input and output: fuse link, connector, or output lead",
      0.02,
      "Check the power pins and the fuse link for continuity."),
  INPUT_SHORT(
      "a short at the input side: the switch, the input capacitor or the input protection",
      0.015,
      "Measure the resistance from each supply pin to ground, both ways, without power."),
  OUTPUT_SHORT(
      "a short across the output: a capacitor, a suppressor or a driver channel",
      0.015,
      "Measure the resistance across the output without power, with each channel unplugged in"
          + " turn."),
  LOCK_OUT(
      "an undervoltage lock-out that acts too early: the controller's supply or the input side",
      0.04,
      "Lower the input slowly at no load and note where the output is lost and comes back."),
  INPUT_SIDE(
      "the input side: a dried-out input capacitor, a fretted contact or the input protection",
      0.05,
      "Compare the input at the board with that at the connector under full load."),
  FEEDBACK(
      "a drifted feedback divider or reference",
      0.04,
      "Measure the output at three inputs: the ratio to its set-point stays the same."),
  WARM_REFERENCE(
      "a reference or divider that drifts as it warms",
      0.03,
      "Hold half load for ten minutes and compare the output at rest before and after."),
  OUTPUT_LEAKAGE(
      "a leak across the output: a cracked ceramic capacitor, a suppressor or a driver channel",
      0.03,
      "Measure the input current at rest, cold and warm, with each channel unplugged in turn."),
  RESTART(
      "a current limit that shuts down and tries again",
      0.03,
      "Take the load off and measure the time between two attempts."),
  LOOP(
      "a control loop that hardly damps: compensation or slope",
      0.02,
      "Step the load at half load and count how often the output swings.");

  private final String words;
  private final double share;
  private final String check;

  Group(String words, double share, String check) {
    this.words = words;
    this.share = share;
    this.check = check;
  }

  /** The group that a person calls so, as {@code output esr}; empty where none has that name. */
  public static Optional<Group> of(String name) {
    String id = name.strip().replaceAll("[\\s_-]+", "_");
    return Arrays.stream(values()).filter(g -> g.name().equalsIgnoreCase(id)).findFirst();
  }

  /** As in "consistent with …". */
  public String words() {
    return words;
  }

  /** Share among failing cores, until the shop has its own (the trade's judgement, no source). */
  double share() {
    return share;
  }

  /** The measurement that would separate it from the others, a sentence. */
  public String check() {
    return check;
  }
}
