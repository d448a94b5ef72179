package corewright.bench.wire;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Identities;
import corewright.bench.port.Link;
import corewright.bench.port.Relay;
import corewright.bench.run.Clock;
import corewright.bench.run.Framing;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** A fixture board that speaks the framed stream of WIRE.md. One board, one thread. */
public final class FramedDigitizer implements Digitizer, Relay {
  private static final Duration ANSWER = Duration.ofMillis(500);

  /** The longest that the fixture may stay connected after the station has gone silent. */
  private static final int HOLD_OFF_MS = 500;

  /** "not streaming": what a STOP is refused with when there is nothing to stop. */
  private static final int NOT_STREAMING = 5;

  private final String role;
  private final Link link;
  private final BoardLine line;
  private final FrameEncoder encoder = new FrameEncoder();
  private final boolean acknowledged;
  private BoardFormat.Identity board;
  private boolean streaming;

  /** A HEARTBEAT was sent whose answer comes with the frames. */
  private boolean beating;

  private FramedDigitizer(String role, Link link, Clock clock) {
    this.role = role;
    this.link = link;
    this.line = new BoardLine(role, link, clock);
    this.board = ask();
    this.acknowledged = Identities.isEmulated(board.instrument());
  }

  /**
   * Asks the board who it is.
   *
   * @throws corewright.bench.port.InstrumentFault if it does not answer
   */
  public static FramedDigitizer open(String role, Link link, Clock clock) {
    return new FramedDigitizer(role, link, clock);
  }

  @Override
  public String role() {
    return role;
  }

  @Override
  public String identity() {
    board = ask();
    return board.instrument();
  }

  @Override
  public List<Channel> channels() {
    return board.channels();
  }

  @Override
  public Optional<String> fixture() {
    return Optional.of(board.fixture());
  }

  @Override
  public double bytesPerSecond(int rate_Hz, int samplesPerFrame) {
    return new Framing(rate_Hz, samplesPerFrame).bytesPerSecond(channels().size());
  }

  @Override
  public void start(int rate_Hz, int samplesPerFrame) {
    stop(); // a board may still be streaming to a station that is no more
    String doing = "starting at " + rate_Hz + " samples a second";
    carriedOut(doing, encoder.start(rate_Hz, samplesPerFrame, acknowledged), 0);
    streaming = true;
  }

  @Override
  public Frame next(Duration patience) {
    Frame frame = line.frame("sampling", patience, this::acknowledge);
    if (frame.codes().length != board.channels().size()) {
      throw line.fault(
          "sampling",
          frame.codes().length + " channels, not the " + board.channels().size() + " announced",
          "Load the board's firmware again; its stream must follow fixtures/WIRE.md.");
    }
    return frame;
  }

  @Override
  public boolean waits() {
    return acknowledged;
  }

  @Override
  public void stop() {
    carriedOut("stopping", encoder.stop(), NOT_STREAMING);
    streaming = false;
    line.forgetFrames();
  }

  @Override
  public void relay(boolean closed) {
    carriedOut(closed ? "closing the relay" : "opening the relay", encoder.relay(closed), 0);
  }

  @Override
  public Status heartbeat() {
    heard();
    line.send(encoder.heartbeat(HOLD_OFF_MS));
    beating = true;
    return heard().orElseThrow();
  }

  /**
   * While a board waits for its answer to be read, samples that may show a fault wait behind it:
   * two frames of the fastest stream. So nobody waits.
   */
  @Override
  public void alive() {
    if (acknowledged || !streaming) {
      heartbeat();
      return;
    }
    heard();
    line.send(encoder.heartbeat(HOLD_OFF_MS));
    beating = true;
  }

  /** What the last HEARTBEAT was answered with, if one was sent and its answer not taken yet. */
  private Optional<Status> heard() {
    if (!beating) {
      return Optional.empty();
    }
    String doing = "asking whether it is alive";
    FrameEvent.Good answer = line.answer(doing, good -> good.type() == FrameFormat.ALIVE, ANSWER);
    beating = false;
    return Optional.of(line.status(answer, doing));
  }

  @Override
  public void off() {
    relay(false);
  }

  @Override
  public void close() {
    link.close();
  }

  private void acknowledge(int sequence) {
    if (acknowledged) {
      line.send(encoder.acknowledge(sequence));
    }
  }

  private BoardFormat.Identity ask() {
    beating = false; // the answers of a line come in order: what is waited for is behind it
    String doing = "asking who it is";
    line.send(encoder.identify());
    FrameEvent.Good answer =
        line.answer(doing, good -> good.type() == FrameFormat.IDENTITY, ANSWER);
    return line.readable(doing, () -> BoardFormat.identity(answer.payload()));
  }

  /**
   * Sends a command and waits until the board says that it is done.
   *
   * @param tolerated code of a refusal that is as good
   */
  private void carriedOut(String doing, byte[] frame, int tolerated) {
    int sequence = encoder.sequence() - 1 & 0xFFFF;
    beating = false;
    line.send(frame);
    FrameEvent.Good answer =
        line.answer(
            doing,
            good ->
                (good.type() == FrameFormat.DONE || good.type() == FrameFormat.REFUSED)
                    && line.readable(doing, () -> BoardFormat.answer(good.payload())).sequence()
                        == sequence,
            ANSWER);
    if (answer.type() == FrameFormat.REFUSED
        && line.readable(doing, () -> BoardFormat.refusalCode(answer.payload())) != tolerated) {
      throw line.fault(
          doing,
          "the board refuses: " + line.readable(doing, () -> BoardFormat.refusal(answer.payload())),
          "Close the cover, release the stop button and check the rate in the profile.");
    }
  }
}
