package corewright.station.web.live;

import corewright.bench.life.Act;
import corewright.bench.record.Dossier;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.web.Drafts;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.HandEntry;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Beside a bench: what it cannot do and somebody has read elsewhere, before the run takes it. */
final class HandPlace implements Place {
  private final Pages pages;
  private final Benches benches;
  private final Drafts drafts;
  private final HandKept kept;

  HandPlace(Pages pages, Benches benches, Drafts drafts, HandKept kept) {
    this.pages = pages;
    this.benches = benches;
    this.drafts = drafts;
    this.kept = kept;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/bench/{id}/hand", this::show);
    routes.post("/bench/{id}/hand", this::keep);
  }

  /** The unit and the profile that this person has chosen for the bench. */
  private void show(Context context) {
    LiveBench bench = benches.at(context);
    Visitor visitor = Visitor.of(context);
    String tag = bench.preparations().of(visitor.name()).tag();
    if (tag.isEmpty()) {
      throw new Refused(
          "No unit is chosen for " + bench.id(), "Scan its tag on the bench's page first.");
    }
    Dossier dossier = bench.workshop().ledger().dossier(tag);
    Profile profile = new Readying(bench, visitor, kept).profile(dossier);
    if (bench.byHand(profile).isEmpty()) {
      throw new Refused(
          profile.title() + " has no step that is read by hand", "Choose another profile.");
    }
    String draft = HandKept.name(bench, dossier, profile);
    pages.show(
        context,
        PlaceName.BENCH,
        "hand.jte",
        Map.of(
            "page",
            HandPage.of(
                bench,
                tag,
                profile,
                draft,
                kept.of(bench, dossier, profile),
                drafts.of(visitor.name(), draft))));
  }

  /** All of it or nothing: a form of which half was taken would have to be read again. */
  private void keep(Context context) {
    LiveBench bench = benches.at(context);
    Visitor visitor = Visitor.of(context);
    if (!bench.isForPractice()) {
      visitor.mustBeAllowed(Act.TEST);
    }
    String tag = field(context, "tag");
    if (!bench.workshop().ledger().knows(tag)) {
      throw new Refused("No unit has the tag " + tag, "Scan it on the bench's page.");
    }
    Dossier dossier = bench.workshop().ledger().dossier(tag);
    String id = field(context, "profile");
    if (!bench.workshop().catalogue().profileIds(dossier.core().family()).contains(id)) {
      throw new Refused(
          "No profile of this unit is called " + id, "Choose it on the bench's page.");
    }
    Profile profile = bench.workshop().catalogue().profile(id);
    Map<String, HandKept.Entry> entries =
        entries(context, bench.byHand(profile), kept.of(bench, dossier, profile));
    kept.keep(bench, dossier, profile, entries);
    drafts.done(visitor.name(), HandKept.name(bench, dossier, profile));
    pages.notice(context, HandKept.words(entries.size(), bench.byHand(profile).size()));
    Answers.go(context, "/bench/" + bench.id());
  }

  private Map<String, HandKept.Entry> entries(
      Context context, List<Step> steps, Map<String, HandKept.Entry> before) {
    Instant now = benches.clock().wall();
    Map<String, HandKept.Entry> entries = new LinkedHashMap<>();
    Set<String> wrong = new LinkedHashSet<>();
    Set<String> remedies = new LinkedHashSet<>();
    for (Step step : steps) {
      HandKept.Entry typed = typed(context, step, now);
      HandKept.Entry old = before.get(step.id());
      boolean unseen = old != null && !field(context, step.id() + "/seen").equals("" + old.at());
      if (typed.value().isEmpty() && typed.expanded().isEmpty() && typed.instrument().isEmpty()) {
        if (old != null && unseen) {
          entries.put(step.id(), old); // nobody empties what they have not seen
        }
        continue;
      }
      if (old != null && unseen && !old.says(typed)) {
        wrong.add(HandEntry.quantity(step).title() + ": " + old.by() + " has entered it meanwhile");
        remedies.add("Open the page anew, and look at both.");
      }
      try {
        HandEntry.of(
            step, typed.value(), typed.expanded(), typed.unit(), typed.instrument(), typed.by());
      } catch (Refused refused) {
        wrong.add(refused.getMessage());
        remedies.add(refused.remedy());
      }
      entries.put(step.id(), old != null && old.says(typed) ? old : typed);
    }
    if (!wrong.isEmpty()) {
      throw new Refused(String.join("; ", wrong), String.join(" ", remedies));
    }
    return entries;
  }

  private static HandKept.Entry typed(Context context, Step step, Instant now) {
    return new HandKept.Entry(
        field(context, step.id() + "/value"),
        field(context, step.id() + "/expanded"),
        field(context, step.id() + "/unit"),
        field(context, step.id() + "/instrument"),
        Visitor.of(context).name(),
        now);
  }

  private static String field(Context context, String name) {
    return Objects.requireNonNullElse(context.formParam(name), "").strip();
  }
}
