package corewright.reports;

import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Disposition;
import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.Finding;
import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Identification;
import corewright.bench.record.Judgement;
import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.files.Origin;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import corewright.reports.ledger.RunBegun;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Records of an invented shop, for tests of everything that is made from records. */
public final class Samples {
  public static final Instant MORNING = Instant.parse("2026-11-26T08:15:30.250Z");
  public static final Limit OUTPUT_FULL =
      new Limit(
          "output-full",
          Quantity.OUTPUT,
          Limit.Side.AT_LEAST,
          46.5,
          45.0,
          1.9,
          Double.POSITIVE_INFINITY,
          true,
          "the lower tolerance limit after set-point spread");

  private Samples() {}

  public static Core core(String tag, String serial) {
    return new Core(
        tag,
        "sd48",
        serial,
        "SD 12/48 0698-B",
        "Orrel Plant Hire",
        "repair",
        "will not start when cold",
        MORNING,
        "H. Oduya");
  }

  public static Core coreOf(String customer, String tag, String serial) {
    Core core = core(tag, serial);
    return new Core(
        tag,
        core.family(),
        serial,
        core.label(),
        customer,
        core.mode(),
        core.complaint(),
        core.received(),
        core.receivedBy());
  }

  public static List<CueAnswer> answers() {
    return List.of(
        new CueAnswer("bosses", "6", "H. Oduya", MORNING.plusSeconds(60)),
        new CueAnswer("connector", "two rows, grey", "H. Oduya", MORNING.plusSeconds(75)));
  }

  public static Identification identification() {
    return new Identification(
        "sd48",
        3,
        "A2",
        0.972,
        Identification.Band.IDENTIFIED,
        "A1",
        0.021,
        Map.of("A1", 0.021, "A2", 0.972, "A3", 0.007),
        List.of("The label says A1, the mass says A2."),
        "");
  }

  public static Decision pending() {
    return new Decision(
        "D04",
        2,
        Disposition.PENDING,
        "",
        "We do not know yet which build this is.",
        List.of("The label says A1 and the housing says A3."),
        "Which group of parts is behind it is not determined.",
        Optional.of(
            new Diagnosis(
                List.of(
                    new Diagnosis.Candidate(
                        "LOOP",
                        "a control loop that hardly damps",
                        0.41,
                        List.of("it swings"),
                        List.of("the ripple is normal"),
                        "Step the load at half load.")),
                false,
                List.of("The input held."))),
        "How many rows of pins has the connector?",
        "H. Oduya",
        Optional.of(LocalDate.of(2026, 11, 30)),
        Map.of("identification", "UNCERTAIN", "grade", "B"));
  }

  /** A run whose readings cover every shape a record can take: measured, flagged, not measured. */
  public static RunRecord run(String id, String tag) {
    MeasuredHold rest =
        new MeasuredHold(
            0,
            0,
            4,
            0.5,
            3.98,
            Map.of(
                Quantity.OUTPUT, Reading.of(47.85, 0.031, Unit.VOLT),
                Quantity.LOAD, Reading.of(0.0001 / 3, 1e-3, Unit.AMPERE),
                Quantity.DROOP, Reading.none("This is the hold without load.")),
            List.of(feed(12.5, 12.41)),
            "no_edge");
    MeasuredHold full =
        new MeasuredHold(
            1,
            4,
            8,
            4.5,
            7.98,
            Map.of(
                Quantity.OUTPUT,
                new Reading.Measured(
                    new Measurement(43.12, 0.05, Unit.VOLT), List.of("The level was drifting.")),
                Quantity.LOAD,
                Reading.of(2.0, 0.004, Unit.AMPERE)),
            List.of(feed(10.3, 10.14)),
            "not_recovered");
    MeasuredRun measured =
        new MeasuredRun(
            10_000,
            80_000,
            "scatter, resolution and calibration",
            List.of(rest, full),
            Map.of(Quantity.OUTPUT_RESISTANCE, Reading.of(2.365, 0.02, Unit.OHM)),
            List.of("Nothing was loaded for the first 4 s."));
    Finding finding =
        new Finding(
            OUTPUT_FULL,
            1,
            full.value(Quantity.OUTPUT),
            Finding.Outcome.FAIL,
            Optional.of(-3.38),
            Optional.of(1e-12),
            "");
    return new RunRecord(
        id,
        tag,
        "arrival",
        1,
        Source.EMULATED,
        MORNING.plusSeconds(600),
        MORNING.plusSeconds(640),
        "H. Oduya",
        "bench-1",
        "fixture-sd48-1",
        "sd48-arrival",
        7,
        origin("profiles/families/sd48/sd48-arrival.json", "{\"id\":\"sd48-arrival\"}\n"),
        origin("profiles/families/sd48/family.json", "{\"id\":\"sd48\"}\n"),
        Optional.of(origin("fixtures/benches/emulated.json", "{\"id\":\"bench-1\"}\n")),
        List.of(new EquipmentUsed("load", "Corewright,Emulated load,0,1", "not calibrated")),
        "corewright 1.0.0",
        "captures/" + id + ".h5",
        "ab".repeat(32),
        RunEnd.completed(8),
        List.of(),
        Optional.of(measured),
        new Judgement(
            Optional.of(Verdict.FAIL),
            Optional.of(Qualifier.VALID),
            "simple acceptance",
            List.of(finding),
            List.of("The output fell to 43.12 V under 2.00 A.")));
  }

