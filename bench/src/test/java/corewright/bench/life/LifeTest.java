package corewright.bench.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LifeTest {
  /**
   * Every stage against every act, written by hand from the rules of the trade (common practice, no
   * source): where it leads, {@code =} for nowhere else, {@code -} for refused. Units are safe
   * here.
   */
  private static final String MATRIX =
      """
      act             EXPECTED RECEIVED   QUARANTINE IDENTIFIED TESTED     PENDING    TO_REBUILD TO_REPLACE TO_RETURN  OPEN      CLOSED     PROVEN   SEALED   PACKED   SHIPPED  IN_STOCK  HARVESTED SCRAPPED
      RECEIVE         RECEIVED -          -          -          -          -          -          -          -          -         -          -        -        -        RECEIVED -         -         -
      QUARANTINE      -        QUARANTINE -          QUARANTINE QUARANTINE QUARANTINE -          -          -          -         -          -        -        -        -        -         -         -
      FREE            -        -          RECEIVED   -          -          -          -          -          -          -         -          -        -        -        -        -         -         -
      MAKE_SAFE       -        =          =          =          =          =          =          =          =          =         =          =        =        =        -        =         -         -
      LEAVE_CHARGED   -        =          =          =          =          =          =          =          =          =         =          =        =        =        -        =         -         -
      IDENTIFY        -        IDENTIFIED =          =          =          =          =          =          =          =         =          =        =        =        -        =         -         -
      TEST            -        TESTED     -          TESTED     =          TESTED     TESTED     TESTED     TESTED     -         -          -        -        -        -        -         -         -
      HOLD            -        PENDING    -          PENDING    PENDING    =          PENDING    PENDING    PENDING    -         PENDING    -        -        -        -        -         -         -
      DECIDE_REBUILD  -        TO_REBUILD -          TO_REBUILD TO_REBUILD TO_REBUILD =          TO_REBUILD TO_REBUILD -         TO_REBUILD -        -        -        -        -         -         -
      DECIDE_REPLACE  -        TO_REPLACE -          TO_REPLACE TO_REPLACE TO_REPLACE TO_REPLACE =          TO_REPLACE -         TO_REPLACE -        -        -        -        -         -         -
      DECIDE_RETURN   -        TO_RETURN  -          TO_RETURN  TO_RETURN  TO_RETURN  TO_RETURN  TO_RETURN  =          -         TO_RETURN  -        -        -        -        -         -         -
      OPEN            -        -          -          -          OPEN       OPEN       OPEN       OPEN       -          -         OPEN       OPEN     OPEN     OPEN     -        OPEN      -         -
      WORK            -        -          -          -          -          -          -          -          -          =         -          -        -        -        -        -         -         -
      CLOSE           -        -          -          -          -          -          -          -          -          CLOSED    -          -        -        -        -        -         -         -
      PROVE           -        -          -          -          -          -          -          -          -          -         PROVEN     =        =        =        -        =         -         -
      DISPROVE        -        -          -          -          -          -          -          -          -          -         =          CLOSED   CLOSED   CLOSED   -        CLOSED    -         -
      SEAL            -        -          -          -          -          -          -          -          -          -         -          SEALED   -        -        -        -         -         -
      PACK            -        -          -          -          -          -          -          -          PACKED     -         -          -        PACKED   -        -        PACKED    -         -
      SHIP            -        -          -          -          -          -          -          -          -          -         -          -        -        SHIPPED  -        -         -         -
      STOCK           -        -          -          -          -          -          IN_STOCK   IN_STOCK   IN_STOCK   -         -          -        IN_STOCK IN_STOCK -        -         -         -
      HARVEST         -        -          -          -          -          -          -          HARVESTED  -          HARVESTED HARVESTED  -        -        -        -        HARVESTED -         -
      SCRAP           -        -          SCRAPPED   -          -          -          -          SCRAPPED   SCRAPPED   SCRAPPED  SCRAPPED   -        -        -        -        SCRAPPED  SCRAPPED  -
      STEP_BACK       -        -          BACK       BACK       BACK       BACK       BACK       BACK       BACK       -         -          BACK     BACK     BACK     BACK     BACK      -         -
      """;

  @Test
  void everyStageAgainstEveryAct() {
    List<List<String>> rows =
        MATRIX.lines().map(line -> List.of(line.strip().split("\\s+", -1))).toList();
    List<Stage> stages = rows.get(0).stream().skip(1).map(Stage::valueOf).toList();
    assertEquals(List.of(Stage.values()), stages);
    assertEquals(
        List.of(Act.values()), rows.stream().skip(1).map(row -> Act.valueOf(row.get(0))).toList());
    for (List<String> row : rows.subList(1, rows.size())) {
      Act act = Act.valueOf(row.get(0));
      for (Stage stage : stages) {
        Optional<Life> after = new Life(stage, Optional.of(Stage.EXPECTED), true).after(act);
        String leads = after.map(l -> l.stage() == stage ? "=" : l.stage().name()).orElse("-");
        String expected = row.get(1 + stage.ordinal()).replace("BACK", "EXPECTED");
        assertEquals(expected, leads, act + " when " + stage);
      }
    }
  }

  /** Walks everything that can ever happen to a unit, with what really happened beside it. */
  @Test
  void noWayLeadsToASealWithoutAFinalTestSinceItWasOpen() {
    record World(Life life, boolean opened, boolean proven) {}
    Deque<World> todo = new ArrayDeque<>(List.of(new World(Life.NEW, false, false)));
    Set<World> seen = new HashSet<>(todo);
    while (!todo.isEmpty()) {
      World at = todo.pop();
      if (Set.of(Stage.SEALED, Stage.PROVEN).contains(at.life.stage())) {
        assertTrue(at.proven, at.toString());
      }
      if (at.life.stage() == Stage.OPEN) {
        assertTrue(at.opened, at.toString());
      }
      for (Act act : Act.values()) {
        at.life
            .after(act)
            .map(
                next ->
                    new World(
                        next,
                        act == Act.OPEN || (at.opened && act != Act.RECEIVE),
                        switch (act) {
                          case PROVE -> true;
                          case OPEN, DISPROVE -> false;
                          default -> at.proven;
                        }))
            .filter(seen::add)
            .ifPresent(todo::push);
      }
    }
    Set<Stage> reached = seen.stream().map(w -> w.life.stage()).collect(Collectors.toSet());
    assertEquals(Set.of(Stage.values()), reached);
  }

  @Test
  void aChargedUnitIsNotOpened() {
    Life charged = new Life(Stage.TO_REBUILD, Optional.empty(), false);
    assertEquals(Optional.empty(), charged.after(Act.OPEN));
    assertTrue(charged.refusal(Act.OPEN).contains("not discharged and verified"));
    Life safe = charged.after(Act.MAKE_SAFE).orElseThrow();
    assertEquals(Stage.OPEN, safe.after(Act.OPEN).orElseThrow().stage());
    assertFalse(safe.after(Act.LEAVE_CHARGED).orElseThrow().safe());
  }

  @Test
  void oneStepBackAndNoSecondOne() {
    Life packed = new Life(Stage.SEALED, Optional.empty(), true).after(Act.PACK).orElseThrow();
    Life back = packed.after(Act.STEP_BACK).orElseThrow();
    assertEquals(Stage.SEALED, back.stage());
    assertEquals(Optional.empty(), back.after(Act.STEP_BACK));
  }

  @Test
  void aRefusalSaysWhereTheUnitIsWhyNotAndWhatComesFirst() {
    Life closed = new Life(Stage.CLOSED, Optional.empty(), true);
    assertEquals(
        "It is closed and cannot be sealed: no seal without a final test that is newer than the"
            + " last time it was open. Possible from: proven",
        closed.refusal(Act.SEAL));
    for (Act act : Act.values()) {
      for (Stage stage : Stage.values()) {
        String refusal = new Life(stage, Optional.empty(), true).refusal(act);
        assertTrue(refusal.startsWith("It is " + stage.words()), refusal);
        assertEquals(refusal, refusal.strip());
        assertFalse(refusal.toLowerCase(Locale.ROOT).contains("null"), refusal);
      }
    }
  }
}
