package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.judge.BenchStudy;
import corewright.bench.judge.BenchStudy.OfReading;
import corewright.measures.control.GaugeStudy;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** A bench's study of repeats and people, for people and as JSON. */
final class StudyWords {
  /** More kinds than this nobody needs to tell apart. */
  private static final int MANY = 1000;

  private StudyWords() {}

  static void print(List<BenchStudy> studies, PrintWriter out) {
    if (studies.isEmpty()) {
      out.println("Nothing to study: name two reference units of one family in the bench's file.");
    }
    for (BenchStudy study : studies) {
      out.println("Study by profile " + study.profile() + ", standard deviations:");
      study.missing().forEach(m -> out.println("  " + m));
      if (study.missing().isEmpty()) {
        out.println(
            "  "
                + String.join(" and ", study.tags())
                + ", each run "
                + study.times()
                + " times by "
                + String.join(" and ", study.people()));
        study.readings().forEach(r -> out.println("  " + words(r)));
        out.println(
            "  The measuring as a share of all that is seen: below 10 % good, above 30 % not"
                + " acceptable.");
      }
    }
  }

  private static String words(OfReading r) {
    GaugeStudy s = r.study();
    String unit = " " + r.unit().symbol();
    return r.title()
        + ": one person again "
        + number(s.equipment())
        + unit
        + ", between people "
        + number(s.appraisers())
        + unit
        + ", between units "
        + number(s.parts())
        + unit
        + (s.total() > 0
            ? String.format(Locale.ROOT, "; the measuring is %.1f %%", s.measuringPercent())
                + ", and "
                + (s.distinctCategories() > MANY ? "very many" : s.distinctCategories())
                + " kinds of units are told apart (5 wanted)"
            : "; nothing differs at all")
        + ".";
  }

  private static String number(double sd) {
    return String.format(Locale.ROOT, "%.2g", sd);
  }

  static ArrayNode json(List<BenchStudy> studies) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (BenchStudy study : studies) {
      ObjectNode json = list.addObject();
      json.put("profile", study.profile()).put("times", study.times());
      study.people().forEach(json.putArray("people")::add);
      study.tags().forEach(json.putArray("units")::add);
      study.missing().forEach(json.putArray("missing")::add);
      ArrayNode readings = json.putArray("readings");
      for (OfReading r : study.readings()) {
        readings
            .addObject()
            .put("id", r.id())
            .put("unit", r.unit().symbol())
            .put("equipment", r.study().equipment())
            .put("appraisers", r.study().appraisers())
            .put("parts", r.study().parts());
      }
    }
    return list;
  }
}
