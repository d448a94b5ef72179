package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Dossier;
import corewright.bench.record.Past;
import corewright.bench.record.RunRecord;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Kept.class)
class LedgerTest {
  @Parameter private Kept kept;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  @TempDir Path folder;
  private Ledger ledger;

  @BeforeEach
  void open() {
    ledger = kept.open(folder, "bench-1", CLOCK);
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  @Test
  void aUnitIsToldAsItHappened() {
    String tag = ledger.nextTag();
    assertEquals(1, ledger.receive(Samples.core(tag, "SN 0698-114")));
    ledger.answers(tag, Samples.answers());
    CueAnswer corrected = new CueAnswer("bosses", "8", "M. Reyes", Samples.MORNING);
    ledger.answers(tag, List.of(corrected));
    ledger.identified(tag, Samples.identification(), "H. Oduya");
    RunRecord run = Samples.run("bench-1-000001-x", tag);
    ledger.runEnded(run);
    ledger.decided(tag, Samples.pending(), "H. Oduya");
    ledger.rebuilt(tag, List.of("Output capacitors, all eight", "Seal 8120 fitted"), "M. Reyes");
    ledger
        .papers()
        .add(
            tag,
            "test report",
            Path.of("documents/x.pdf"),
            "ef".repeat(32),
            java.util.Map.of(),
            "H. Oduya");

    Dossier expected =
        new Dossier(
            Samples.core(tag, "SN 0698-114"),
            1,
            List.of(corrected, Samples.answers().get(1)),
            Optional.of(Samples.identification()),
            List.of(run),
            Optional.of(Samples.pending()),
            List.of("Output capacitors, all eight", "Seal 8120 fitted"),
            new Past(1, List.of()));
    assertEquals(expected, ledger.dossier(tag));
    assertTrue(ledger.verify().whole(), ledger.verify().broken().toString());
    assertEquals(8, ledger.verify().events());
  }

  @Test
  void aSecondVisitBeginsEmptyAndTheFirstStays() {
    String tag = ledger.nextTag();
    ledger.receive(Samples.core(tag, "114"));
    ledger.runEnded(Samples.run("a", tag));
    assertEquals(2, ledger.receive(Samples.core(tag, "114")));
    assertEquals(2, ledger.dossier(tag).visit());
    assertEquals(List.of(), ledger.dossier(tag).runs());
    assertEquals(1, ledger.dossier(tag, 1).visit());
    assertEquals(1, ledger.dossier(tag, 1).runs().size());
  }

  @Test
  void aRunThatNeverEndedIsFoundAtTheNextStart() {
    String tag = ledger.nextTag();
    ledger.receive(Samples.core(tag, "114"));
    RunBegun first = begun("a", tag);
    RunBegun second = begun("b", tag);
    ledger.runBegun(first);
    ledger.runBegun(second);
    ledger.runEnded(Samples.run("a", tag));
    ledger.close();
    open();
    assertEquals(List.of(second), ledger.runs().unfinished());
    assertEquals(List.of("captures/a.h5"), ledger.custody().evidence(Optional.empty()), "sealed");
    assertEquals(2, ledger.runs().nextNumber(tag, "arrival"));
    assertEquals(1, ledger.runs().nextNumber(tag, "ship"));
  }

  @Test
  void aRunIsKeptOnceAndNeverChanged() {
    String tag = ledger.nextTag();
    ledger.receive(Samples.core(tag, "114"));
    ledger.runEnded(Samples.run("a", tag));
    ledger.runEnded(Samples.run("a", tag));
    assertEquals(1, ledger.dossier(tag).runs().size());
    RunRecord other = Samples.rejudged(Samples.run("a", tag));
    LedgerFault fault = assertThrows(LedgerFault.class, () -> ledger.runEnded(other));
    assertEquals(
        "Run a was closed before, with other results [closed-run-stays]. A run is never changed;"
            + " make a new one, or 'amend' the old one",
        fault.getMessage());
    assertThrows(LedgerFault.class, () -> ledger.runBegun(begun("a", tag)));
  }

  @Test
  void nothingIsWrittenAboutAUnitThatWasNeverReceived() {
    LedgerFault fault =
        assertThrows(
            LedgerFault.class, () -> ledger.decided("U-00418", Samples.pending(), "H. Oduya"));
    assertEquals(
        "There is no unit U-00418Q. Receive it first, or find it by the maker's serial",
        fault.getMessage());
    assertEquals(0, ledger.verify().events());
  }

  @Test
  void aUnitIsFoundByWhatIsReadable() {
    String tag = ledger.nextTag();
    String other = ledger.nextTag();
    ledger.receive(Samples.core(tag, "SN 0698-114/ü"));
    ledger.receive(Samples.core(other, "SN 0698-115"));
    assertEquals(List.of(tag), tags("sn0698-114Ü"));
    assertEquals(List.of(tag), tags("98 11 4"));
    assertEquals(List.of(tag, other), tags("0698"));
    assertEquals(List.of(tag), tags(tag));
    assertEquals(List.of(), tags("%"));
    assertEquals(List.of(), tags("777"));
    assertEquals("part of the serial", ledger.find("0698").get(0).why());
  }

  @Test
  void theViewsAreMadeFromTheEventsAlone() {
    String tag = ledger.nextTag();
    ledger.receive(Samples.core(tag, "SN 0698-114"));
    ledger.identified(tag, Samples.identification(), "H. Oduya");
    ledger.runBegun(begun("a", tag));
    ledger.runEnded(Samples.run("a", tag));
    ledger.runBegun(begun("b", tag));
    ledger.decided(tag, Samples.pending(), "H. Oduya");
    ledger
        .papers()
        .add(tag, "test report", Path.of("x.pdf"), "ef".repeat(32), java.util.Map.of(), "H. Oduya");
    Raw raw = new Raw(kept.url(folder));
    List<String> before = raw.views();
    assertTrue(before.size() >= 8, before.toString());
    ledger.custody().rebuildViews();
    assertEquals(before, raw.views());
  }

  @Test
  void tagsAreGivenOutOnceEvenWhenTyped() {
    ledger.receive(Samples.core(Tags.of(2), "114"));
    assertEquals(List.of(Tags.of(1), Tags.of(3)), List.of(ledger.nextTag(), ledger.nextTag()));
  }

  private List<String> tags(String text) {
    return ledger.find(text).stream().map(Found::tag).toList();
  }

  private static RunBegun begun(String id, String tag) {
    return Samples.begun(id, tag);
  }
}
