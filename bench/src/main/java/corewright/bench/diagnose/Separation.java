package corewright.bench.diagnose;

import static corewright.bench.diagnose.Group.DEAD_PHASE;
import static corewright.bench.diagnose.Group.FEEDBACK;
import static corewright.bench.diagnose.Group.INPUT_SHORT;
import static corewright.bench.diagnose.Group.INPUT_SIDE;
import static corewright.bench.diagnose.Group.JOINT;
import static corewright.bench.diagnose.Group.LOCK_OUT;
import static corewright.bench.diagnose.Group.LOOP;
import static corewright.bench.diagnose.Group.OUTPUT_CAPACITANCE;
import static corewright.bench.diagnose.Group.OUTPUT_ESR;
import static corewright.bench.diagnose.Group.OUTPUT_LEAKAGE;
import static corewright.bench.diagnose.Group.OUTPUT_SHORT;
import static corewright.bench.diagnose.Group.POWER_STAGE_LOSSY;
import static corewright.bench.diagnose.Group.POWER_STAGE_WEAK;
import static corewright.bench.diagnose.Group.RESTART;

import java.util.List;
import java.util.Set;

/** The next measurement that tells two groups apart (common practice, no source). */
final class Separation {
  private record Pair(Set<Group> groups, String measurement) {}

  private static final List<Pair> PAIRS =
      List.of(
          pair(
              OUTPUT_CAPACITANCE,
              LOOP,
              "Take the input away without load and time the fall: less capacitance falls faster."),
          pair(
              OUTPUT_CAPACITANCE,
              OUTPUT_ESR,
              "Look at the first microseconds of a load step: a resistance drops at once, a lost"
                  + " capacitance later."),
          pair(
              POWER_STAGE_WEAK,
              DEAD_PHASE,
              "Measure the ripple frequency at half load: half of that as built is a dead phase."),
          pair(
              POWER_STAGE_WEAK,
              POWER_STAGE_LOSSY,
              "Compare input power with output power at half load: a weak stage loses no more than"
                  + " its siblings."),
          pair(
              POWER_STAGE_WEAK,
              RESTART,
              "Watch the output at full load for one second: it either stays low, or comes and"
                  + " goes."),
          pair(
              POWER_STAGE_WEAK,
              INPUT_SIDE,
              "Compare the input at the board with that at the connector under full load."),
          pair(
              LOCK_OUT,
              INPUT_SIDE,
              "Lower the input slowly without load: a lock-out acts there too, a resistance does"
                  + " not."),
          pair(
              POWER_STAGE_LOSSY,
              OUTPUT_LEAKAGE,
              "Measure the input current at rest: a leak across the output draws there, a lossy"
                  + " stage hardly."),
          pair(
              INPUT_SHORT,
              OUTPUT_SHORT,
              "Power the empty fixture behind the same limit; if that takes nothing, measure the"
                  + " resistance across the input and across the output, both ways, without"
                  + " power."),
          pair(
              OUTPUT_SHORT,
              OUTPUT_LEAKAGE,
              "Measure the resistance across the output without power, with each channel unplugged"
                  + " in turn: a leak draws less than the rated load."),
          pair(
              JOINT,
              RESTART,
              "Record half a second at full load: a restart keeps its period, a joint does not."),
          pair(
              JOINT,
              DEAD_PHASE,
              "Tap and flex zone by zone at half load, and measure the ripple frequency."),
          pair(
              FEEDBACK,
              POWER_STAGE_WEAK,
              "Compare the output at rest with that under load: a divider is wrong at both."));

  private Separation() {}

  static String between(Group group, Group rival) {
    return PAIRS.stream()
        .filter(p -> p.groups().equals(Set.of(group, rival)))
        .findFirst()
        .map(Pair::measurement)
        .orElse(group.check());
  }

  private static Pair pair(Group one, Group other, String measurement) {
    return new Pair(Set.of(one, other), measurement);
  }
}
