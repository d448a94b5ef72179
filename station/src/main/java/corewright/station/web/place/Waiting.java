package corewright.station.web.place;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Standing;
import java.time.LocalDate;

/** What a unit waits for at each stage that waits for somebody. */
enum Waiting {
  LOOK(
      Stage.RECEIVED, "See which build", "/build/", "Received; nobody has said which build it is."),
  TEST(Stage.IDENTIFIED, "Test it", "/bench?tag=", "Its build is known; it was not tested yet."),
  DECIDE(Stage.TESTED, "Decide", "/decide/", "Tested as received."),
  OPEN(Stage.TO_REBUILD, "Rebuild it", "/rebuild/", "Decided: REBUILD."),
  REPLACE(Stage.TO_REPLACE, "Replace it", "/handover/", "Decided: REPLACE."),
  RETURN(Stage.TO_RETURN, "Give it back", "/handover/", "Decided: RETURN."),
  CLOSE(Stage.OPEN, "Close it", "/rebuild/", "Its cover is off."),
  PROVE(Stage.CLOSED, "Test it as shipped", "/bench?tag=", "Closed, and not tested since."),
  SEAL(Stage.PROVEN, "Seal it", "/handover/", "Passed its final test."),
  PACK(Stage.SEALED, "Hand it over", "/handover/", "Sealed."),
  SHIP(Stage.PACKED, "Ship it", "/handover/", "Packed."),
  FREE(Stage.QUARANTINE, "Look at the red shelf", "/unit/", "Nothing there is powered or opened.");

  private final Stage stage;
  private final String verb;
  private final String href;
  private final String why;

  Waiting(Stage stage, String verb, String href, String why) {
    this.stage = stage;
    this.verb = verb;
    this.href = href;
    this.why = why;
  }

  Stage stage() {
    return stage;
  }

  Today.Need need(Standing standing, LocalDate today) {
    return new Today.Need(
        verb,
        standing.tag(),
        href + standing.tag(),
        why,
        DayWords.since(standing.since(), today),
        "anyone");
  }
}
