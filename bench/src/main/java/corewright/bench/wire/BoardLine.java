package corewright.bench.wire;

import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** One line to a board: sends frames, sorts what comes back. Not thread-safe. */
final class BoardLine {
  /** More frames than this waiting means that the station does not keep up. */
  private static final int MOST_WAITING = 4096;

  private static final Duration WRITE = Duration.ofMillis(500);

  private final String role;
  private final Link link;
  private final Clock clock;
  private final FrameDecoder decoder = new FrameDecoder();
  private final byte[] chunk = new byte[65_536];
  private final Deque<Numbered> frames = new ArrayDeque<>();
  private final List<FrameEvent.Good> answers = new ArrayList<>();
  private int brokenBefore;

  /**
   * The DATA frame that was taken last, or that was broken: what an acknowledged board waits for.
   */
  private OptionalInt owed = OptionalInt.empty();

  private record Numbered(int sequence, Frame frame) {}

  BoardLine(String role, Link link, Clock clock) {
    this.role = role;
    this.link = link;
    this.clock = clock;
  }

  void send(byte[] frame) {
    link.write(frame, WRITE);
  }

  void forgetFrames() {
    frames.clear();
    brokenBefore = 0;
    owed = OptionalInt.empty();
  }

  /** The first answer that {@code wanted} accepts; others are dropped. */
  FrameEvent.Good answer(String doing, Predicate<FrameEvent.Good> wanted, Duration patience) {
    long deadline = clock.nanos() + patience.toNanos();
    do {
      Optional<FrameEvent.Good> found = answers.stream().filter(wanted).findFirst();
      answers.clear();
      if (found.isPresent()) {
        return found.get();
      }
    } while (read(deadline));
    throw fault(
        doing,
        "no answer within " + patience.toMillis() + " ms",
        "Check the cable and that the board is on; if it is, switch it off and on.");
  }

  /**
   * The next DATA frame.
   *
   * @param acknowledge told the number of a frame only when the next one is waited for: until then
   *     an emulated board's time stands still
   */
  Frame frame(String doing, Duration patience, IntConsumer acknowledge) {
    long deadline = clock.nanos() + patience.toNanos();
    while (frames.isEmpty()) {
      owed.ifPresent(acknowledge);
      owed = OptionalInt.empty();
      if (!read(deadline)) {
        throw fault(
            doing,
            "no frame within " + patience.toMillis() + " ms",
            "Check the cable and that the board is on; if it is, switch it off and on.");
      }
    }
    Numbered taken = frames.remove();
    owed = OptionalInt.of(taken.sequence());
    return taken.frame();
  }

  Status status(FrameEvent.Good alive, String doing) {
    return readable(doing, () -> BoardFormat.alive(alive.payload()));
  }

  InstrumentFault fault(String doing, String found, String remedy) {
    return new InstrumentFault(role, doing + " on " + link.name(), found, remedy);
  }

  /** What a payload says; if it says nothing that can be read, the board is not to be trusted. */
  <T> T readable(String doing, Supplier<T> reader) {
    try {
      return reader.get();
    } catch (IllegalArgumentException unreadable) {
      throw fault(
          doing,
          String.valueOf(unreadable.getMessage()),
          "Load the board's firmware again; its stream must follow fixtures/WIRE.md.");
    }
  }

  /** Reads one chunk; false if the deadline passed without one. */
  private boolean read(long deadline) {
    long left = deadline - clock.nanos();
    int count = link.read(chunk, Duration.ofNanos(Math.max(left, 0)));
    if (count == 0) {
      return clock.nanos() < deadline;
    }
    decoder.feed(chunk, count).forEach(this::sort);
    return true;
  }

  private void sort(FrameEvent event) {
    if (event instanceof FrameEvent.Good good && good.type() == FrameFormat.DATA) {
      Frame frame = readable("reading", () -> BoardFormat.data(good.payload(), brokenBefore));
      frames.add(new Numbered(good.sequence(), frame));
      brokenBefore = 0;
      if (frames.size() > MOST_WAITING) {
        throw fault(
            "reading",
            MOST_WAITING + " frames are waiting",
            "The computer does not keep up: lower the sample rate or close other programs.");
      }
    } else if (event instanceof FrameEvent.Good good) {
      answers.add(good);
    } else if (event instanceof FrameEvent.Broken broken) {
      brokenBefore++;
      if (broken.type() == FrameFormat.DATA) {
        owed = OptionalInt.of(broken.sequence()); // it goes on, with these samples missing
      }
    } else if (event instanceof FrameEvent.Repeated) {
      brokenBefore++;
    }
  }
}
