package corewright.bench.run;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.CaptureHeader;
import corewright.bench.capture.OpenRun;
import corewright.bench.capture.OpenRuns;
import corewright.bench.capture.RawWriter;
import corewright.bench.capture.StoredCapture;
import corewright.measures.Capture;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.SupplyFeed;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a run writes: that it was begun, its samples as they arrive, its sealed capture. */
final class Recording implements AutoCloseable {
  private final RunPlan plan;
  private final OpenRuns.Running running;

  private Recording(RunPlan plan, OpenRuns.Running running) {
    this.plan = plan;
    this.running = running;
  }

  /** Remembers the run on disk, before anything is energised. */
  static Recording begin(RunPlan plan, Instant started) {
    Map<String, String> notes =
        Map.of(
            "tag", plan.tag(),
            "family", plan.family().id(),
            "profile", plan.profile().id(),
            "bench", plan.bench().id(),
            "operator", plan.operator(),
            "started", started.toString());
    OpenRun run = new OpenRun(plan.runId(), plan.folder(), new TreeMap<>(notes));
    return new Recording(plan, OpenRuns.begin(run));
  }

  OpenRun run() {
    return running.run();
  }

  /** Begins the raw file. Its header says nothing that differs between two runs of one seed. */
  RawWriter raw(BenchInstruments bench, Framing framing) {
    Map<String, String> notes =
        Map.of(
            "unit", plan.tag(),
            "family", plan.family().id() + " revision " + plan.family().revision(),
            "profile", plan.profile().id() + " revision " + plan.profile().revision());
    CaptureHeader header =
        new CaptureHeader(
            framing.rate_Hz(),
            bench.digitizer().channels(),
            plan.profile().feeds().stream().map(SupplyFeed::name).toList(),
            new TreeMap<>(notes));
    return RawWriter.create(run().raw(), header);
  }

  /**
   * A sealed capture.
   *
   * @param steps what was read in the steps that are no holds
   */
  record Sealed(Path file, String sha256, Optional<Capture> holds, Map<Quantity, Reading> steps) {}

  /**
   * Seals the raw file.
   *
   * @param open what this bench could not do
   */
  Sealed seal(LeftOpen open) {
    StoredCapture capture = CaptureFile.read(run().raw());
    String sha256 = CaptureFile.seal(capture, run().sealed());
    return new Sealed(
        run().sealed(), sha256, capture.holds(), StepReadings.of(capture, plan, open));
  }

  @Override
  public void close() {
    running.close();
  }
}
