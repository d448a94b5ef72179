package corewright.station.web.door;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * Keeps the book readable under a storm: so many notes a minute, the rest as a number. Long or
 * strange text from outside is cut and made printable.
 */
public final class Sparing implements DoorBook {
  private static final int MOST_A_MINUTE = 30;
  private static final int MOST_CHARACTERS = 120;
  private static final Duration MINUTE = Duration.ofMinutes(1);

  private final DoorBook book;
  private final Clock clock;
  private Instant since = Instant.MIN;
  private int noted;
  private int left;

  public Sparing(DoorBook book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  @Override
  public synchronized void note(String what, String who, String from) {
    Instant now = clock.wall();
    if (since.equals(Instant.MIN) || now.isAfter(since.plus(MINUTE))) {
      if (left > 0) {
        book.note(
            String.format(Locale.ROOT, "%d more in the minute before", left), "", "the console");
      }
      since = now;
      noted = 0;
      left = 0;
    }
    if (noted >= MOST_A_MINUTE) {
      left++;
      return;
    }
    noted++;
    book.note(plain(what), plain(who), plain(from));
  }

  private static String plain(String text) {
    String shown = text.replaceAll("\\p{Cntrl}", "?");
    return shown.length() <= MOST_CHARACTERS ? shown : shown.substring(0, MOST_CHARACTERS) + "…";
  }
}
