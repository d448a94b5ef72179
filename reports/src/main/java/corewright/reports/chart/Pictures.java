package corewright.reports.chart;

import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes pictures of runs, for documents and for files. */
public final class Pictures {
  private final Evidence evidence;
  private final Locale locale;

  public Pictures(Evidence evidence, Locale locale) {
    this.evidence = evidence;
    this.locale = locale;
  }

  /** The picture of one run; empty where its curves were not kept. */
  public Optional<Picture> of(RunRecord run) {
    return new Scenes(evidence, locale).whole(run).map(scene -> new Picture(scene, locale));
  }

  /** The headline hold of one run with that of an earlier run behind it, dashed. */
  public Optional<Picture> of(RunRecord left, RunRecord arrived) {
    return of(left, List.of(arrived));
  }

  /** The same with two others: the first dashed, the second dotted. */
  public Optional<Picture> of(RunRecord front, List<RunRecord> others) {
    return new Scenes(evidence, locale)
        .overlay(front, others)
        .map(scene -> new Picture(scene, locale));
  }
}
