package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Act;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.CsvSource;

/** Many benches on one ledger: nothing is lost, nothing is there twice, and one wins. */
@ParameterizedClass
@CsvSource({"SQLITE, 6", "POSTGRESQL, 20"})
class WritersTest {
  private static final int EACH = 8;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);

  @Parameter(0)
  private Kept kept;

  @Parameter(1)
  private int writers;

  @TempDir private Path folder;

  @Test
  void noneIsLostAndNoneIsDouble() throws Exception {
    SigningKey key = SigningKey.make();
    String shared = Tags.of(1000);
    try (Ledger ledger = kept.open(folder, "counter", CLOCK, key)) {
      ledger.receive(Samples.core(shared, "114"));
      ledger.runEnded(Samples.run("a", shared));
      ledger.decided(shared, Samples.rebuild(), "x");
    }
    Set<String> tags = ConcurrentHashMap.newKeySet();
    AtomicInteger opened = new AtomicInteger();
    AtomicInteger refused = new AtomicInteger();
    List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
    List<Thread> threads = new ArrayList<>();
    for (int w = 0; w < writers; w++) {
      String chain = "bench-" + (w % (writers / 2)); // two of them on each chain
      Thread thread =
          new Thread(
              () -> {
                try (Ledger ledger = kept.open(folder, chain, CLOCK, key)) {
                  for (int i = 0; i < EACH; i++) {
                    String tag = ledger.nextTag();
                    assertTrue(tags.add(tag), tag);
                    ledger.receive(Samples.core(tag, "114"));
                  }
                  ledger.lives().take(shared, new Step.Plain(Act.OPEN, ""), chain);
                  opened.incrementAndGet();
                } catch (LedgerFault late) {
                  refused.incrementAndGet();
                }
              });
      thread.setUncaughtExceptionHandler((t, e) -> faults.add(e));
      threads.add(thread);
    }
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    assertEquals(List.of(), faults);
    assertEquals(writers * EACH, tags.size());
    assertEquals(1, opened.get(), "all wanted to open the one unit");
    assertEquals(writers - 1, refused.get());
    Verification found = Ledger.verify(kept.url(folder), Expectations.NONE);
    assertTrue(found.whole(), found.broken().toString());
    assertEquals(writers * EACH + 4, found.events());
    assertEquals(found.events(), found.signed());
  }

  /** Two benches take the same unit at the same moment: one has it, the other is told who. */
  @Test
  void aUnitIsOnOneBenchAtATime() throws Exception {
    String tag = Tags.of(1);
    try (Ledger one = kept.open(folder, "bench-1", CLOCK);
        Ledger other = kept.open(folder, "bench-2", CLOCK)) {
      one.receive(Samples.core(tag, "114"));
      for (int i = 0; i < 5; i++) {
        String first = "bench-1-" + i;
        String second = "bench-2-" + i;
        CyclicBarrier together = new CyclicBarrier(2);
        CompletableFuture<String> a = begin(one, Samples.begun(first, tag, "bench-1"), together);
        CompletableFuture<String> b = begin(other, Samples.begun(second, tag, "bench-2"), together);
        boolean firstHasIt = a.get().isEmpty();
        assertEquals(
            "Unit "
                + tag
                + (firstHasIt ? " is on bench bench-1 in run " : " is on bench bench-2 in run ")
                + (firstHasIt ? first : second)
                + ". End that run first; if its program died, the next start on "
                + (firstHasIt ? "bench-1" : "bench-2")
                + " closes it",
            firstHasIt ? b.get() : a.get());
        one.runEnded(Samples.run(firstHasIt ? first : second, tag));
      }
    }
  }

  private static CompletableFuture<String> begin(Ledger on, RunBegun run, CyclicBarrier together) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            together.await();
            on.runBegun(run);
            return "";
          } catch (LedgerFault refused) {
            return String.valueOf(refused.getMessage());
          } catch (InterruptedException | BrokenBarrierException e) {
            throw new IllegalStateException(e);
          }
        },
        command -> new Thread(command).start());
  }
}
