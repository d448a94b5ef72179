package corewright.station.web.rules;

import corewright.bench.life.Role;
import corewright.fixtures.describe.BenchDescription;
import corewright.reports.document.Shop;
import corewright.reports.ledger.Accounts.Account;
import corewright.reports.ledger.SignOffs.SignOff;
import corewright.station.web.When;
import corewright.station.work.RuleFiles;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the shop holds to, in words. */
public record RulesPage(
    List<FamilyLine> families,
    List<Signature> signatures,
    List<BenchLine> benches,
    List<Account> accounts,
    List<String> roles,
    Own shop,
    List<String> files,
    String where,
    String reach,
    boolean owner) {
  private static final Pattern DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

  /** One family in the list. */
  public record FamilyLine(
      String id, String title, int revision, String builds, int limits, String signed) {}

  /** One signature under limits, as it is listed. */
  public record Signature(String what, int revision, String hash, String who, String when) {
    static Signature of(SignOff s) {
      return new Signature(
          s.what(), s.revision(), FamilyPage.shown(s.sha256()), s.who(), When.moment(s.at()));
    }
  }

  /** One bench in the list; {@code calibration} lines say what is due. */
  public record BenchLine(
      String id, String title, int revision, String fixture, List<Due> calibration, String fault) {}

  /** Whether benches lie in the shop's own folder too. */
  public boolean hasOwnBenches() {
    return files.stream().anyMatch(name -> name.startsWith(RuleFiles.OWN));
  }

  /** One instrument or channel with its calibration; {@code state} is a word. */
  public record Due(String what, String calibration, String state) {}

  /** The shop's own file. */
  public record Own(
      String name,
      String address,
      String contact,
      String complaints,
      int months,
      String terms,
      String region) {
    static Own of(Shop shop) {
      return new Own(
          shop.name(),
          shop.address(),
          shop.contact(),
          shop.complaints(),
          shop.warranty_months(),
          shop.warrantyTerms(),
          shop.region().getCountry());
    }
  }

  static List<String> everyRole() {
    return Arrays.stream(Role.values()).map(Role::name).toList();
  }

  static BenchLine bench(BenchDescription bench, LocalDate today) {
    List<Due> due = new ArrayList<>();
    bench.instruments().forEach(i -> due.add(due(i.role(), i.calibration(), today)));
    bench.channels().forEach(c -> due.add(due("channel " + c.channel(), c.calibration(), today)));
    bench.contacts().ifPresent(c -> due.add(due("contacts of the fixture", c.checked(), today)));
    return new BenchLine(
        bench.id(),
        bench.title(),
        bench.revision(),
        bench.fixture().id() + " for " + String.join(", ", bench.fixture().families()),
        due,
        "");
  }

  static BenchLine unread(String file, String fault) {
    return new BenchLine(file, "cannot be read", 0, "", List.of(), fault);
  }

  private static Due due(String what, String calibration, LocalDate today) {
    return new Due(
        what,
        calibration,
        lastDay(calibration)
            .map(
                day ->
                    day.isBefore(today)
                        ? "overdue since " + When.day(day)
                        : day.isBefore(today.plusDays(30))
                            ? "due within a month"
                            : "until " + When.day(day))
            .orElse(
                calibration.toLowerCase(Locale.ROOT).contains("not calibrated")
                    ? "not calibrated"
                    : "no day given"));
  }

  /** A certificate's text ends with its due date, as printed. */
  private static Optional<LocalDate> lastDay(String calibration) {
    Optional<LocalDate> last = Optional.empty();
    Matcher day = DAY.matcher(calibration);
    while (day.find()) {
      try {
        last = Optional.of(LocalDate.parse(day.group()));
      } catch (DateTimeException none) {
        // a number that looks like a day
      }
    }
    return last;
  }
}
