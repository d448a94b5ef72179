package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Relay;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * Asks one slow instrument on a thread of its own, so that no frame waits for it. Where the
 * digitizer's time stands still anyway, it is waited for, and the fixture hears meanwhile that the
 * station is alive: then the same seed gives the same run.
 */
public final class Aside implements AutoCloseable {
  /** An instrument that needs longer than this for an answer counts as silent. */
  public static final Duration SILENCE = Duration.ofSeconds(2);

  private static final long ALIVE_MS = 200;

  private final Digitizer digitizer;
  private final Relay relay;
  private final ExecutorService thread;

  /**
   * @param name of the thread
   */
  public Aside(String name, BenchInstruments bench) {
    this.digitizer = bench.digitizer();
    this.relay = bench.relay();
    this.thread =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread own = new Thread(task, "aside-" + name);
              own.setDaemon(true);
              return own;
            });
  }

  /** Asks; the answer is waited for elsewhere. */
  public <T> Question<T> ask(Supplier<T> question) {
    if (digitizer.waits()) {
      relay.heartbeat();
    }
    return new Question<>(thread.submit(question::get));
  }

  /** What was asked and may not be answered yet. */
  public final class Question<T> {
    private final Future<T> future;

    private Question(Future<T> future) {
      this.future = future;
    }

    /**
     * The answer, once it is there.
     *
     * @throws RuntimeException what the instrument's driver threw
     */
    public Optional<T> answer() {
      try {
        for (long ms = 0; digitizer.waits() && !isDoneWithin(); ms += ALIVE_MS) {
          if (ms > SILENCE.toMillis()) {
            return Optional.empty();
          }
          relay.heartbeat();
        }
        return future.isDone() ? Optional.of(future.get()) : Optional.empty();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      } catch (ExecutionException failed) {
        throw failed.getCause() instanceof RuntimeException known
            ? known
            : new IllegalStateException(failed.getCause());
      }
    }

    private boolean isDoneWithin() throws InterruptedException, ExecutionException {
      try {
        future.get(ALIVE_MS, TimeUnit.MILLISECONDS);
        return true;
      } catch (TimeoutException notYet) {
        return false;
      }
    }

    /**
     * Whether it should have been answered by now.
     *
     * @param waited_s s of samples since it was asked; nothing where their time stands still
     */
    public boolean isOverdue(double waited_s) {
      return !future.isDone() && (digitizer.waits() || waited_s > SILENCE.toSeconds());
    }
  }

  /** Lets the last question come to its end: nobody else may speak to the instrument before. */
  @Override
  public void close() {
    thread.shutdown();
    try {
      thread.awaitTermination(SILENCE.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
