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
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Six benches on one file: nothing is lost, nothing is there twice, and one wins. */
class SixWritersTest {
  private static final int WRITERS = 6;
  private static final int EACH = 8;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  @TempDir private Path folder;

  @Test
  void noneIsLostAndNoneIsDouble() throws Exception {
    Path file = folder.resolve("ledger.db");
    SigningKey key = SigningKey.make();
    String shared = Tags.of(1000);
    try (Ledger ledger = Ledger.open(file, "counter", CLOCK, key)) {
      ledger.receive(Samples.core(shared, "114"));
      ledger.runEnded(Samples.run("a", shared));
      ledger.decided(shared, Samples.rebuild(), "x");
    }
    Set<String> tags = ConcurrentHashMap.newKeySet();
    AtomicInteger opened = new AtomicInteger();
    AtomicInteger refused = new AtomicInteger();
    List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
    List<Thread> threads = new ArrayList<>();
    for (int w = 0; w < WRITERS; w++) {
      String chain = "bench-" + (w % 3); // two of them on each chain
      Thread thread =
          new Thread(
              () -> {
                try (Ledger ledger = Ledger.open(file, chain, CLOCK, key)) {
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
    assertEquals(WRITERS * EACH, tags.size());
    assertEquals(1, opened.get(), "six wanted to open the one unit");
    assertEquals(WRITERS - 1, refused.get());
    Verification found = Ledger.verify(file, Expectations.NONE);
    assertTrue(found.whole(), found.broken().toString());
    assertEquals(WRITERS * EACH + 4, found.events());
    assertEquals(found.events(), found.signed());
  }
}
