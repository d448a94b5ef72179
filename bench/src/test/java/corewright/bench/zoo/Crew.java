package corewright.bench.zoo;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/** Threads that share numbered pieces of work; what they give comes back in order of number. */
final class Crew implements AutoCloseable {
  private final ExecutorService threads;
  private final Consumer<Object> told;

  /**
   * @param told hears of every piece as soon as its turn has come
   */
  Crew(int threads, Consumer<Object> told) {
    this.threads = Executors.newFixedThreadPool(threads);
    this.told = told;
  }

  <T> List<T> each(int count, IntFunction<T> work) {
    List<Future<T>> begun = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int number = i;
      begun.add(threads.submit(() -> work.apply(number)));
    }
    List<T> done = new ArrayList<>();
    for (Future<T> each : begun) {
      try {
        done.add(each.get());
      } catch (InterruptedException | ExecutionException broken) {
        throw new IllegalStateException("a unit of the zoo could not be tested", broken);
      }
      told.accept(done.get(done.size() - 1));
    }
    return done;
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
