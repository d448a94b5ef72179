package corewright.station.work;

import corewright.bench.life.Stage;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.bench.triage.Overruling;
import corewright.bench.triage.Sums;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.chart.Charts;
import corewright.reports.document.Documents;
import corewright.reports.document.Shop;
import corewright.reports.document.template.Templates;
import corewright.reports.ledger.KeyFolder;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.SigningKey;
import corewright.reports.ledger.VisitFact;
import corewright.station.work.books.OldBooks;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One shop: its record in one folder, and the use cases on it. Closing closes the ledger. */
public final class Workshop implements AutoCloseable {
  private final Catalogue catalogue;
  private final Folders folders;
  private final Shop shop;
  private final Clock clock;
  private final Ledger ledger;
  private final Publishing publishing;

  private Workshop(
      Catalogue catalogue, Folders folders, Shop shop, Clock clock, Ledger ledger, SigningKey key) {
    this.catalogue = catalogue;
    this.folders = folders;
    this.shop = shop;
    this.clock = clock;
    this.ledger = ledger;
    KeptEvidence evidence = new KeptEvidence(folders);
    this.publishing =
        new Publishing(
            ledger,
            folders,
            new Documents(
                    shop,
                    evidence,
                    WallClock.here(clock),
                    new RecordOfShop(ledger),
                    Optional.of(new ShopSigner(key)))
                .with(Templates.in(folders.root())),
            new Charts(evidence, shop.region()),
            new SignedLimits(catalogue, ledger));
  }

