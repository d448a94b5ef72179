package corewright.bench.life;

import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where one unit stands, and what that allows.
 *
 * @param before the stage that one step back would lead to; empty right after such a step
 * @param safe whether it was discharged, verified, since it was last powered or received
 */
public record Life(Stage stage, Optional<Stage> before, boolean safe) {
  /** A unit that nobody has received yet. */
  public static final Life NEW = new Life(Stage.EXPECTED, Optional.empty(), false);

  /** Why it may not be powered where it stands, as a sentence; empty if it may. */
  public Optional<String> notPowered() {
    return stage == Stage.QUARANTINE || stage == Stage.OPEN
        ? Optional.of("It is " + stage.words() + ": nothing is powered on the red shelf or open.")
        : Optional.empty();
  }

  /** What {@code act} makes of this; empty if the table of stages does not allow it now. */
  public Optional<Life> after(Act act) {
    if (act == Act.OPEN && !safe) {
      return Optional.empty();
    }
    if (act == Act.STEP_BACK) {
      return before
          .filter(b -> LifeTable.CAN_STEP_BACK.contains(stage))
          .map(b -> new Life(b, Optional.empty(), safe));
    }
    return LifeTable.find(act, stage).map(row -> moved(act, row.to().orElse(stage)));
  }

  private Life moved(Act act, Stage to) {
    return new Life(to, to == stage ? before : Optional.of(stage), isSafeAfter(act));
  }

  private boolean isSafeAfter(Act act) {
    return switch (act) {
      case RECEIVE, LEAVE_CHARGED -> false;
      case MAKE_SAFE, TEST, PROVE, DISPROVE -> true;
      default -> safe;
    };
  }

  /** Why {@code act} is refused now, as a sentence, and what would have to be first. */
  public String refusal(Act act) {
    String standing = "It is " + stage.words() + " and cannot be " + act.words();
    if (act == Act.OPEN && !safe && LifeTable.find(act, stage).isPresent()) {
      return standing + ": it was not discharged and verified since it was last powered";
    }
    if (act == Act.STEP_BACK) {
      return standing + ": opening and arriving cannot be undone, and one step is the most";
    }
    String from =
        LifeTable.ROWS.stream()
            .filter(row -> row.act() == act)
            .flatMap(row -> row.from().stream())
            .distinct()
            .sorted()
            .map(Stage::words)
            .collect(Collectors.joining(", "));
    String why =
        LifeTable.ROWS.stream().filter(r -> r.act() == act).findFirst().orElseThrow().why();
    return standing + ": " + why + ". Possible from: " + from;
  }
}
