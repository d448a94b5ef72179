package corewright.reports.ledger;

import corewright.bench.life.Act;
import corewright.bench.life.Life;
import corewright.bench.life.Never;
import corewright.bench.life.Stage;
import corewright.bench.record.Dossier;
import corewright.profiles.Grade;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * The life of units in the shop. A step is checked against the table of stages and written in one
 * transaction, so that two people cannot both take it. Every method throws {@link LedgerFault}
 * where a step is not allowed; the message says where the unit stands and what would come first.
 */
public final class Lives {
  private final Database database;
  private final Appender appender;

  Lives(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /** Where a unit stands. */
  public Standing standing(String tag) {
    return database.read(handle -> standing(handle, Tags.read(tag)));
  }

  /** Units at one stage: those that are due first, then those that have waited longest. */
  public List<Standing> at(Stage stage) {
    return database.read(handle -> LifeView.at(handle, stage));
  }

  /** The first of them, for a page that cannot show all. */
  public List<Standing> at(Stage stage, int most) {
    return database.read(handle -> LifeView.at(handle, stage, most));
  }

  /** How many units are at one stage. */
  public int count(Stage stage) {
    return database.read(handle -> LifeView.count(handle, stage));
  }

  /** Everything that was ever written down about one unit, in the order it was written. */
  public List<Happened> history(String tag) {
    return database.read(handle -> told(Events.of(handle, Tags.read(tag))));
  }

  /**
   * A unit's life in one look: what others write meanwhile is in all of it or in nothing of it.
   *
   * @param visits the first first
   * @param history in the order it was written
   * @param files as {@link #attached}
   */
  public record Whole(
      Standing standing, List<Dossier> visits, List<Happened> history, List<Attached> files) {}

  /** Everything about one unit. */
  public Whole whole(String tag) {
    String known = Tags.read(tag);
    return database.read(
        handle -> {
          List<Event> events = Events.of(handle, known);
          List<Happened> history = told(events);
          return new Whole(
              standing(handle, known), Dossiers.visits(handle, events), history, attached(history));
        });
  }

  private static List<Happened> told(List<Event> events) {
    return events.stream()
        .map(
            e ->
                new Happened(
                    e.kind(),
                    e.at(),
                    e.who(),
                    e.tag(),
                    Json.read(e.body()),
                    new Head(e.chain(), e.sequence(), e.hash())))
        .toList();
  }

  /**
   * Takes one step, if the unit's stage allows it.
   *
   * @return where the unit stands afterwards
   */
  public Standing take(String tag, Step step, String who) {
    String known = Tags.read(tag);
    return database.write(
        handle -> {
          Life life = standing(handle, known).life();
          if (life.after(step.act()).isEmpty()) {
            String refusal = known + ": " + life.refusal(step.act());
            throw new LedgerFault(
                step.act() == Act.SEAL ? Never.LEAVE_UNTESTED.said(refusal) : refusal,
                "Nothing was changed");
          }
          if (who.isBlank()) {
            throw new LedgerFault(known + ": nobody answers for this step", "Say who does it");
          }
          Accounts.require(handle, who, step.act());
          StepChecks.check(handle, known, step, who);
          appender.append(handle, who, EventKind.of(step.act()), known, Json.tree(step));
          return standing(handle, known);
        });
  }

  /** Grades the condition of a core; the stage stays as it is. */
  public void grade(String tag, Grade grade, String why, String who) {
    database.write(
        handle ->
            appender.append(
                handle,
                who,
                EventKind.GRADED,
                tag,
                Json.tree(Map.of("grade", grade.name(), "why", why))));
  }

  /**
   * Notes the day until which the customer shall have the unit back; the last one said counts.
   *
   * @throws LedgerFault if the unit is not here
   */
  public void promise(String tag, LocalDate until, String who) {
    String known = Tags.read(tag);
    database.write(
        handle -> {
          Stage stage = standing(handle, known).life().stage();
          if (!stage.inTheShop()) {
            throw new LedgerFault(
                known + " is " + stage.words() + ": there is nothing to promise",
                "A day is promised for a unit that is here");
          }
          return appender.append(
              handle, who, EventKind.PROMISED, known, Json.tree(Map.of("until", until.toString())));
        });
  }

  /**
   * Says that a unit's serial or label is another one than was written down. Both stay readable.
   *
   * @param serial as it stands now; empty: as it was
   * @param label as it stands now; empty: as it was
   * @param reason why, in a sentence that is printed
   * @throws LedgerFault if nothing changes, or if nobody says why
   */
  public void relabel(String tag, String serial, String label, String reason, String who) {
    String known = Tags.read(tag);
    database.write(
        handle -> {
          Dossier now =
              Dossiers.tell(handle, known, Integer.MAX_VALUE)
                  .orElseThrow(() -> Appender.unknown(known));
          Relabelling to =
              new Relabelling(
                  now.core().serial(),
                  now.core().label(),
                  serial.isBlank() ? now.core().serial() : serial.strip(),
                  label.isBlank() ? now.core().label() : label.strip(),
                  reason.strip());
          if (to.reason().isEmpty() || to.on(now.core()).equals(now.core())) {
            throw new LedgerFault(
                Never.SWAP_A_SERIAL.said(
                    known
                        + (to.reason().isEmpty()
                            ? ": nobody said why its label is another one"
                            : " is called that already")),
                "Say what stands on it now, and why it was written down otherwise");
          }
          return appender.append(handle, who, EventKind.RELABELLED, known, Json.tree(to));
        });
  }

  /**
   * Refuses to let another unit leave in the place of one.
   *
   * @param serial as it was read on the unit that leaves; empty: nobody looked
   */
  public void mustBe(String tag, String serial) {
    String known = Tags.read(tag);
    database.read(
        handle -> {
          Relabelling.refuseOther(handle, known, serial, "what would leave reads");
          return Optional.empty();
        });
  }

  /** Notes a photograph or file, which is kept elsewhere under its hash. */
  public void attach(String tag, Attached file, String who) {
    database.write(
        handle -> appender.append(handle, who, EventKind.ATTACHED, tag, Json.tree(file)));
  }

  /** Photographs and files of a unit, all visits, oldest first. */
  public List<Attached> attached(String tag) {
    return attached(history(tag));
  }

  private static List<Attached> attached(List<Happened> history) {
    return history.stream()
        .filter(h -> h.kind().equals(EventKind.ATTACHED.id()))
        .map(h -> Json.record(h.body(), Attached.class))
        .toList();
  }

  private static Standing standing(Handle handle, String tag) {
    return LifeView.find(handle, tag).orElseThrow(() -> Appender.unknown(tag));
  }
}
