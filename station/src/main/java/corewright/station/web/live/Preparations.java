package corewright.station.web.live;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What each person has chosen and confirmed for their next run on a bench. Gone with the start. */
final class Preparations {
  private final Map<String, Prepared> by = new ConcurrentHashMap<>();

  /**
   * One person's choice.
   *
   * @param tag empty until a unit is chosen
   * @param profile empty until one is proposed or chosen
   * @param cautions this person has read the cautions for this unit
   * @param second who else is there; empty if nobody was named
   */
  record Prepared(String tag, String profile, boolean cautions, String second) {
    static final Prepared NOTHING = new Prepared("", "", false, "");
  }

  Prepared of(String who) {
    return by.getOrDefault(who, Prepared.NOTHING);
  }

  /** What was confirmed for one unit is not confirmed for another. */
  void put(String who, Prepared what) {
    Prepared old = of(who);
    boolean same = old.tag().equals(what.tag()) || old.tag().isEmpty();
    by.put(who, same ? what : new Prepared(what.tag(), what.profile(), false, what.second()));
  }

  void done(String who) {
    by.remove(who);
  }
}
