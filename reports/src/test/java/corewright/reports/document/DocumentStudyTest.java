package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.measures.Capture;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import corewright.reports.document.genuine.TestKey;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Many documents of every kind, one after the other, each held to PDF/A-3a and PDF/UA-1. {@code
 * .ci/soak/documents} makes a thousand and prints how long one takes; here a few are made, and no
 * time is judged.
 */
class DocumentStudyTest {
  private static final int WARM = 100;
  private static final List<String> DONE =
      List.of(
          "Output capacitors C1 to C4, whole bank, lot 2644-K", "Cover gasket and vent membrane");

  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();
  private final Documents documents =
      new Documents(
          TestReportTest.SHOP,
          runs,
          Clock.fixed(Samples.MORNING, ZoneOffset.UTC),
          new TestRecord("bench-1:1042:9f86d081884c7d65"),
          Optional.of(new TestKey()));

  @Test
  void noneIsInvalid() throws Exception {
    int count = Integer.getInteger("documents.count", 7);
    List<Making> makings = makings();
    Random random = new Random(20261125);
    double[] took_ms = new double[count];
    long before = 0;
    int invalid = 0;
    for (int i = 0; i < count; i++) {
      Making making = makings.get(i < makings.size() ? i : random.nextInt(makings.size()));
      long begun = System.nanoTime();
      Path file = making.make();
      took_ms[i] = (System.nanoTime() - begun) / 1e6;
      invalid += Lasting.faults(file).isEmpty() ? 0 : 1;
      Files.delete(file);
      if (i == Math.min(WARM, count - 1)) {
        before = used();
      }
    }
    double growth_MB = (used() - before) / 1e6;
    double[] sorted = took_ms.clone();
    Arrays.sort(sorted);
    String figures =
        String.format(
            Locale.ROOT,
            "documents: count=%d first_ms=%.0f median_ms=%.0f p95_ms=%.0f growth_MB=%.1f"
                + " invalid=%d",
            count,
            took_ms[0],
            sorted[count / 2],
            sorted[(int) (count * 0.95)],
            growth_MB,
            invalid);
    if (Integer.getInteger("documents.count") != null) {
      System.out.println(figures);
    }
    assertEquals(0, invalid);
  }

  /** Makes one document. */
  private interface Making {
    Path make() throws Exception;
  }

  private List<Making> makings() {
    List<Capture> captures =
        List.of(Waves.good(), Waves.weak(), Waves.marginal(), Waves.hiccup(), Waves.sagging());
    List<Dossier> tested =
        IntStream.range(0, captures.size())
            .mapToObj(i -> run("a" + i, captures.get(i), Purpose.ARRIVAL))
            .map(run -> Dossiers.of(List.of(run), Dossiers.rebuild(), List.of()))
            .toList();
    Dossier rebuilt =
        Dossiers.of(
            List.of(run("b", Waves.weak(), Purpose.ARRIVAL), run("c", Waves.good(), Purpose.SHIP)),
            Dossiers.rebuild(),
            DONE);
    List<Making> makings = new ArrayList<>();
    makings.add(() -> documents.certificate(rebuilt, folder));
    makings.add(() -> documents.warrantyReport(rebuilt, folder));
    makings.add(() -> documents.unitLabel(rebuilt, Label.WIDE, folder));
    makings.add(() -> documents.installSheet(rebuilt, folder));
    for (Dossier dossier : tested) {
      makings.add(() -> documents.testReport(dossier, folder));
      makings.add(() -> documents.letter(dossier, folder));
      makings.add(() -> documents.traveller(dossier, folder));
    }
    return makings;
  }

  private RunRecord run(String id, Capture capture, Purpose purpose) {
    return runs.run(id, "U-00418Q", capture, purpose, Source.BENCH);
  }

  private static long used() {
    Runtime runtime = Runtime.getRuntime();
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
