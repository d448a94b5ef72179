package corewright.bench.life;

import static corewright.bench.life.Stage.CLOSED;
import static corewright.bench.life.Stage.EXPECTED;
import static corewright.bench.life.Stage.HARVESTED;
import static corewright.bench.life.Stage.IDENTIFIED;
import static corewright.bench.life.Stage.IN_STOCK;
import static corewright.bench.life.Stage.OPEN;
import static corewright.bench.life.Stage.PACKED;
import static corewright.bench.life.Stage.PENDING;
import static corewright.bench.life.Stage.PROVEN;
import static corewright.bench.life.Stage.QUARANTINE;
import static corewright.bench.life.Stage.RECEIVED;
import static corewright.bench.life.Stage.SCRAPPED;
import static corewright.bench.life.Stage.SEALED;
import static corewright.bench.life.Stage.SHIPPED;
import static corewright.bench.life.Stage.TESTED;
import static corewright.bench.life.Stage.TO_REBUILD;
import static corewright.bench.life.Stage.TO_REPLACE;
import static corewright.bench.life.Stage.TO_RETURN;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What may happen at which stage, and where it leads; the first row that fits holds, and what no
 * row allows is refused. Common practice of rebuild shops, no source: forward only, with one
 * reasoned step back; no seal without a final test since the unit was last open.
 */
final class LifeTable {
  /**
   * One row.
   *
   * @param to where it leads; empty: the unit stays where it is
   * @param why the rule behind it, which a refusal quotes
   */
  record Row(Act act, Set<Stage> from, Optional<Stage> to, String why) {}

  private static final Set<Stage> HERE =
      EnumSet.complementOf(EnumSet.of(EXPECTED, SHIPPED, HARVESTED, SCRAPPED));
  private static final Set<Stage> UNDECIDED =
      EnumSet.of(RECEIVED, IDENTIFIED, TESTED, PENDING, TO_REBUILD, TO_REPLACE, TO_RETURN);
  private static final Set<Stage> FINISHED = EnumSet.of(SEALED, PACKED, IN_STOCK);

  private static final String DECIDED =
      "a unit is decided about before it is opened or after it was closed";
  private static final String FINAL_TEST = "a final test is of a closed unit";

  static final List<Row> ROWS =
      List.of(
          row(Act.RECEIVE, EnumSet.of(EXPECTED, SHIPPED), RECEIVED, "a unit is in one place"),
          row(
              Act.QUARANTINE,
              EnumSet.of(RECEIVED, IDENTIFIED, TESTED, PENDING),
              QUARANTINE,
              "wet, unknown or suspect units wait on the red shelf"),
          row(Act.FREE, EnumSet.of(QUARANTINE), RECEIVED, "from the red shelf it begins anew"),
          row(Act.MAKE_SAFE, HERE, "what is here can be discharged"),
          row(Act.LEAVE_CHARGED, HERE, "what is here can be charged"),
          row(Act.IDENTIFY, EnumSet.of(RECEIVED), IDENTIFIED, "what is received is identified"),
          row(Act.IDENTIFY, HERE, "a better look changes the build, not the stage"),
          row(Act.TEST, UNDECIDED, TESTED, "nothing is powered on the red shelf or half open"),
          row(Act.HOLD, with(UNDECIDED, CLOSED), PENDING, "an open question stops what follows"),
          row(Act.DECIDE_REBUILD, with(UNDECIDED, CLOSED), TO_REBUILD, DECIDED),
          row(Act.DECIDE_REPLACE, with(UNDECIDED, CLOSED), TO_REPLACE, DECIDED),
          row(Act.DECIDE_RETURN, with(UNDECIDED, CLOSED), TO_RETURN, DECIDED),
          row(
              Act.OPEN,
              EnumSet.of(
                  TESTED,
                  PENDING,
                  TO_REBUILD,
                  TO_REPLACE,
                  CLOSED,
                  PROVEN,
                  SEALED,
                  PACKED,
                  IN_STOCK),
              OPEN,
              "it is tested before it is opened"),
          row(Act.WORK, EnumSet.of(OPEN), OPEN, "only an open unit is worked on"),
          row(Act.CLOSE, EnumSet.of(OPEN), CLOSED, "only an open unit is closed"),
          row(Act.PROVE, EnumSet.of(CLOSED, PROVEN), PROVEN, FINAL_TEST),
          row(Act.PROVE, FINISHED, "a further test of a finished unit that it passes"),
          row(Act.DISPROVE, with(FINISHED, CLOSED, PROVEN), CLOSED, FINAL_TEST),
          row(
              Act.SEAL,
              EnumSet.of(PROVEN),
              SEALED,
              "no seal without a final test that is newer than the last time it was open"),
          row(
              Act.PACK,
              EnumSet.of(SEALED, TO_RETURN, IN_STOCK),
              PACKED,
              "only what is sealed, returned as it is, or in stock is packed"),
          row(Act.SHIP, EnumSet.of(PACKED), SHIPPED, "only what is packed leaves"),
          row(
              Act.STOCK,
              EnumSet.of(TO_REBUILD, TO_REPLACE, TO_RETURN, SEALED, PACKED),
              IN_STOCK,
              "stock holds decided cores and sealed units"),
          row(
              Act.HARVEST,
              EnumSet.of(TO_REPLACE, OPEN, CLOSED, IN_STOCK),
              HARVESTED,
              "parts are taken from what will not be rebuilt"),
          row(
              Act.SCRAP,
              EnumSet.of(QUARANTINE, TO_REPLACE, TO_RETURN, OPEN, CLOSED, IN_STOCK, HARVESTED),
              SCRAPPED,
              "only what was decided about, opened or harvested is scrapped"));

  /** Stages that can be taken back to the one before; opening and arriving cannot be undone. */
  static final Set<Stage> CAN_STEP_BACK =
      EnumSet.of(
          QUARANTINE,
          IDENTIFIED,
          TESTED,
          PENDING,
          TO_REBUILD,
          TO_REPLACE,
          TO_RETURN,
          PROVEN,
          SEALED,
          PACKED,
          SHIPPED,
          IN_STOCK);

  private LifeTable() {}

  static Optional<Row> find(Act act, Stage stage) {
    return ROWS.stream().filter(r -> r.act() == act && r.from().contains(stage)).findFirst();
  }

  private static Row row(Act act, Set<Stage> from, Stage to, String why) {
    return new Row(act, from, Optional.of(to), why);
  }

  private static Row row(Act act, Set<Stage> from, String why) {
    return new Row(act, from, Optional.empty(), why);
  }

  private static Set<Stage> with(Set<Stage> stages, Stage... more) {
    Set<Stage> all = EnumSet.copyOf(stages);
    all.addAll(List.of(more));
    return all;
  }
}