  /**
   * Opens the record in a folder; makes it if there is none.
   *
   * @param chain who writes, as {@code bench-1}
   */
  public static Workshop open(
      Catalogue catalogue, Path folder, Shop shop, String chain, Clock clock) {
    Folders folders = Folders.at(folder);
    SigningKey key = new KeyFolder(folders.root()).key();
    return new Workshop(
        catalogue,
        folders,
        shop,
        clock,
        Ledger.open(folders.ledger(), chain, WallClock.here(clock), Optional.of(key)),
        key);
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  public Folders folders() {
    return folders;
  }

  /** Whose paper every document is. */
  public Shop shop() {
    return shop;
  }

  public Ledger ledger() {
    return ledger;
  }

  public Reception reception() {
    return new Reception(catalogue, ledger, looking(), clock);
  }

  public Looking looking() {
    return new Looking(catalogue, ledger, files(), clock);
  }

  public Inspecting inspecting() {
    return new Inspecting(catalogue, ledger);
  }

  public Rekeying rekeying() {
    return new Rekeying(catalogue, ledger);
  }

  /** Cores at the counter, new ones and those that come back. */
  public Arrival arrival() {
    return new Arrival(reception(), ledger);
  }

  /** The counter: a core comes in, with all that is asked there. */
  public Intake intake() {
    return new Intake(arrival(), quotes(), publishing, ledger, today());
  }

  /** Photographs as people hand them in. */
  public Photographs photographs() {
    return new Photographs(files(), folders);
  }

  public Exporting exporting() {
    return new Exporting(ledger, folders);
  }

  /** Old spreadsheets. */
  public OldBooks oldBooks() {
    return new OldBooks(catalogue, ledger);
  }

  public Sharing sharing() {
    return new Sharing(ledger, folders);
  }

  public Backup backup() {
    return new Backup(ledger, folders);
  }

  /** What the owner looks at. */
  public ShopFigures figures(ShopFigures.Period period) {
    List<VisitFact> visits = period.of(ledger.facts());
    return ShopFigures.of(
        visits,
        period.isAlways() ? visits : ledger.facts().later(),
        ledger.facts().claims(),
        ledger.facts().confirmed(),
        period,
        today(),
        zone());
  }

  /** How the shop stands today. */
  public OpenToday openToday() {
    LocalDate today = today();
    return OpenToday.of(
        Arrays.stream(Stage.values())
            .filter(Stage::inTheShop)
            .flatMap(stage -> ledger.lives().at(stage).stream())
            .toList(),
        ledger.deposits().outstanding(),
        Cover.of(
            ledger.facts().at(Stage.IN_STOCK), ledger.facts().shipped(Cover.since(today), today)),
        today,
        zone());
  }

  public Quotes quotes() {
    return new Quotes(ledger, clock);
  }

  public Releasing releasing() {
    return new Releasing(ledger, publishing, shop, today());
  }

  public Lifetimes lifetimes() {
    return new Lifetimes(ledger);
  }

  public RunStories stories() {
    return new RunStories(ledger);
  }

  public Teardowns teardowns() {
    return new Teardowns(ledger);
  }

  public Rebuilding rebuilding() {
    return new Rebuilding(catalogue, ledger);
  }

  public Claiming claiming() {
    return new Claiming(ledger, zone());
  }

  /** An open claim, led through one question at a time. */
  public ClaimTalk claimTalk() {
    return new ClaimTalk(claiming(), ledger, files(), clock);
  }

  /** Real benches, proved with their reference units. */
  public ShiftCheck shiftCheck() {
    return shiftCheck(false);
  }

  /** Benches, emulated or real, proved with their reference units. */
  public ShiftCheck shiftCheck(boolean emulated) {
    return new ShiftCheck(catalogue, ledger, emulated);
  }

  /** Noise and contacts of benches, emulated or real. */
  public BenchCondition benchCondition(boolean emulated) {
    return new BenchCondition(ledger, emulated);
  }

  /** Channels of benches, against a meter. */
  public Calibrating calibrating() {
    return new Calibrating(ledger);
  }

  /** Which limits somebody answers for. */
  public SignedLimits limits() {
    return new SignedLimits(catalogue, ledger);
  }

  public FileStore files() {
    return new FileStore(ledger, folders);
  }

  /** The day that it is here. */
  public LocalDate today() {
    return WallClock.here(clock).today();
  }

  /**
   * Days since then here: 0 on the day itself.
   *
   * @param at as the ledger keeps times, UTC
   */
  public long daysSince(String at) {
    return ChronoUnit.DAYS.between(WallClock.day(at, zone()), today());
  }

  /** Where it stands, for times that people read. */
  public ZoneId zone() {
    return WallClock.here(clock).getZone();
  }

  public Testing testing() {
    return testing(clock);
  }

  /** Tests by another clock, as one whose readings are written down. */
  public Testing testing(Clock other) {
    return new Testing(catalogue, ledger, folders, other);
  }

  /** Passwords, asked for where no door stands. */
  public Proving proving() {
    return new Proving(ledger.accounts(), clock);
  }

  public Recovery recovery() {
    return new Recovery(catalogue, ledger, folders, clock);
  }

  public Importing importing() {
    return new Importing(catalogue, ledger, folders, clock);
  }

  public Publishing publishing() {
    return publishing;
  }

  /** What was agreed with customers, and what the shop has, said to the decision table. */
  public Agreeing agreeing() {
    return new Agreeing(ledger, clock);
  }

  /** The sums behind a decision about a unit, as they stand now; nothing is decided. */
  public Sums sums(String tag) {
    Dossier dossier = ledger.dossier(tag);
    return Deciding.sums(catalogue.family(dossier.core().family()), dossier.identification());
  }

  /** Puts a unit before the decision table, and keeps the row that decided. */
  public Decision decide(String tag, String who) {
    Decision decision = weighed(tag);
    ledger.decided(tag, decision, who);
    return decision;
  }

  private Decision weighed(String tag) {
    Dossier dossier = ledger.dossier(tag);
    Family family = catalogue.family(dossier.core().family());
    return Deciding.decide(family, dossier, teardowns().priors(tag), today());
  }

  /**
   * Puts a unit before the decision table and decides otherwise; both are kept.
   *
   * @throws Refused where safety, law or the unit's owner forbid it, or a name or reason is missing
   */
  public Decision overrule(String tag, Disposition to, String destination, String who, String why) {
    Decision decided = weighed(tag);
    Decision overruled;
    try {
      overruled = Overruling.of(decided, to, destination, who, why);
    } catch (IllegalArgumentException forbidden) {
      throw new Refused(
          "The decision on " + tag + " stands: " + forbidden.getMessage(),
          "Row " + decided.row() + " was kept as it is.");
    }
    ledger.decided(tag, decided, who); // only now: what is refused leaves the record as it was
    ledger.decided(tag, overruled, who);
    return overruled;
  }

  /**
   * The last leg, the same after a bench run and an imported file: what the run shows of the build
   * is weighed with what people saw; then decide, document, chart.
   */
  public Outcome conclude(RunRecord run, String who) {
    reception().seenByBench(run, who);
    Decision decision = decide(run.tag(), who);
    Path document = publishing.write(Paperwork.TEST_REPORT, run.tag(), who);
    Optional<Path> chart = publishing.chart(run.tag());
    Dossier dossier = ledger.dossier(run.tag());
    return new Outcome(dossier.core(), dossier.identification(), run, decision, document, chart);
  }

  @Override
  public void close() {
    ledger.close();
  }
}
