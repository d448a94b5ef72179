package corewright.station.web.place;

import corewright.bench.life.Act;
import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.document.Label;
import corewright.reports.ledger.Step;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.When;
import corewright.station.web.did.Purposes;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Paperwork;
import corewright.station.work.Refused;
import corewright.station.work.Releasing;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What leaves with it? The seal, the papers, and the way out. */
public final class HandOver implements Place {
  private static final Map<Stage, String> WAIT = new LinkedHashMap<>();
  private static final Map<String, Paperwork> PAPERS = new LinkedHashMap<>();

  static {
    WAIT.put(Stage.PROVEN, "Seal it");
    WAIT.put(Stage.SEALED, "Hand it over");
    WAIT.put(Stage.PACKED, "Ship it");
    WAIT.put(Stage.TO_RETURN, "Give it back");
    WAIT.put(Stage.TO_REPLACE, "Replace it");
    PAPERS.put("certificate", Paperwork.CERTIFICATE);
    PAPERS.put("letter", Paperwork.LETTER);
    PAPERS.put("label", Paperwork.unitLabel(Label.WIDE));
    PAPERS.put("fitting sheet", Paperwork.INSTALL_SHEET);
    PAPERS.put("sheet for its hidden mark", Paperwork.MARK_SHEET);
  }

  private final House house;
  private final Pages pages;

  HandOver(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
  }

  /**
   * What can be done with a unit that leaves.
   *
   * @param test the last test in words; empty without one
   * @param emulated whether it was made on an emulated bench: then there are specimens only
   * @param covered whether a warranty begins when it leaves as it stands
   * @param number of the seal that was scanned; empty otherwise
   * @param papers kinds that can be written
   * @param written documents that lie in the folder for this visit, by name
   */
  public record Model(
      Unit unit,
      String verdict,
      String test,
      boolean emulated,
      boolean covered,
      String number,
      List<String> papers,
      List<Written> written,
      Ways ways) {}

  /**
   * A document that was written on this visit.
   *
   * @param words which one it is, as {@code test report}
   */
  public record Written(String name, String words) {
    static Written of(String name) {
      return new Written(
          name, name.replaceFirst("^.*-visit-\\d+-", "").replace(".pdf", "").replace('-', ' '));
    }
  }

  /** Which ways out its stage allows. */
  public record Ways(
      boolean seal,
      boolean pack,
      boolean ship,
      boolean stock,
      boolean harvest,
      boolean scrap,
      boolean back) {
    static Ways of(Life life) {
      return new Ways(
          life.after(Act.SEAL).isPresent(),
          life.after(Act.PACK).isPresent(),
          life.after(Act.SHIP).isPresent() || life.after(Act.PACK).isPresent(),
          life.after(Act.STOCK).isPresent(),
          life.after(Act.HARVEST).isPresent(),
          life.after(Act.SCRAP).isPresent(),
          life.after(Act.STEP_BACK).isPresent());
    }
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get(
        "/handover", c -> Queue.show(c, house, pages, PlaceName.HAND_OVER, "Hand over", WAIT));
    routes.get("/handover/{tag}", this::show);
    routes.post("/handover/{tag}/seal", this::seal);
    routes.post("/handover/{tag}/paper", this::paper);
    routes.post("/handover/{tag}/ship", this::ship);
    routes.post("/handover/{tag}/move", this::move);
  }

  private void show(Context context) {
    Dossier dossier = house.workshop().ledger().dossier(context.pathParam("tag"));
    Unit unit = Unit.of(house.workshop(), dossier);
    RunRecord last = dossier.runs().stream().reduce((a, b) -> b).orElse(null);
    pages.show(
        context,
        PlaceName.HAND_OVER,
        "handover.jte",
        Map.of(
            "model",
            new Model(
                unit,
                last == null ? "" : last.judgement().verdict().map(Enum::name).orElse(""),
                last == null ? "" : words(last),
                last != null && last.source() == corewright.bench.record.Source.EMULATED,
                Releasing.covers(dossier, unit.standing().life()),
                Objects.requireNonNullElse(context.queryParam("seal"), ""),
                List.copyOf(PAPERS.keySet()),
                Papers.of(house, unit.tag(), dossier.visit()).stream().map(Written::of).toList(),
                Ways.of(unit.standing().life()))));
  }

  private static String words(RunRecord run) {
    return Purposes.words(run.purpose()) + ", " + run.bench() + ", " + run.profileId();
  }

  private void seal(Context context) {
    Typed typed = Typed.of(context);
    take(
        context,
        new Step.Sealing(typed.of("number"), typed.of("mark")),
        "Sealed with " + typed.of("number") + ".");
  }

  private void paper(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.PACK);
    String kind = Typed.of(context).of("kind");
    Paperwork paper = PAPERS.get(kind);
    if (paper == null) {
      throw new Refused(
          "No paper is called '" + kind + "'",
          "Choose " + String.join(", ", PAPERS.keySet()) + ".");
    }
    Answers.go(
        context,
        Papers.href(
            house.workshop().publishing().write(paper, context.pathParam("tag"), visitor.name())));
  }

  private void ship(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.SHIP);
    Typed typed = Typed.of(context);
    String tag = context.pathParam("tag");
    Releasing.Released released =
        house
            .workshop()
            .releasing()
            .release(
                new Releasing.Request(
                    tag,
                    typed.or("carrier", "counter"),
                    typed.of("tracking"),
                    typed.of("serial"),
                    visitor.name()));
    String until = released.shipping().warrantyUntil();
    pages.notice(
        context,
        "It has left. "
            + (until.isEmpty()
                ? "Without a warranty: it was not rebuilt and sealed."
                : "Covered until " + When.day(until) + "."));
    Answers.go(context, "/handover/" + tag);
  }

  private void move(Context context) {
    Typed typed = Typed.of(context);
    String to = typed.of("to");
    Step step =
        switch (to) {
          case "pack" -> new Step.Plain(Act.PACK, typed.of("why"));
          case "stock" -> new Step.Plain(Act.STOCK, typed.of("why"));
          case "harvest" -> new Step.Plain(Act.HARVEST, typed.of("why"));
          case "scrap" -> new Step.Scrapping(typed.of("why"), typed.of("second"), "");
          default -> throw new Refused("Nobody said where it goes", "Choose one of the ways.");
        };
    take(context, step, "It is " + step.act().words() + ".");
  }

  private void take(Context context, Step step, String said) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(step.act());
    String tag = context.pathParam("tag");
    house.workshop().ledger().lives().take(tag, step, visitor.name());
    pages.notice(context, said);
    Answers.go(context, "/handover/" + tag);
  }
}
