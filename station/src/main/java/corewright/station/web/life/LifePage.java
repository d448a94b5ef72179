package corewright.station.web.life;

import corewright.bench.record.Core;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.reports.chart.Numerals;
import corewright.reports.ledger.Attached;
import corewright.reports.ledger.Sharing;
import corewright.station.web.Next;
import corewright.station.web.When;
import corewright.station.web.did.Purposes;
import corewright.station.work.Curves;
import corewright.station.work.Lifetimes.Lifetime;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the page of a unit shows, in words.
 *
 * @param curves how the runs stand in the picture, in the order of its lines: solid first; empty
 *     where no run left curves
 */
public record LifePage(
    String tag,
    String sentence,
    List<String> lines,
    String verdict,
    String as,
    boolean emulated,
    Scale scale,
    List<Curve> curves,
    Optional<Compared> compared,
    List<Photo> photos,
    List<Attached> files,
    List<Paper> papers,
    List<Shared> shared,
    List<Past> past,
    String question,
    Next next) {
  /** One curve: {@code style} is the line's class. */
  public record Curve(String style, String words, String run) {}

  /** A photograph by its hash. */
  public record Photo(String sha256, String shows) {}

  /** A document. */
  public record Paper(String kind, String when, String href) {}

  /** Who shares something. */
  public record Shared(String what, int count, List<String> first, String all) {}

  static LifePage of(Lifetime life, Numerals numerals, Instant now) {
    Core core = life.now().core();
    Map<String, RunRecord> runs = runs(life);
    Optional<RunRecord> latest = life.latest();
    return new LifePage(
        core.tag(),
        core.family()
            + ", "
            + life.now()
                .identification()
                .map(Identification::variant)
                .map(v -> "build " + v)
                .orElse("build not known")
            + ". "
            + (core.customer().isEmpty() ? "" : core.customer() + ". ")
            + (life.now().visit() == 1 ? "First visit" : "Visit " + life.now().visit())
            + ", "
            + life.standing().life().stage().words()
            + " since "
            + When.moment(life.standing().since())
            + ".",
        lines(life),
        latest.flatMap(r -> r.judgement().verdict()).map(Enum::name).orElse(""),
        latest.map(r -> Purposes.words(r.purpose())).orElseGet(() -> untold(life)),
        runs.values().stream().anyMatch(r -> r.source() == Source.EMULATED),
        Scale.of(life.history(), life.standing().life().stage().words(), now),
        curves(life),
        runs.isEmpty() ? Optional.empty() : Optional.of(Compared.of(runs, numerals)),
        life.files().stream()
            .filter(f -> f.kind().equals("photo"))
            .map(f -> new Photo(f.sha256(), f.note().isEmpty() ? f.name() : f.note()))
            .toList(),
        life.files().stream().filter(f -> !f.kind().equals("photo")).toList(),
        papers(life),
        life.siblings().stream().map(LifePage::shared).toList(),
        Past.of(life.history()),
        life.standing().question(),
        Next.of(core.tag(), life.standing().life().stage()));
  }

  /** A void or unfinished run says nothing of the unit, and is no test of it. */
  private static String untold(Lifetime life) {
    return life.history().stream().anyMatch(h -> h.kind().equals("run ended"))
        ? "its tests said nothing of it"
        : "not tested yet";
  }

  private static List<String> lines(Lifetime life) {
    Core core = life.now().core();
    List<String> lines = new ArrayList<>();
    lines.add("Maker's serial, as read: " + (core.serial().isEmpty() ? "none" : core.serial()));
    lines.add("Label, as read: " + (core.label().isEmpty() ? "none" : core.label()));
    if (!core.complaint().isEmpty()) {
      lines.add("Said to be wrong: " + core.complaint());
    }
    if (!life.standing().grade().isEmpty()) {
      lines.add("Condition on arrival: " + life.standing().grade());
    }
    lines.add(
        life.standing().life().safe()
            ? "Discharged and verified since it was last powered."
            : "It may hold charge: not discharged and verified since it was last powered.");
    return lines;
  }

  /** In the order of time, as the columns of the table stand. */
  private static Map<String, RunRecord> runs(Lifetime life) {
    Map<String, RunRecord> runs = new LinkedHashMap<>();
    life.received().ifPresent(r -> runs.put("received", r));
    life.left().ifPresent(r -> runs.put(hasLeft(life) ? "left us" : "before shipping", r));
    life.returned().ifPresent(r -> runs.put("returned", r));
    return runs;
  }

  private static boolean hasLeft(Lifetime life) {
    return life.history().stream().anyMatch(h -> h.kind().equals("shipped"));
  }

  /** The runs of the picture, in the order in which it draws them. */
  static List<RunRecord> drawn(Lifetime life) {
    Optional<RunRecord> front = life.left().or(life::returned).or(life::received);
    List<RunRecord> drawn = new ArrayList<>();
    front.ifPresent(drawn::add);
    List.of(life.received(), life.returned())
        .forEach(r -> r.filter(run -> !drawn.contains(run)).ifPresent(drawn::add));
    drawn.removeIf(r -> !Curves.drawable(r));
    return drawn;
  }

  private static List<Curve> curves(Lifetime life) {
    List<String> styles = List.of("out", "out old", "out ret");
    List<RunRecord> drawn = drawn(life);
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      curves.add(new Curve(styles.get(i), words(life, drawn.get(i)), drawn.get(i).id()));
    }
    return curves;
  }

  private static String words(Lifetime life, RunRecord run) {
    return runs(life).entrySet().stream()
        .filter(e -> e.getValue().equals(run))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("");
  }

  private static List<Paper> papers(Lifetime life) {
    Map<String, Paper> papers = new LinkedHashMap<>();
    life.history().stream()
        .filter(h -> h.kind().equals("documented"))
        .forEach(
            h -> {
              String name =
                  String.valueOf(Path.of(h.body().path("path").asText("-")).getFileName());
              papers.put(
                  name,
                  new Paper(
                      h.body().path("kind").asText(""), When.moment(h.at()), "/papers/" + name));
            });
    return List.copyOf(papers.values());
  }

  private static Shared shared(Sharing who) {
    String what = who.what();
    String all =
        what.startsWith("lot ")
            ? "/shop/find?lot=" + URLEncoder.encode(what.substring(4), StandardCharsets.UTF_8)
            : "";
    return new Shared(what, who.count(), who.first(), all);
  }
}
