package corewright.bench.wirelog;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Characters;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A wire log played back: opens links that answer what was answered then, in the order of then. A
 * station that does something else than it did is told so.
 */
public final class PlayedLog implements Links {
  private static final long PATIENCE_MS = 5000;
  private static final long LOOK_MS = 10;

  private final List<WireEvent> wire = new ArrayList<>();
  private final Map<String, Deque<Long>> clocks = new HashMap<>();
  private int next;

  /** Once the station has done something else, nothing that it asks for can come any more. */
  private boolean astray;

  private PlayedLog() {}

  /**
   * Reads a log, all of it into memory.
   *
   * @throws IllegalArgumentException with the line, if it is no wire log
   */
  public static PlayedLog of(Path file) {
    try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
      if (!WireLog.HEAD.equals(in.readLine()) || in.readLine() == null) {
        throw new IllegalArgumentException(file + ":1: this is no wire log");
      }
      PlayedLog log = new PlayedLog();
      boolean torn = isTorn(file);
      int number = 3;
      String next;
      for (String line = in.readLine(); line != null; line = next) {
        next = in.readLine();
        if (next != null || !torn) {
          log.take(line, file + ":" + number++);
        }
      }
      return log;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** A program that was killed has left half a line at the end, which says nothing. */
  private static boolean isTorn(Path file) throws IOException {
    try (FileChannel bytes = FileChannel.open(file)) {
      ByteBuffer last = ByteBuffer.allocate(1);
      bytes.read(last, Math.max(0, bytes.size() - 1));
      return last.get(0) != '\n';
    }
  }

  private void take(String line, String where) {
    try {
      WireEvent event = WireEvent.of(line);
      if (event.kind() == WireEvent.Kind.CLOCK) {
        clocks.computeIfAbsent(event.who(), w -> new ArrayDeque<>()).add(event.nanos());
      } else {
        wire.add(event);
      }
    } catch (IllegalArgumentException bad) {
      throw new IllegalArgumentException(where + ": " + bad.getMessage(), bad);
    }
  }

  @Override
  public Link open(String role, String port, int baud, Characters characters) {
    return new PlayedLink(this, role, port);
  }

  /** What the clock said then; it goes on from the last it said. */
  public Clock clock(Clock wall) {
    return new PlayedClock(this, wall);
  }

  /** What has not been played yet. */
  public synchronized int left() {
    return wire.size() - next;
  }

  /** Whether the station asked for something else than then, or for more than there is. */
  public synchronized boolean isAstray() {
    return astray;
  }

  synchronized long nanos(String who) {
    Deque<Long> readings = clocks.get(who);
    if (readings == null || readings.isEmpty()) {
      throw new IllegalStateException("the clock was not read so often in the log");
    }
    return readings.size() == 1 ? readings.element() : readings.remove();
  }

  /**
   * The next event of the whole bench, once it is this instrument's.
   *
   * @throws InstrumentFault if it does not become so: the station does something else
   */
  synchronized WireEvent turn(String role, String doing) {
    try {
      for (long ms = 0; !astray && isAnothersTurn(role) && ms < PATIENCE_MS; ms += LOOK_MS) {
        wait(LOOK_MS);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    if (next >= wire.size()) {
      throw other(role, doing, "the log ends here");
    }
    WireEvent event = wire.get(next);
    if (!event.who().equals(role)) {
      throw other(role, doing, "in the log it is the turn of the " + event.who());
    }
    return event;
  }

  private boolean isAnothersTurn(String role) {
    return next < wire.size() && !wire.get(next).who().equals(role);
  }

  synchronized void played() {
    next++;
    notifyAll();
  }

  /** Whether the next event is this one of this instrument. */
  synchronized boolean follows(String role, WireEvent.Kind kind) {
    for (int i = next; i < wire.size(); i++) {
      if (wire.get(i).who().equals(role)) {
        return wire.get(i).kind() == kind;
      }
    }
    return false;
  }

  synchronized InstrumentFault other(String role, String doing, String found) {
    astray = true;
    notifyAll();
    return new InstrumentFault(
        role,
        doing + " in a wire log that is played back",
        found,
        "Play it with the program, bench and profile that it was written with.");
  }
}
