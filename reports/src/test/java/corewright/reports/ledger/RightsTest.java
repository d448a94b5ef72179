package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.record.CueAnswer;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Money is not the bench's, tests and decisions are not the counter's, the whole shop is the
 * owner's. Common practice, no source.
 */
@ParameterizedClass
@EnumSource(Kept.class)
class RightsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final String TAG = Tags.of(1);
  @Parameter private Kept kept;
  @TempDir private Path folder;

  /** Something that somebody wants to write down. */
  private interface Deed {
    void by(String who);
  }

  @Test
  void eachRoleWritesDownWhatIsItsOwn() {
    try (Ledger ledger = kept.open(folder, "bench-1", CLOCK)) {
      ledger.receive(Samples.core(TAG, "114"));
      for (Role role : List.of(Role.OWNER, Role.INSPECTOR, Role.TECHNICIAN, Role.COUNTER)) {
        ledger.accounts().put(role.name(), role, "seven red boats".toCharArray(), "OWNER");
      }
      ledger.benches().lock("bench-1", "a lead was loose", "OWNER");
      Map<String, String> allowed = new LinkedHashMap<>();
      deeds(ledger)
          .forEach(
              (name, deed) -> {
                StringBuilder who = new StringBuilder();
                for (Role role : Role.values()) {
                  who.append(mayDo(deed, role.name()) ? role.name().charAt(0) : '-');
                }
                allowed.put(name, who.toString());
                assertThrows(LedgerFault.class, () -> deed.by("a stranger"), name);
              });
      assertEquals(
          Map.of(
              "deposit", "C-IO",
              "run", "-TIO",
              "decision", "-TIO",
              "teardown", "-TIO",
              "limits", "--IO",
              "unlocked bench", "---O",
              "answers", "CTIO",
              "one customer's export", "C-IO",
              "whole export", "---O",
              "old books", "---O"),
          allowed);
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
    }
  }

  private static boolean mayDo(Deed deed, String who) {
    try {
      deed.by(who);
      return true;
    } catch (LedgerFault refused) {
      assertTrue(
          refused.getMessage().contains("may not") && refused.getMessage().contains("Ask "),
          refused.getMessage());
      return false;
    }
  }

  private Map<String, Deed> deeds(Ledger ledger) {
    Map<String, Deed> deeds = new LinkedHashMap<>();
    deeds.put(
        "deposit",
        who -> ledger.deposits().take("Orrel", Money.of("150", "EUR"), 30, "", TODAY, who));
    deeds.put(
        "run",
        who -> {
          RunBegun b = Samples.begun("run-" + who, TAG);
          ledger.runBegun(
              new RunBegun(
                  b.id(),
                  b.tag(),
                  b.purpose(),
                  b.number(),
                  b.source(),
                  b.started(),
                  who,
                  b.bench(),
                  b.fixture(),
                  b.profileId(),
                  b.capture()));
        });
    deeds.put("decision", who -> ledger.decided(TAG, Samples.rebuild(), who));
    deeds.put("teardown", who -> ledger.facts().confirm(TAG, "joints", "", who));
    deeds.put("unlocked bench", who -> ledger.benches().unlock("bench-1", "mended", false, who));
    deeds.put("limits", who -> ledger.signOffs().sign("profile of " + who, 2, "0".repeat(64), who));
    deeds.put(
        "answers",
        who -> ledger.answers(TAG, List.of(new CueAnswer("bosses", "6", who, Samples.MORNING))));
    deeds.put(
        "one customer's export",
        who -> ledger.custody().export(folder, Optional.of("Orrel Plant Hire"), false, who));
    deeds.put("whole export", who -> ledger.custody().export(folder, Optional.empty(), false, who));
    deeds.put(
        "old books",
        who ->
            ledger
                .books()
                .bring(
                    List.of(
                        new Books.Entry(
                            "number " + who, "x.csv", 2, Samples.core("", "7"), "", Map.of())),
                    who));
    return deeds;
  }
}
