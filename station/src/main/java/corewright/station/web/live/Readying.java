package corewright.station.web.live;

import corewright.bench.life.Act;
import corewright.bench.life.Stage;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.run.GuardFinding;
import corewright.bench.run.Guards;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.ledger.Standing;
import corewright.station.web.door.Visitor;
import corewright.station.web.live.Preparations.Prepared;
import corewright.station.web.live.Ready.Choice;
import corewright.station.work.Cautions;
import corewright.station.work.SecondPerson;
import corewright.station.work.SignedLimits;
import corewright.station.work.Testing;
import corewright.station.work.Workshop;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Puts together what a bench's page shows before the start. */
final class Readying {
  /** Stages at which a unit waits for a bench, the ones that need it first. */
  private static final List<Stage> WAITING =
      List.of(
          Stage.IDENTIFIED,
          Stage.CLOSED,
          Stage.RECEIVED,
          Stage.TESTED,
          Stage.PENDING,
          Stage.TO_REBUILD,
          Stage.TO_REPLACE,
          Stage.TO_RETURN,
          Stage.PROVEN);

  private static final int MOST_UNITS = 12;

  private final LiveBench bench;
  private final Workshop shop;
  private final Visitor visitor;
  private final HandKept kept;
  private final Prepared prepared;
  private final Instant now;

  Readying(LiveBench bench, Visitor visitor, HandKept kept) {
    this.kept = kept;
    this.bench = bench;
    this.shop = bench.workshop();
    this.visitor = visitor;
    this.prepared = bench.preparations().of(visitor.name());
    this.now = bench.now();
  }

  /** The page's content. */
  Ready now() {
    return prepared.tag().isEmpty() ? empty() : chosen();
  }

  private Ready empty() {
    return new Ready(
        bench.id(),
        bench.title(),
        bench.emulated(),
        "",
        "",
        units(),
        List.of(),
        "",
        List.of(),
        false,
        false,
        false,
        "",
        false,
        false,
        "",
        List.of(new GuardRow("Unit", "None is chosen. Scan its tag, or choose one that waits.")),
        List.of(),
        List.of(),
        told(),
        false);
  }

  private Ready chosen() {
    Dossier dossier = shop.ledger().dossier(prepared.tag());
    Catalogue catalogue = shop.catalogue();
    Family family = catalogue.family(dossier.core().family());
    Profile profile = profile(dossier);
    List<GuardFinding> asked = shop.testing().beforehand(request(profile), bench.emulated());
    List<GuardRow> missing = rows(asked, false);
    if (!bench.elsewhere().isEmpty()) {
      missing.add(new GuardRow("Bench", bench.elsewhere() + " " + Ready.AGAIN));
    }
    if (!bench.isForPractice() && !visitor.role().may(Act.TEST)) {
      missing.add(
          new GuardRow(
              "Driver", visitor.name() + " is " + visitor.roleWords() + ". Ask a technician."));
    }
    return new Ready(
        bench.id(),
        bench.title(),
        bench.emulated(),
        prepared.tag(),
        words(dossier, profile),
        units(),
        profiles(family, profile),
        PlanJson.of(new Course(family, profile, bench.description().channels())),
        Cautions.of(family),
        prepared.cautions(),
        family.needsSecondPerson(),
        bench.asksForPasswords(),
        prepared.second(),
        prepared.present(now).filter(SecondPerson::proved).isPresent(),
        prepared.wireLog(),
        HandKept.words(kept.of(bench, dossier, profile).size(), bench.byHand(profile).size()),
        missing,
        rows(asked, true),
        Guards.atTheStart().stream().map(this::later).toList(),
        Stream.of(unsigned(family, profile), leftOut(profile), told().stream())
            .flatMap(s -> s)
            .toList(),
        missing.isEmpty());
  }

  /** What this person's start would ask for. */
  Testing.Request request(Profile profile) {
    return new Testing.Request(
        prepared.tag(),
        profile.id(),
        bench.description(),
        visitor.name(),
        prepared.cautions(),
        prepared.present(now));
  }

  /**
   * The profile that was chosen, or the shortest that the unit's stage asks for: the whole sequence
   * is for whoever asks for it.
   */
  Profile profile(Dossier dossier) {
    Family family = shop.catalogue().family(dossier.core().family());
    List<String> ids = shop.catalogue().profileIds(family.id());
    if (ids.contains(prepared.profile())) {
      return shop.catalogue().profile(prepared.profile());
    }
    List<Profile> all = ids.stream().map(shop.catalogue()::profile).toList();
    Stage stage = shop.ledger().lives().standing(prepared.tag()).life().stage();
    Profile.Purpose wanted =
        stage == Stage.CLOSED || stage == Stage.PROVEN
            ? Profile.Purpose.SHIP
            : dossier.visit() > 1 ? Profile.Purpose.CLAIM : Profile.Purpose.ARRIVAL;
    return all.stream()
        .filter(p -> p.purpose() == wanted)
        .min(Comparator.comparingInt(p -> p.steps().size()))
        .orElseGet(() -> shop.catalogue().defaultProfile(family));
  }

