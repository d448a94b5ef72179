package corewright.station.web.shop;

import corewright.bench.run.Clock;
import corewright.station.work.OpenToday;
import corewright.station.work.ShopFigures;
import corewright.station.work.ShopFigures.Period;
import corewright.station.work.Workshop;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Counts beside the pages: reading every visit of a large shop takes longer than anybody waits. A
 * page shows what was counted last while it is counted again.
 */
final class Counting {
  /** Nobody's shop changes much in this time. */
  private static final Duration FRESH = Duration.ofMinutes(1);

  /**
   * How long the page that begins the first count waits for it, which a small shop has at once; who
   * looks meanwhile is told that it is counted.
   */
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private final Clock clock;
  private final Executor beside =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "counting");
            thread.setDaemon(true);
            return thread;
          });

  private Optional<Counted> last = Optional.empty();
  private Optional<CompletableFuture<Counted>> running = Optional.empty();

  Counting(Clock clock) {
    this.clock = clock;
  }

  /** What was counted, and when. */
  record Counted(Workshop shop, Period period, Instant at, ShopFigures figures, OpenToday open) {
    boolean is(Workshop of, Period asked) {
      return shop == of && period.equals(asked);
    }
  }

  /** The figures; empty while they are counted for the first time. */
  Optional<Counted> of(Workshop shop, Period period) {
    CompletableFuture<Counted> fresh;
    synchronized (this) {
      Optional<Counted> kept = last.filter(c -> c.is(shop, period));
      boolean old = kept.filter(c -> clock.wall().isBefore(c.at().plus(FRESH))).isEmpty();
      if (!old || running.filter(r -> !r.isDone()).isPresent()) {
        return kept;
      }
      fresh = count(shop, period);
      running = Optional.of(fresh);
      if (kept.isPresent()) {
        return kept;
      }
    }
    return waited(fresh).filter(c -> c.is(shop, period));
  }

  private CompletableFuture<Counted> count(Workshop shop, Period period) {
    return CompletableFuture.supplyAsync(
        () -> {
          Counted counted =
              new Counted(shop, period, clock.wall(), shop.figures(period), shop.openToday());
          synchronized (this) {
            last = Optional.of(counted);
          }
          return counted;
        },
        beside);
  }

  private static Optional<Counted> waited(CompletableFuture<Counted> fresh) {
    try {
      return Optional.of(fresh.get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS));
    } catch (TimeoutException later) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } catch (ExecutionException broken) {
      throw new CompletionException(broken.getCause());
    }
  }
}
