package corewright.bench.life;

/** What can happen to a unit. The words complete "it cannot be …". */
public enum Act {
  RECEIVE("received"),
  QUARANTINE("put into quarantine"),
  FREE("taken out of quarantine"),
  MAKE_SAFE("made safe"),
  LEAVE_CHARGED("left charged"),
  IDENTIFY("identified"),
  TEST("tested as received"),
  HOLD("put on hold"),
  DECIDE_REBUILD("decided for rebuilding"),
  DECIDE_REPLACE("decided for replacing"),
  DECIDE_RETURN("decided for returning"),
  OPEN("opened"),
  WORK("worked on"),
  CLOSE("closed"),
  PROVE("passed by a final test"),
  DISPROVE("failed by a final test"),
  SEAL("sealed"),
  PACK("packed"),
  SHIP("shipped"),
  STOCK("put into stock"),
  HARVEST("harvested"),
  SCRAP("scrapped"),
  STEP_BACK("taken one step back");

  private final String words;

  Act(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
