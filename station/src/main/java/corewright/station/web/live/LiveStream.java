package corewright.station.web.live;

import corewright.bench.run.Clock;
import corewright.station.work.Refused;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * Sends a run to one browser as server-sent events: columns twenty times a second, what stands
 * beside them four times a second. Each event names the column after its last, so that a lost link
 * goes on where it was. A browser that does not read makes nobody wait but this thread.
 *
 * @see "WHATWG HTML, 9.2 Server-sent events"
 */
final class LiveStream {
  static final int FRAMES_PER_S = 20;
  static final int MOST_WATCHERS = 40;

  /**
   * Columns of one event: 6 numbers of at most 8 characters each, so 20 × 160 of them are less than
   * 154 kB a second.
   */
  private static final int MOST_COLUMNS = 160;

  /** Behind by more than an event holds, so many columns are joined into one. */
  private static final int MOST_JOINED = 8;

  private static final int BESIDE_EVERY = FRAMES_PER_S / 4;
  private static final int SENT_LANES = 6;
  private static final int LOOK_BACK_MS = 10_000;

  private final LiveBench bench;
  private final LiveRun run;
  private final Clock clock;
  private final BooleanSupplier closed;
  private int next;

  /**
   * @param closed whether the console is being closed
   */
  LiveStream(LiveBench bench, LiveRun run, Clock clock, BooleanSupplier closed) {
    this.bench = bench;
    this.run = run;
    this.clock = clock;
    this.closed = closed;
  }

  /** Sends until the run is over, the browser gone, or the console closed. */
  void to(Context context) {
    if (bench.watchers().incrementAndGet() > MOST_WATCHERS) {
      bench.watchers().decrementAndGet();
      throw new Refused(
          "Already " + MOST_WATCHERS + " people watch " + bench.id(), "Look again in a minute.");
    }
    context.status(HttpStatus.OK).contentType("text/event-stream; charset=utf-8");
    context.header("X-Accel-Buffering", "no");
    next = from(Objects.requireNonNullElse(context.header("Last-Event-ID"), ""));
    try {
      OutputStream out = context.res().getOutputStream();
      send(out);
    } catch (IOException gone) {
      return; // whoever watched has left
    } finally {
      bench.watchers().decrementAndGet();
    }
  }

  private void send(OutputStream out) throws IOException {
    Duration frame = Duration.ofMillis(1000 / FRAMES_PER_S);
    int steps = -1;
    for (int i = 0; !closed.getAsBoolean() && !Thread.currentThread().isInterrupted(); i++) {
      boolean over = run.isOver(); // asked first, so that nothing is left behind
      StringBuilder text = new StringBuilder();
      int begun = run.begun().size();
      if (i % BESIDE_EVERY == 0 || begun != steps || over) {
        steps = begun;
        text.append("event: now\ndata: ").append(NowJson.of(bench, run)).append("\n\n");
      }
      columns(text);
      out.write(text.toString().getBytes(StandardCharsets.UTF_8));
      out.flush();
      if (over && next >= run.columns().size()) {
        return;
      }
      clock.pause(frame);
    }
  }

  private void columns(StringBuilder text) {
    int pending = Math.min(run.columns().size() - next, MOST_COLUMNS * MOST_JOINED);
    if (pending <= 0) {
      return;
    }
    int join = (pending + MOST_COLUMNS - 1) / MOST_COLUMNS;
    int[] wide = Columns.joined(run.columns().copy(next, next + pending), join);
    text.append("id: ").append(run.number()).append(':').append(next + pending);
    text.append("\nevent: columns\ndata: {\"i\":").append(next);
    text.append(",\"k\":").append(join).append(",\"n\":").append(pending).append(",\"v\":[");
    for (int at = 0; at < wide.length; at += Columns.WIDTH) {
      for (int lane = 0; lane < SENT_LANES; lane++) {
        text.append(at + lane == 0 ? "" : ",");
        int value = wide[at + lane];
        text.append(value == Columns.NOTHING ? "null" : String.valueOf(value));
      }
    }
    text.append("]}\n\n");
    next += pending;
  }

  /** Where to begin: where a lost link was, or a little before the step that is on. */
  private int from(String lastId) {
    int colon = lastId.indexOf(':');
    if (colon > 0 && lastId.substring(0, colon).equals(String.valueOf(run.number()))) {
      String index = lastId.substring(colon + 1);
      if (index.matches("[0-9]{1,9}")) {
        return Math.min(Integer.parseInt(index), run.columns().size());
      }
    }
    double step_s = run.begun().stream().reduce((a, b) -> b).map(LiveRun.Begun::at_s).orElse(0.0);
    int column_ms = run.columns().column_ms();
    return Math.max(0, (int) (step_s * 1000 - LOOK_BACK_MS) / column_ms);
  }
}
