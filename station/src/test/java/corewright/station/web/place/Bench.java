package corewright.station.web.place;

import corewright.bench.record.Judgement;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.station.web.Visit;
import corewright.station.work.Importing;
import corewright.station.work.RunIds;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** What a bench would have written down, for the places that come after it. */
public final class Bench {
  private Bench() {}

  /** A unit of ref48 fails: its record is the fixtures' capture of an early current limit. */
  static void fails(Path shop, String tag, String who, int seed) {
    Path record =
        Path.of(System.getProperty("corewright.home"), "fixtures", "captures", "ilim_low_avg");
    try (Workshop workshop = Visit.workshop(shop)) {
      RunRecord run =
          workshop
              .importing()
              .take(
                  new Importing.Request(
                      tag,
                      record.resolve("capture.csv.gz"),
                      Optional.empty(),
                      Optional.empty(),
                      Optional.empty(),
                      Optional.empty(),
                      who),
                  new RunIds("import", new SplittableRandom(seed)));
      workshop.conclude(run, who);
    }
  }

  /** The same unit passes its final test, on a bench or on an emulated one. */
  public static void passes(Path shop, String tag, Source source) {
    try (Workshop workshop = Visit.workshop(shop)) {
      RunRecord r = workshop.ledger().dossier(tag).runs().get(0);
      workshop
          .ledger()
          .runEnded(
              new RunRecord(
                  r.id() + "-ship-" + source,
                  tag,
                  "ship",
                  1,
                  source,
                  r.started(),
                  r.ended(),
                  r.operator(),
                  "bench-1",
                  "",
                  r.profileId(),
                  r.profileRevision(),
                  r.profile(),
                  r.family(),
                  Optional.empty(),
                  r.equipment(),
                  r.software(),
                  r.capture(),
                  r.captureSha256(),
                  r.end(),
                  List.of(),
                  r.measured(),
                  new Judgement(
                      Optional.of(Verdict.PASS),
                      r.judgement().qualifier(),
                      r.judgement().decisionRule(),
                      r.judgement().findings(),
                      List.of())));
    }
  }
}
