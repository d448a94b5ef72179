package corewright.bench.wirelog;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.run.Clock;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * Writes down what goes over the wires of a bench. What the station writes stands before the answer
 * to it, whoever is quicker: the order of the lines is the order of what happened.
 */
public final class WireLog implements AutoCloseable {
  /** First line of the file. */
  static final String HEAD = "corewright wire log 1";

  private final Writer out;
  private final Clock clock;
  private final long began;
  private long events;

  private Optional<String> flaw = Optional.empty();

  WireLog(Writer out, Clock clock) {
    this.out = out;
    this.clock = clock;
    this.began = clock.nanos();
  }

  /**
   * Begins a log.
   *
   * @param file must not be there yet
   * @throws UncheckedIOException if it cannot be written
   */
  public static WireLog begin(Path file, Clock clock) {
    try {
      BufferedWriter out =
          Files.newBufferedWriter(
              file,
              StandardCharsets.US_ASCII,
              StandardOpenOption.CREATE_NEW,
              StandardOpenOption.WRITE);
      out.write(HEAD + "\n" + "began " + clock.wall() + "\n");
      return new WireLog(out, clock);
    } catch (IOException refused) {
      throw new UncheckedIOException(refused);
    }
  }

  /** The same links, written down. */
  public Links over(Links links) {
    return (role, port, baud, characters) ->
        new Logged(role, links.open(role, port, baud, characters));
  }

  /** The clock that drivers and engine go by: what it told them is part of what happened. */
  public Clock over(Clock other) {
    return new LoggedClock(this, other);
  }

  /** Never stands in the way of what it writes down: a full disk must not keep a source on. */
  synchronized void put(String who, WireEvent.Kind kind, byte[] bytes) {
    if (flaw.isPresent()) {
      return;
    }
    try {
      out.write(new WireEvent(clock.nanos() - began, who, kind, bytes).line());
      out.write('\n');
      events++;
    } catch (IOException full) {
      flaw = Optional.of(String.valueOf(full.getMessage()));
    }
  }

  /** Why it ends before the wires were still; empty where it is whole. */
  public synchronized Optional<String> flaw() {
    return flaw;
  }

  /** How much was written down so far. */
  public synchronized long events() {
    return events;
  }

  @Override
  public synchronized void close() {
    try {
      out.close();
    } catch (IOException full) {
      flaw = flaw.or(() -> Optional.of(String.valueOf(full.getMessage())));
    }
  }

  private final class Logged implements Link {
    private final String role;
    private final Link link;

    Logged(String role, Link link) {
      this.role = role;
      this.link = link;
    }

    @Override
    public String name() {
      return link.name();
    }

    @Override
    public void write(byte[] bytes, Duration patience) {
      put(role, WireEvent.Kind.WRITTEN, bytes);
      try {
        link.write(bytes, patience);
      } catch (InstrumentFault fault) {
        put(role, WireEvent.Kind.WRITE_FAILED, WireEvent.bytesOf(fault));
        throw fault;
      }
    }

    @Override
    public int read(byte[] into, Duration patience) {
      try {
        int count = link.read(into, patience);
        put(role, WireEvent.Kind.READ, Arrays.copyOf(into, count));
        return count;
      } catch (InstrumentFault fault) {
        put(role, WireEvent.Kind.READ_FAILED, WireEvent.bytesOf(fault));
        throw fault;
      }
    }

    @Override
    public void close() {
      link.close();
    }
  }
}
