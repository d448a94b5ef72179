package corewright.station.web.rules;

import corewright.bench.life.Role;
import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.fixtures.describe.Descriptions;
import corewright.measures.Figures;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.ledger.Verification;
import corewright.station.web.House;
import corewright.station.web.HouseClock;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Backup;
import corewright.station.work.Checking;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import corewright.station.work.RuleFiles;
import corewright.station.work.ShopFile;
import corewright.station.work.SignedLimits;
import corewright.station.work.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;

/** What the shop holds to; the owner keeps it. Families and limits are edited in their files. */
public final class Rules implements Place {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);
  private static final List<String> SHOP =
      List.of(
          "name", "address", "contact", "complaints", "warrantyMonths", "warrantyTerms", "region");

  private final House house;
  private final Pages pages;
  private final BooleanSupplier running;
  private final String reach;

  /**
   * @param running whether a bench is on: the shop's file is not read again then
   * @param reach who can reach the console, a sentence
   */
  public Rules(House house, Pages pages, BooleanSupplier running, String reach) {
    this.house = house;
    this.pages = pages;
    this.running = running;
    this.reach = reach;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/rules", this::show);
    routes.get("/rules/family/{id}", this::family);
    routes.get("/rules/check", this::check);
    routes.post("/rules/sign", this::sign);
    routes.post("/rules/account", this::account);
    routes.post("/rules/authority", this::authority);
    routes.post("/rules/shop", this::shop);
    routes.post("/rules/backup", this::backup);
    routes.post("/rules/verify", this::verify);
  }

  private void show(Context context) {
    Workshop workshop = house.workshop();
    Home home = Home.fromSystem();
    RuleFiles files = new RuleFiles(home, workshop.folders());
    RulesPage page =
        new RulesPage(
            workshop.catalogue().families().stream().map(f -> line(workshop, f)).toList(),
            workshop.limits().all().stream().map(RulesPage.Signature::of).toList(),
            benches(files, workshop),
            workshop.ledger().accounts().all(),
            RulesPage.everyRole(),
            RulesPage.Own.of(workshop.shop()),
            files.names(),
            home.folder().toString(),
            reach,
            Visitor.of(context).role().keepsTheShop());
    pages.show(context, PlaceName.HOUSE_RULES, "rules.jte", Map.of("page", page));
  }

  private static RulesPage.FamilyLine line(Workshop workshop, Family f) {
    Catalogue catalogue = workshop.catalogue();
    int limits =
        catalogue.profileIds(f.id()).stream()
            .mapToInt(id -> catalogue.profile(id).limits().size())
            .sum();
    return new RulesPage.FamilyLine(
        f.id(),
        f.title(),
        f.revision(),
        String.join(", ", f.variants().stream().map(v -> v.id()).toList()),
        limits,
        signed(workshop.limits().of(f)));
  }

  private static String signed(List<SignedLimits.Held> held) {
    List<String> open =
        held.stream()
            .filter(h -> !h.standing().answeredFor())
            .map(SignedLimits.Held::what)
            .toList();
    if (!open.isEmpty()) {
      return "NOT SIGNED: " + String.join(", ", open);
    }
    return held.stream().allMatch(h -> h.standing().delivered()) ? "as delivered" : "signed";
  }

  private void sign(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustSignLimits();
    SignedLimits.Held held =
        house
            .workshop()
            .limits()
            .sign(field(context, "what"), field(context, "sha256"), visitor.name());
    pages.notice(
        context,
        "Signed: "
            + held.what()
            + ", revision "
            + held.revision()
            + ". Its limits count as yours.");
    Answers.go(context, "/rules/family/" + field(context, "family"));
  }

  private static List<RulesPage.BenchLine> benches(RuleFiles files, Workshop workshop) {
    List<RulesPage.BenchLine> lines = new ArrayList<>();
    for (Path file : files.benches()) {
      try {
        lines.add(RulesPage.bench(Descriptions.bench(file), workshop.today()));
      } catch (BadFile bad) {
        lines.add(
            RulesPage.unread(String.valueOf(file.getFileName()), String.valueOf(bad.getMessage())));
      }
    }
    return lines;
  }

  private void family(Context context) {
    Workshop workshop = house.workshop();
    Catalogue catalogue = workshop.catalogue();
    String id = context.pathParam("id");
    if (!catalogue.familyIds().contains(id)) {
      throw new Refused("There is no such family", "Go to House rules and choose one there.");
    }
    pages.show(
        context,
        PlaceName.HOUSE_RULES,
        "family.jte",
        Map.of(
            "page",
            FamilyPage.of(
                catalogue,
                catalogue.family(id),
                workshop.limits().of(catalogue.family(id)),
                Visitor.of(context).role().signsLimits())));
  }

  private void check(Context context) {
    String name = Objects.requireNonNullElse(context.queryParam("file"), "");
    Home home = Home.fromSystem();
    List<String> good = new ArrayList<>();
    List<Mistake> mistakes = List.of();
    try {
      Checking.Good found = new RuleFiles(home, house.workshop().folders()).check(name);
      good.add("A " + found.kind() + " that may be used: " + found.title() + ".");
      good.addAll(found.facts());
      mistakes = found.cautions();
    } catch (BadFile bad) {
      mistakes = bad.mistakes();
    }
    pages.show(
        context,
        PlaceName.HOUSE_RULES,
        "checked.jte",
        Map.of("name", name, "good", good, "mistakes", mistakes));
  }

  private void account(Context context) {
    Visitor owner = Visitor.of(context);
    owner.mustKeepTheShop("make accounts");
    String name = field(context, "name").strip();
    if (!field(context, "password").equals(field(context, "again"))) {
      throw new Refused("The two passwords differ", "Type the same one twice.");
    }
    Role role;
    try {
      role = Role.valueOf(field(context, "role"));
    } catch (IllegalArgumentException none) {
      throw new Refused("There is no such role", "Choose one of the list.");
    }
    if (name.equals(owner.name()) && !role.keepsTheShop()) {
      throw new Refused(
          "You would take the owner's role from yourself",
          "Make another owner first; they can give you another role.");
    }
    house
        .workshop()
        .ledger()
        .accounts()
        .put(name, role, field(context, "password").toCharArray(), owner.name());
    pages.notice(context, name + " is " + role.name().toLowerCase(Locale.ROOT) + " from now on.");
    Answers.go(context, "/rules");
  }

  private void authority(Context context) {
    Visitor owner = Visitor.of(context);
    owner.mustKeepTheShop("say what somebody may energise");
    String name = field(context, "name");
    double upTo_V;
    try {
      upTo_V = Double.parseDouble(field(context, "upTo_V").strip().replace(',', '.'));
    } catch (NumberFormatException none) {
      throw new Refused("That is no voltage", "Give it as a number of volts, as 60 or 120.");
    }
    house.workshop().ledger().accounts().grant(name, upTo_V, owner.name());
    pages.notice(
        context, name + " may energise units up to " + Figures.plain(upTo_V) + " V from now on.");
    Answers.go(context, "/rules");
  }

  private void shop(Context context) {
    Visitor.of(context).mustKeepTheShop("change whose paper it is");
    if (running.getAsBoolean()) {
      throw new Refused(
          "A bench is on, and its record is being written", "Change this when the run is over.");
    }
    Map<String, String> said = new LinkedHashMap<>();
    SHOP.forEach(key -> said.put(key, field(context, key)));
    ShopFile.write(house.workshop().folders().root(), said);
    house.reopen();
    pages.notice(context, "From now on every paper says so.");
    Answers.go(context, "/rules");
  }

  private void backup(Context context) {
    Visitor.of(context).mustKeepTheShop("make a backup");
    Workshop workshop = house.workshop();
    String stamp = STAMP.format(house.clock().wall().atZone(HouseClock.zone()));
    Backup.Made made =
        workshop
            .backup()
            .make(
                workshop.folders().root().resolve("backups").resolve(stamp + ".zip"),
                Visitor.of(context).name());
    pages.notice(
        context,
        "Backed up and checked: "
            + made.file()
            + ", "
            + (made.bytes() + 999_999) / 1_000_000
            + " MB. Copy it to another machine, and write down: "
            + heads(made.verification()));
    Answers.go(context, "/rules");
  }

  private void verify(Context context) {
    Verification found = house.workshop().ledger().verify();
    pages.notice(
        context,
        found.whole()
            ? "The record is whole: every one of "
                + found.events()
                + " events is as it was written, "
                + found.signed()
                + " with a good signature. "
                + heads(found)
            : "THE RECORD IS NOT AS IT WAS WRITTEN, first at: "
                + found.broken().get(0)
                + ". Keep it as it is, and compare it with the last backup.");
    Answers.go(context, "/rules");
  }

  private static String heads(Verification found) {
    return String.join("; ", found.heads().stream().map(h -> "head " + h.printed()).toList()) + ".";
  }

  private static String field(Context context, String name) {
    return Objects.requireNonNullElse(context.formParam(name), "");
  }
}
