package corewright.reports.document;

import corewright.bench.record.EquipmentUsed;
import corewright.bench.record.RunRecord;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** What the page does not claim, what it was held against, and how to object. */
final class FootPart {
  private final Page page;
  private final Markup m;

  FootPart(Page page) {
    this.page = page;
    this.m = page.markup();
  }

  Element foot() {
    Element foot = m.tag("div.foot");
    page.run().ifPresent(run -> foot.appendChild(m.tag("p", heldAgainst(run))));
    page.run()
        .filter(run -> !run.equipment().isEmpty())
        .ifPresent(run -> foot.appendChild(m.tag("p", page.say("foot.equipment", equipment(run)))));
    foot.appendChild(
        m.tag("p", page.say("foot.claims"), " ", page.foreign(page.shop().complaints(), 140)));
    if (!page.head().isEmpty() && !page.specimen()) {
      foot.appendChild(m.tag("p", page.say("foot.head", page.whole(page.head()))));
    }
    if (page.clean().replaced()) {
      foot.appendChild(m.tag("p", page.say("foot.replaced")));
    }
    return foot;
  }

  private String heldAgainst(RunRecord run) {
    return page.say(
            "foot.against",
            page.foreign(run.profileId(), 30),
            run.profileRevision(),
            hash(run.profile().sha256()),
            hash(run.family().sha256()),
            page.foreign(run.bench(), 24),
            page.foreign(run.operator(), 30),
            page.day(run.started()),
            page.foreign(run.software(), 40))
        + (run.captureSha256().isEmpty()
            ? ""
            : " " + page.say("foot.curves", hash(run.captureSha256())))
        + caseTemperature(run);
  }

  /** How hot the case was at most; said too where it was not measured. */
  private String caseTemperature(RunRecord run) {
    List<Reading> hottest =
        run.measured().stream()
            .flatMap(m -> m.holds().stream())
            .flatMap(h -> Optional.ofNullable(h.readings().get(Quantity.CASE_HIGHEST)).stream())
            .toList();
    if (hottest.isEmpty()) {
      return ""; // nobody could have measured it
    }
    return hottest.stream()
        .flatMap(r -> r.measurement().stream())
        .max(Comparator.comparingDouble(Measurement::value))
        .map(m -> " " + page.say("foot.case", page.withU(m)))
        .orElse(" " + page.say("foot.case.none"));
  }

  /** Each instrument once; several roles of one calibration share its mention. */
  private String equipment(RunRecord run) {
    Map<String, List<String>> roles = new LinkedHashMap<>();
    for (EquipmentUsed used : run.equipment()) {
      String named = page.foreign(used.role(), 20) + " " + page.foreign(used.identity(), 36);
      roles.computeIfAbsent(used.calibration(), c -> new ArrayList<>()).add(named);
    }
    return roles.entrySet().stream()
        .map(e -> String.join(", ", e.getValue()) + " (" + page.foreign(e.getKey(), 40) + ")")
        .collect(Collectors.joining("; "));
  }

  private static String hash(String sha256) {
    return sha256.length() < 8 ? sha256 : sha256.substring(0, 8);
  }
}
