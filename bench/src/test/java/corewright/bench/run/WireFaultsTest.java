package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Verdict;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Anything may go wrong on any wire, at any moment, on a good unit and on a bad one: every run
 * ends, leaves the unit without feed and charge, and never says PASS or FAIL where the run without
 * the fault says otherwise. A seeded part of the matrix in every build; all of it with {@code
 * -Dwire.faults.runs=1000}.
 */
class WireFaultsTest {
  private static final int RUNS = Integer.getInteger("wire.faults.runs", 4);
  private static final int CELLS = Integer.getInteger("wire.faults.cells", 52);
  private static final int BENCHES = Integer.getInteger("wire.faults.benches", 4);
  private static final long SEED = Long.getLong("wire.faults.seed", 20_261_125);

  private static final UnitParameters GOOD = UnitParameters.healthy("sd48");
  private static final UnitParameters BAD = UnitFault.WEAK_POWER_STAGE.in(GOOD, 1);

  @TempDir Path folder;

  @Test
  void everyRunEndsSafelyAndNoneSaysWhatIsNotSo() throws IOException {
    Map<UnitParameters, Optional<Verdict>> truth =
        Map.of(GOOD, without(GOOD, 0), BAD, without(BAD, 1));
    assertEquals(Optional.of(Verdict.PASS), truth.get(GOOD));
    assertEquals(Optional.of(Verdict.FAIL), truth.get(BAD));

    Random random = new Random(SEED);
    List<FaultyRun> runs = new ArrayList<>();
    for (int i = 0; i < RUNS; i++) {
      UnitParameters unit = random.nextInt(3) == 0 ? BAD : GOOD;
      runs.add(new FaultyRun(unit, WireFaultDraw.some(random), Optional.empty()));
    }
    List<FaultyRun> matrix = new ArrayList<>(WireFaultDraw.matrix(GOOD));
    Collections.shuffle(matrix, random);
    runs.addAll(matrix.subList(0, Math.min(CELLS, matrix.size())));
    List<FaultyRun.Came> all = all(runs, truth);

    long hung = all.stream().filter(FaultyRun.Came::hung).count();
    long energised = all.stream().filter(FaultyRun.Came::energised).count();
    long wrong = all.stream().filter(FaultyRun.Came::wrong).count();
    all.stream()
        .filter(c -> c.hung() || c.energised() || c.wrong())
        .forEach(c -> System.out.println("wire-faults, look at: " + c.words()));
    String line =
        "wire-faults: runs="
            + all.size()
            + " hung="
            + hung
            + " energised="
            + energised
            + " wrong="
            + wrong;
    System.out.println(line);
    assertTrue(hung == 0 && energised == 0 && wrong == 0, line);
  }

  private Optional<Verdict> without(UnitParameters unit, int number) throws IOException {
    FaultyRun.Came came =
        new FaultyRun(unit, List.of(), Optional.empty())
            .run(folder.resolve("run" + number), Optional.empty());
    return came.verdict();
  }

  /** Each on a bench of its own, several at once: they mostly wait for somebody's silence. */
  private List<FaultyRun.Came> all(
      List<FaultyRun> runs, Map<UnitParameters, Optional<Verdict>> truth) {
    ExecutorService benches = Executors.newFixedThreadPool(BENCHES);
    try {
      List<Future<FaultyRun.Came>> coming = new ArrayList<>();
      for (FaultyRun run : runs) {
        Path own = folder.resolve("run" + (coming.size() + 2));
        Optional<Verdict> otherwise = truth.getOrDefault(run.unit(), Optional.empty());
        coming.add(benches.submit(() -> run.run(own, otherwise)));
      }
      List<FaultyRun.Came> came = new ArrayList<>();
      for (Future<FaultyRun.Came> one : coming) {
        came.add(one.get());
      }
      return came;
    } catch (ExecutionException broken) {
      throw new AssertionError(broken);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(stopped);
    } finally {
      benches.shutdownNow();
    }
  }
}