  private List<Choice> profiles(Family family, Profile chosen) {
    return shop.catalogue().profileIds(family.id()).stream()
        .map(shop.catalogue()::profile)
        .map(p -> new Choice(p.id(), p.title(), p.id().equals(chosen.id())))
        .toList();
  }

  private List<Choice> units() {
    List<Choice> units = new ArrayList<>();
    for (Stage stage : WAITING) {
      for (Standing s : shop.ledger().lives().at(stage)) {
        String family = shop.ledger().dossier(s.tag()).core().family();
        if (units.size() < MOST_UNITS
            && bench.description().fixture().families().contains(family)) {
          units.add(
              new Choice(s.tag(), family + ", " + stage.words(), s.tag().equals(prepared.tag())));
        }
      }
    }
    return units;
  }

  private String words(Dossier dossier, Profile profile) {
    String build =
        dossier
            .identification()
            .map(i -> i.variant())
            .filter(v -> !v.isEmpty())
            .map(v -> ", build " + v)
            .orElse("");
    Course course =
        new Course(
            shop.catalogue().family(profile.family()), profile, bench.description().channels());
    double all_s = profile.steps().stream().mapToDouble(course::usual_s).sum();
    return String.format(
        Locale.ROOT,
        "%s%s, in fixture %s. %s, %d steps, about %s.",
        dossier.core().family(),
        build,
        bench.description().fixture().id(),
        profile.title(),
        profile.steps().size(),
        all_s < 90
            ? String.format(Locale.ROOT, "%.0f s", all_s)
            : String.format(Locale.ROOT, "%.0f min", all_s / 60));
  }

  private List<GuardRow> rows(List<GuardFinding> findings, boolean passed) {
    List<GuardRow> rows = new ArrayList<>();
    findings.stream().filter(f -> f.passed() == passed).map(GuardRow::of).forEach(rows::add);
    return rows;
  }

  private GuardRow later(String id) {
    return new GuardRow(
        GuardWords.of(id),
        bench
            .run()
            .flatMap(
                r ->
                    r.guards().stream()
                        .filter(g -> g.guard().equals(id) && !g.passed())
                        .findFirst())
            .map(g -> "last time: " + g.saw() + " " + g.remedy())
            .orElse("asked when the bench is opened"));
  }

  /** Limits that certify nothing are better known of before the test than after it. */
  private Stream<String> unsigned(Family family, Profile profile) {
    return shop.limits().of(family).stream()
        .filter(held -> !held.standing().answeredFor())
        .map(SignedLimits.Held::what)
        .filter(w -> w.equals("family " + family.id()) || w.equals("profile " + profile.id()))
        .map(w -> "Nobody has signed " + w + " as it stands: this run will certify nothing.");
  }

  /** What this bench cannot do and nobody can enter, before it is missed in the result. */
  private Stream<String> leftOut(Profile profile) {
    Map<String, String> left = bench.leaves(profile);
    Stream<String> inPart =
        bench.leavesInPart(profile).values().stream().flatMap(List::stream).distinct();
    return Stream.concat(inPart, whole(profile, left));
  }

  private static Stream<String> whole(Profile profile, Map<String, String> left) {
    return profile.steps().stream()
        .filter(step -> left.containsKey(step.id()) && step.byHand().isEmpty())
        .map(
            step ->
                "Not measured here: "
                    + step.title()
                    + ", because "
                    + left.getOrDefault(step.id(), "")
                    + ".");
  }

  /** What is to be known of this bench: what died here, how the last run ended. */
  private List<String> told() {
    List<String> told = new ArrayList<>(bench.left());
    bench
        .run()
        .filter(LiveRun::isOver)
        .ifPresent(
            r -> {
              String how = r.record().map(RunRecord::end).map(e -> e.saw()).orElse("");
              told.add(
                  "The last run here, of "
                      + r.start().tag()
                      + ": "
                      + (r.failure().isEmpty() ? how : r.failure())
                      + r.wire().map(file -> " Its wire log is " + file + ".").orElse(""));
            });
    return told;
  }
}
