package corewright.station.web.live;

import corewright.station.work.SecondPerson;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What each person has chosen and confirmed for their next run on a bench. Gone with the start. */
final class Preparations {
  /** Nobody waits longer beside a bench for it to be started (common practice, no source). */
  private static final Duration STAYS = Duration.ofMinutes(10);

  private final Map<String, Prepared> by = new ConcurrentHashMap<>();

  /**
   * One person's choice.
   *
   * @param tag empty until a unit is chosen
   * @param profile empty until one is proposed or chosen
   * @param cautions this person has read the cautions for this unit
   * @param second who else is there; empty if nobody was named
   * @param proved when they gave the password of their own account; empty if they did not
   * @param wireLog whether every byte on the wires is kept
   */
  record Prepared(
      String tag,
      String profile,
      boolean cautions,
      String second,
      Optional<Instant> proved,
      boolean wireLog) {
    static final Prepared NOTHING = new Prepared("", "", false, "", Optional.empty(), false);

    /** This person stands by, proved just now. */
    Prepared by(String name, Instant now) {
      return new Prepared(tag, profile, cautions, name, Optional.of(now), wireLog);
    }

    /** Who stands by, as a run asks for it: whoever confirmed long ago may have left. */
    Optional<SecondPerson> present(Instant now) {
      return proved.filter(at -> now.isBefore(at.plus(STAYS))).isPresent()
          ? Optional.of(SecondPerson.proved(second))
          : SecondPerson.named(second);
    }
  }

  Prepared of(String who) {
    return by.getOrDefault(who, Prepared.NOTHING);
  }

  /** What was confirmed for one unit is not confirmed for another. */
  void put(String who, Prepared what) {
    Prepared old = of(who);
    boolean same = old.tag().equals(what.tag()) || old.tag().isEmpty();
    by.put(
        who,
        same
            ? what
            : new Prepared(
                what.tag(),
                what.profile(),
                false,
                what.second(),
                Optional.empty(),
                what.wireLog()));
  }

  void done(String who) {
    by.remove(who);
  }
}
