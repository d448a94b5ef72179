package corewright.station.web.place;

import corewright.bench.inspect.Checklist;
import corewright.bench.inspect.Inspection;
import corewright.bench.inspect.Symptom;
import corewright.bench.life.Act;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
import corewright.profiles.Grade;
import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Given;
import corewright.station.work.Inspecting;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** In which condition did it come? The checklist, as far as it is worth asking. */
public final class ConditionOf implements Place {
  private static final String ANSWER = "is/";

  private final House house;
  private final Pages pages;
  private final Drafts drafts;

  ConditionOf(House house, Pages pages, Drafts drafts) {
    this.house = house;
    this.pages = pages;
    this.drafts = drafts;
  }

  /**
   * The checklist of a unit.
   *
   * @param groups lines by where they are looked at
   * @param grade what the answers make of it, a sentence
   * @param proposed the grade to take; empty where nothing was answered or it was taken
   * @param blocking what forbids power, each a clause
   * @param open how many lines are not answered
   */
  public record Model(
      Unit unit,
      Map<String, List<Line>> groups,
      List<String> reported,
      String grade,
      String proposed,
      List<String> blocking,
      int open,
      boolean another) {}

  /**
   * One question.
   *
   * @param said the answer; empty where it was not answered
   * @param told what the answer means, where it is remarkable
   */
  public record Line(String id, String question, List<String> answers, String said, String told) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/build/{tag}/condition", this::show);
    routes.post("/build/{tag}/condition", this::keep);
    routes.post("/build/{tag}/grade", this::grade);
  }

  private void show(Context context) {
    String tag = context.pathParam("tag");
    Inspecting.Result result = house.workshop().inspecting().of(tag);
    Family family = house.workshop().catalogue().family(result.dossier().core().family());
    Typed typed = new Typed(drafts.of(Visitor.of(context).name(), "condition-" + tag));
    Inspection seen = result.inspection();
    Unit unit = Unit.of(house.workshop(), result.dossier());
    String proposed =
        seen.grade().map(Grade::name).filter(g -> !g.equals(unit.standing().grade())).orElse("");
    pages.show(
        context,
        PlaceName.WHICH_BUILD,
        "condition.jte",
        Map.of(
            "model",
            new Model(
                unit,
                groups(family, result, typed),
                result.reported(),
                seen.gradeWords(),
                proposed,
                seen.blocking(),
                seen.open().size(),
                result.other().isPresent())));
  }

  private static Map<String, List<Line>> groups(
      Family family, Inspecting.Result result, Typed typed) {
    Map<String, String> answers = new LinkedHashMap<>();
    result.dossier().answers().forEach(a -> answers.put(a.cue(), a.words()));
    Map<String, List<Line>> groups = new LinkedHashMap<>();
    for (Symptom.Kind kind : Symptom.Kind.values()) {
      add(
          groups,
          "what the customer says",
          kind.id(),
          kind.question(),
          kind.answers(),
          "",
          answers,
          typed);
    }
    for (CheckItem item :
        Checklist.asked(family, Checklist.worst(family, result.dossier().answers()))) {
      add(
          groups,
          item.group(),
          item.id(),
          item.question(),
          item.answers(),
          item.meaning(),
          answers,
          typed);
      String said = answers.getOrDefault(item.id(), "");
      if (item.perPin() && !said.isEmpty() && !said.equals(item.unremarkable())) {
        for (Family.Pin pin : family.pins()) {
          add(
              groups,
              item.group(),
              item.id() + Checklist.PIN + pin.pin(),
              "Pin " + pin.pin() + ", " + pin.carries() + "?",
              item.answers(),
              "",
              answers,
              typed);
        }
      }
    }
    return groups;
  }

  private static void add(
      Map<String, List<Line>> groups,
      String group,
      String id,
      String question,
      List<String> possible,
      String meaning,
      Map<String, String> answers,
      Typed typed) {
    String kept = answers.getOrDefault(id, "");
    String said = typed.or(ANSWER + id, kept);
    boolean remarkable = !kept.isEmpty() && !possible.get(0).equals(kept);
    groups
        .computeIfAbsent(group, g -> new ArrayList<>())
        .add(new Line(id, question, possible, said, remarkable ? meaning : ""));
  }

  /** Only what is new or another than before is written down. */
  private void keep(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    String tag = context.pathParam("tag");
    Typed typed = Typed.of(context);
    Inspecting.Result before = house.workshop().inspecting().of(tag);
    Family family = house.workshop().catalogue().family(before.dossier().core().family());
    Map<String, Given> fresh = new LinkedHashMap<>();
    for (List<Line> lines : groups(family, before, new Typed(Map.of())).values()) {
      for (Line line : lines) {
        String said = typed.of(ANSWER + line.id());
        if (!said.isEmpty() && !said.equals(line.said())) {
          if (!line.answers().contains(said)) {
            throw new Refused(
                "'" + said + "' is no answer to '" + line.id() + "'",
                "Possible are " + String.join(", ", line.answers()) + ".");
          }
          fresh.put(line.id(), new Given(said, "", Optional.empty()));
        }
      }
    }
    house.workshop().looking().save(tag, fresh, visitor.name());
    drafts.done(visitor.name(), "condition-" + tag);
    int open = house.workshop().inspecting().of(tag).inspection().open().size();
    pages.notice(
        context,
        fresh.size()
            + (fresh.size() == 1 ? " answer" : " answers")
            + " written down. "
            + (open == 0 ? "Nothing is open." : open + " more to look at."));
    Answers.go(context, "/build/" + tag + "/condition");
  }

  private void grade(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    String tag = context.pathParam("tag");
    Typed typed = Typed.of(context);
    Grade grade =
        typed
            .perhaps("grade")
            .map(Grade::valueOf)
            .orElseThrow(() -> new Refused("No grade was chosen", "Choose A to X."));
    String why = typed.or("why", house.workshop().inspecting().of(tag).inspection().gradeWords());
    house.workshop().ledger().lives().grade(tag, grade, why, visitor.name());
    pages.notice(context, "Grade " + grade + " is on record.");
    Answers.go(context, "/build/" + tag + "/condition");
  }
}
