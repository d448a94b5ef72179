package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Act;
import corewright.bench.life.Never;
import corewright.bench.life.VehicleNumbers;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Dossier;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import corewright.measures.Capture;
import corewright.profiles.Profile.Purpose;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import corewright.reports.document.Documents;
import corewright.reports.document.Label;
import corewright.reports.document.Shop;
import corewright.reports.document.genuine.TestKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is done for nobody: each rule refuses its own case by its id, and none is without a case.
 */
class NeverTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final String TAG = Tags.of(1);
  private static final String VIN = "1M8GDM9AXKP042788"; // by which check digits are taught
  private static final List<String> DONE = List.of("Output capacitors, all eight");
  private static final String PAST =
      "Times it was opened by us: 2. What may speak for an earlier rebuild: it was soldered by"
          + " hand.";
  private static final TestKey KEY = new TestKey();
  private static final Shop SHOP = new Shop("Mill Yard Rebuild", "4 Mill Yard", "", "Write.");

  @TempDir private Path folder;
  private Ledger ledger;
  private final SampleRuns runs = new SampleRuns();

  @BeforeEach
  void aUnitIsHere() {
    ledger = Ledger.open(folder.resolve("ledger.db"), "bench-1", CLOCK);
    ledger.receive(Samples.core(TAG, "SN 0698-114"));
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  @Test
  void everyRuleRefusesByItsIdAndNoneIsWithoutItsCase() throws Exception {
    Map<Never, Callable<String>> said = new EnumMap<>(Never.class);
    said.put(Never.CHANGE_A_CLOSED_RUN, this::closedRun);
    said.put(Never.REMOVE_A_RESULT, this::removed);
    said.put(Never.PROVE_BY_VOID, () -> certified(tested(Waves.sagging())));
    said.put(Never.CERTIFY_OVERDUE, this::overdue);
    said.put(Never.CHANGE_A_LIMIT_UNSIGNED, this::limit);
    said.put(Never.LEAVE_UNTESTED, this::untested);
    said.put(Never.SEAL_TWICE, this::sealed);
    said.put(Never.TAKE_THE_MAKERS_NAME, () -> lettered(labelled("MILL YARD 12/48")));
    said.put(Never.SWAP_A_SERIAL, () -> refused(() -> receive("0698-115", "no start")));
    said.put(Never.KEEP_A_SECRET, () -> refused(() -> receive("", "no start, PIN 4711")));
    for (Map.Entry<Never, Callable<String>> each : said.entrySet()) {
      String text = each.getValue().call();
      assertTrue(text.contains("[" + each.getKey().id() + "]"), each.getKey() + ": " + text);
    }

    Map<Never, Callable<Boolean>> holds = new EnumMap<>(Never.class);
    Dossier rebuilt = rebuilt();
    String paper = text(documents(SHOP).certificate(rebuilt, folder));
    holds.put(Never.HIDE_TRIES, () -> paper.contains("run 1 of 3 of its kind"));
    holds.put(Never.HIDE_A_REBUILD, () -> paper.contains(PAST));
    holds.put(
        Never.GIVE_OUT_A_VEHICLE,
        () -> exported(false).contains("tows " + VehicleNumbers.LEFT_OUT));
    holds.put(Never.TEST_TO_DESTRUCTION, () -> !isAKind("loadDump") && !isAKind("short"));
    for (Map.Entry<Never, Callable<Boolean>> each : holds.entrySet()) {
      assertTrue(each.getValue().call(), each.getKey().rule());
    }
    assertEquals(Never.values().length, said.size() + holds.size());
    assertTrue(text(documents(SHOP).warrantyReport(rebuilt, folder)).contains(PAST));
    assertTrue(isAKind("hold"), "the kinds are looked for where they are");
  }

  private String closedRun() {
    RunRecord run = Samples.run("a", TAG);
    ledger.runEnded(run);
    return refused(() -> ledger.runEnded(Samples.rejudged(run)));
  }

  /** Around the program, with the database open: even there no failed run is dropped. */
  private String removed() {
    try (Database database = Database.open(Urls.of(folder.resolve("ledger.db")))) {
      return refused(
          () -> database.write(h -> h.execute("DELETE FROM event WHERE kind = 'run ended'")));
    }
  }

  private String overdue() throws Exception {
    runs.calibrated("K-114, due 2020-01-01");
    try {
      return certified(tested(Waves.good()));
    } finally {
      runs.calibrated("not calibrated");
    }
  }

  private String limit() {
    ledger.signOffs().sign("profile sd48-ship", 2, "0".repeat(64), "H. Oduya");
    return refused(
        () -> ledger.signOffs().sign("profile sd48-ship", 2, "1".repeat(64), "H. Oduya"));
  }

  /** Opened again after its final test: what was proved is proved no more. */
  private String untested() {
    proved();
    ledger.lives().take(TAG, new Step.Plain(Act.OPEN, ""), "M. Reyes");
    ledger.lives().take(TAG, new Step.Plain(Act.CLOSE, ""), "M. Reyes");
    return refused(() -> ledger.lives().take(TAG, new Step.Sealing("8119", ""), "H. Oduya"));
  }

  private String sealed() {
    ledger.runEnded(Samples.ship("s2", TAG, Verdict.PASS, Source.BENCH));
    ledger.lives().take(TAG, new Step.Sealing("8120", ""), "H. Oduya");
    ledger.lives().take(TAG, new Step.Back("another seal"), "H. Oduya");
    return refused(() -> ledger.lives().take(TAG, new Step.Sealing("8120", ""), "H. Oduya"));
  }

  private void proved() {
    ledger.decided(TAG, Samples.rebuild(), "H. Oduya");
    ledger.lives().take(TAG, new Step.Safe(0.2, ""), "M. Reyes");
    ledger.lives().take(TAG, new Step.Plain(Act.OPEN, ""), "M. Reyes");
    ledger.lives().take(TAG, new Step.Work(DONE, List.of()), "M. Reyes");
    ledger.lives().take(TAG, new Step.Plain(Act.CLOSE, ""), "M. Reyes");
    ledger.runEnded(Samples.ship("s1", TAG, Verdict.PASS, Source.BENCH));
  }

  @Test
  void whatIsRefusedLeavesNothingBehind() {
    long before = ledger.verify().events();
    refused(() -> receive("", "key code 1A2B3C"));
    refused(() -> receive("0698-115", ""));
    CueAnswer answer =
        new CueAnswer("label", "read", "x", Samples.MORNING, "immobiliser code 83921", "");
    refused(() -> ledger.answers(TAG, List.of(answer)));
    refused(() -> ledger.lives().take(TAG, new Step.Hold("PIN: 0815?", "x", day()), "x"));
    assertEquals(before, ledger.verify().events());
    assertFalse(refused(() -> receive("", "key code 1A2B3C")).contains("1A2B3C"));
  }

  /** With its reason, and both are found and printed. */
  @Test
  void aSerialChangesWithAReasonThatIsPrinted() throws Exception {
    assertTrue(refused(() -> relabel("0698-141", "")).contains("nobody said why"));
    assertTrue(refused(() -> relabel("SN 0698-114", "misread")).contains("called that already"));
    relabel("0698-141", "two digits were swapped");
    assertEquals("0698-141", ledger.dossier(TAG).core().serial());
    assertEquals(TAG, ledger.find("0698-141").get(0).tag());
    assertEquals(TAG, ledger.find("0698-114").get(0).tag(), "by what stood there before");
    ledger.lives().mustBe(TAG, "SN 0698-141");
    assertTrue(refused(() -> ledger.lives().mustBe(TAG, "0698-114")).contains("would leave"));
    receive("s/n 0698-141", "back");
    Dossier now = ledger.dossier(TAG);
    assertEquals(1, now.past().relabelled().size(), "on later visits too");
    String text = text(documents(SHOP).testReport(with(now, List.of(), List.of()), folder));
    assertTrue(text.contains("Since 26 November 2026 its serial 0698-141, before serial SN"), text);
    assertTrue(text.contains("two digits were swapped"), text);
  }

  /** Tables, events and paper; the owner may have it, and both say so. */
  @Test
  void aVehicleIsLeftOutUnlessTheOwnerAsks() throws Exception {
    assertTrue(exported(true).contains("tows " + VIN));
    assertTrue(ledger.verify().whole(), "the record itself keeps what was said");
    Path letter =
        documents(SHOP).letter(ledger.dossier(TAG), folder); // quotes the customer's complaint
    assertFalse(text(letter).contains(VIN));
    assertTrue(text(letter).contains(VehicleNumbers.LEFT_OUT), text(letter));
  }

  /**
   * Where the page is full its type is set tighter and what can be spared is left off; not this.
   */
  @Test
  void aFullPageStillShowsWhatHappenedBefore() throws Exception {
    Dossier told = rebuilt();
    List<String> much = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      much.add("Output capacitor C" + i + " replaced, lot 2644-K, joints reflowed and looked at");
    }
    Dossier full =
        new Dossier(
            told.core(),
            told.visit(),
            told.answers(),
            told.identification(),
            told.runs(),
            told.decision(),
            much,
            told.past());
    String paper = text(documents(SHOP).warrantyReport(full, folder));
    assertTrue(paper.contains(PAST), paper);
  }

  /** A maker's serial may have as many letters and digits, and end in four digits. */
  @Test
  void theSerialOfAUnitIsNoVehicleThoughItLooksLikeOne() throws Exception {
    String serial = "SDM48A7K2026B0417";
    assertTrue(VehicleNumbers.in(serial));
    String tag = Tags.of(77);
    ledger.receive(Samples.core(tag, serial));
    ledger.decided(tag, Samples.rebuild(), "H. Oduya");
    Path out = Files.createTempDirectory(folder, "out");
    assertEquals(List.of(), ledger.custody().export(out, Optional.empty(), false, "H. Oduya"));
    assertTrue(Files.readString(out.resolve("unit.csv")).contains(serial));
    Path letter = documents(SHOP).letter(ledger.dossier(tag), folder);
    assertTrue(text(letter).contains(serial), text(letter));
  }

  /** The trade's own words in a name are nobody's. */
  @Test
  void aShopMayBeCalledWhatManyAreCalledAndLabelItsOwnUnits() throws Exception {
    Shop plain = new Shop("Rebuild Works", "", "", "");
    documents(plain).letter(labelled("WORKS REBUILD 12/48"), folder);
    Dossier ours = labelled("MILL YARD rebuilt");
    Dossier back =
        new Dossier(
            ours.core(),
            2,
            ours.answers(),
            ours.identification(),
            ours.runs(),
            ours.decision(),
            ours.rebuild(),
            ours.past());
    documents(SHOP).letter(back, folder);
    List<RunRecord> passed = List.of(ship());
    documents(SHOP).unitLabel(with(labelled("12/48"), passed, DONE), Label.WIDE, folder);
    Dossier makers = with(labelled("Mill-Yard 12/48"), passed, DONE);
    assertThrows(
        RuntimeException.class, () -> documents(SHOP).unitLabel(makers, Label.WIDE, folder));
  }

  private String exported(boolean vehicles) throws Exception {
    if (!ledger.dossier(TAG).core().complaint().contains(VIN)) {
      receive("", "tows " + VIN);
      ledger.decided(TAG, Samples.rebuild(), "H. Oduya");
    }
    Path out = Files.createTempDirectory(folder, "out");
    List<String> left = ledger.custody().export(out, Optional.empty(), vehicles, "H. Oduya");
    assertEquals(vehicles, left.isEmpty(), left.toString());
    return Files.readString(out.resolve("events.jsonl"))
        + Files.readString(out.resolve("events.csv"));
  }

  private boolean isAKind(String kind) throws IOException {
    Path profiles = Path.of(System.getProperty("corewright.home"), "profiles");
    JsonSchema schema = JsonSchema.read(profiles.resolve("schemas/profile.schema.json"));
    String text = Files.readString(profiles.resolve("families/sd48/sd48-arrival.json"));
    Path asked = Files.createTempFile(folder, "profile", ".json");
    Files.writeString(asked, text.replaceFirst("\"kind\": \"hold\"", "\"kind\": \"" + kind + '"'));
    return schema.check(JsonFile.read(asked)).isEmpty();
  }

  private void receive(String serial, String complaint) {
    Core core = Samples.core(TAG, serial);
    ledger.receive(
        new Core(
            TAG,
            core.family(),
            serial,
            core.label(),
            core.customer(),
            core.mode(),
            complaint,
            core.received(),
            core.receivedBy()));
  }

  private void relabel(String serial, String reason) {
    ledger.lives().relabel(TAG, serial, "", reason, "H. Oduya");
  }

  private Dossier tested(Capture capture) {
    RunRecord run = runs.run("t", TAG, capture, Purpose.ARRIVAL, Source.BENCH);
    return corewright.reports.Dossiers.of(
        Samples.core(TAG, "1"), List.of(run), corewright.reports.Dossiers.giveBack(), List.of());
  }

  private Dossier labelled(String label) {
    Dossier told =
        corewright.reports.Dossiers.of(
            Samples.core(TAG, "1"), List.of(), corewright.reports.Dossiers.giveBack(), List.of());
    Core core = told.core();
    return new Dossier(
        new Core(
            TAG,
            core.family(),
            "1",
            label,
            core.customer(),
            core.mode(),
            core.complaint(),
            core.received(),
            core.receivedBy()),
        1,
        told.answers(),
        told.identification(),
        told.runs(),
        told.decision(),
        told.rebuild());
  }

  /** Tried three times, opened on two visits, and soldered by somebody before. */
  private Dossier rebuilt() {
    Dossier told = labelled("SD 12/48");
    Identification id = told.identification().orElseThrow();
    Identification seen =
        new Identification(
            id.family(),
            id.keyRevision(),
            id.variant(),
            id.posterior(),
            id.band(),
            id.runnerUp(),
            id.runnerUpPosterior(),
            id.posteriors(),
            id.conflicts(),
            id.nextQuestion(),
            List.of(
                new Hypothesis(
                    Hypothesis.REBUILT_BEFORE, 0.93, List.of("it was soldered by hand"), "")));
    return new Dossier(
        told.core(),
        1,
        told.answers(),
        Optional.of(seen),
        Collections.nCopies(3, ship()),
        told.decision(),
        DONE,
        opened());
  }

  private corewright.bench.record.Past opened() {
    if (!ledger.knows(Tags.of(2))) {
      ledger.receive(Samples.core(Tags.of(2), "2"));
      ledger.rebuilt(Tags.of(2), DONE, "M. Reyes");
      ledger.receive(Samples.core(Tags.of(2), "2"));
      ledger.rebuilt(Tags.of(2), DONE, "M. Reyes");
    }
    return ledger.dossier(Tags.of(2)).past();
  }

  private RunRecord ship() {
    return runs.run("x", TAG, Waves.good(), Purpose.SHIP, Source.BENCH);
  }

  private static Dossier with(Dossier told, List<RunRecord> runs, List<String> done) {
    return new Dossier(
        told.core(),
        told.visit(),
        told.answers(),
        told.identification(),
        runs,
        told.decision().or(() -> Optional.of(corewright.reports.Dossiers.giveBack())),
        done,
        told.past());
  }

  private String certified(Dossier dossier) {
    return refused(() -> documents(SHOP).certificate(dossier, folder));
  }

  private String lettered(Dossier dossier) {
    return refused(() -> documents(SHOP).letter(dossier, folder));
  }

  private Documents documents(Shop shop) {
    return new Documents(
        shop,
        runs,
        CLOCK,
        new corewright.reports.document.KeptRecord() {
          @Override
          public String head() {
            return "";
          }

          @Override
          public String text(Object part) {
            return Json.text(part);
          }
        },
        Optional.of(KEY));
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0]+", " ").strip();
    }
  }

  private static java.time.LocalDate day() {
    return java.time.LocalDate.ofInstant(Samples.MORNING, ZoneOffset.UTC);
  }

  private static String refused(Runnable deed) {
    RuntimeException refused = assertThrows(RuntimeException.class, deed::run);
    return String.valueOf(refused.getMessage());
  }
}