  /** The same run with another verdict. */
  public static RunRecord rejudged(RunRecord run) {
    return judged(run, Verdict.PASS, run.judgement().findings());
  }

  /** A run that found the output in the cold, and a run's usual finding, to be so. */
  public static RunRecord cold(String id, String tag, Outcome cold, Outcome usual) {
    Limit limit =
        new Limit(
            "cold",
            Quantity.COLD_OUTPUT,
            Limit.Side.AT_LEAST,
            45,
            43,
            1.9,
            Double.POSITIVE_INFINITY,
            true,
            "an invented limit");
    RunRecord run = run(id, tag);
    Finding first = run.judgement().findings().get(0);
    return judged(
        run,
        Verdict.FAIL,
        List.of(
            new Finding(
                first.limit(),
                first.hold(),
                first.measurement(),
                usual,
                first.margin(),
                first.conformity(),
                ""),
            new Finding(limit, 0, Optional.empty(), cold, Optional.empty(), Optional.empty(), "")));
  }

  private static RunRecord judged(RunRecord run, Verdict verdict, List<Finding> findings) {
    return with(
        run,
        run.purpose(),
        run.source(),
        run.profileId(),
        new Judgement(
            Optional.of(verdict),
            run.judgement().qualifier(),
            run.judgement().decisionRule(),
            findings,
            run.judgement().reasons()));
  }

  /** A final test. */
  public static RunRecord ship(String id, String tag, Verdict verdict, Source source) {
    RunRecord run = run(id, tag);
    return with(
        run,
        "ship",
        source,
        "sd48-ship",
        new Judgement(
            Optional.of(verdict), run.judgement().qualifier(), "guard band", List.of(), List.of()));
  }

  private static RunRecord with(
      RunRecord run, String purpose, Source source, String profile, Judgement judged) {
    return new RunRecord(
        run.id(),
        run.tag(),
        purpose,
        run.number(),
        source,
        run.started(),
        run.ended(),
        run.operator(),
        run.bench(),
        run.fixture(),
        profile,
        run.profileRevision(),
        run.profile(),
        run.family(),
        run.benchDescription(),
        run.equipment(),
        run.software(),
        run.capture(),
        run.captureSha256(),
        run.end(),
        run.troubles(),
        run.measured(),
        judged);
  }

  /** A decision of a person who has seen enough. */
  public static Decision rebuild() {
    return new Decision(
        "D22",
        2,
        Disposition.REBUILD,
        "queue",
        "Its construction can be rebuilt.",
        List.of("The output fell to 43.12 V under 2.00 A."),
        "",
        Optional.empty(),
        "",
        "",
        Optional.empty(),
        Map.of());
  }

  public static RunBegun begun(String id, String tag) {
    return begun(id, tag, "bench-1");
  }

  public static RunBegun begun(String id, String tag, String bench) {
    return new RunBegun(
        id,
        tag,
        "arrival",
        1,
        Source.EMULATED,
        MORNING.plusSeconds(600),
        "H. Oduya",
        bench,
        "fixture-sd48-1",
        "sd48-arrival",
        "captures/" + id); // it has its ending when it is sealed
  }

  private static FeedReadings feed(double mean_V, double lowest_V) {
    return new FeedReadings(
        "input",
        Reading.of(mean_V, 0.01, Unit.VOLT),
        Reading.of(lowest_V, 0.03, Unit.VOLT),
        Reading.of(lowest_V + 0.02, 0.02, Unit.VOLT));
  }

  private static Origin origin(String path, String text) {
    return new Origin(path, "cd".repeat(32), text);
  }
}
