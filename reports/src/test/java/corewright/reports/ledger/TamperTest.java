package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.PublicKey;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A signed ledger in the hands of somebody who may write to its file but has no key of the shop.
 */
class TamperTest {
  private static final int EVENTS = 6;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final SigningKey KEY = SigningKey.make();

  @TempDir private Path folder;
  private Path file;
  private Raw raw;
  private Head end = new Head("", 0, "");

  @BeforeEach
  void sixSignedEvents() throws Exception {
    Path written = folder.resolve("written.db");
    String tag = Tags.of(1);
    try (Ledger ledger = Ledger.open(written, "bench-1", CLOCK, KEY)) {
      ledger.receive(Samples.core(tag, "114"));
      ledger.answers(tag, Samples.answers());
      ledger.identified(tag, Samples.identification(), "H. Oduya");
      ledger.runEnded(Samples.run("a", tag));
      ledger.decided(tag, Samples.pending(), "H. Oduya");
      ledger.rebuilt(tag, List.of("Output capacitors"), "M. Reyes");
      end = ledger.head().orElseThrow();
    }
    file = folder.resolve("ledger.db");
    Files.copy(written, file, StandardCopyOption.REPLACE_EXISTING);
    raw = new Raw(file);
  }

  @Test
  void whatNobodyTouchedIsWholeAndSigned() {
    Verification found = verify(List.of(KEY.publicKey()), List.of(end, Head.of(end.printed())));
    assertTrue(found.whole(), found.broken().toString());
    assertEquals(EVENTS, found.signed());
    assertEquals(List.of(KEY.id()), found.keys());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "chain",
        "at",
        "who",
        "kind",
        "tag",
        "body",
        "previous",
        "hash",
        "key_id",
        "signature"
      })
  void oneByteChangedInAnySignedEventIsFoundAndTheEventNamed(String column) throws Exception {
    for (int event = 1; event <= EVENTS; event++) {
      restore();
      int length = raw.lengthOf(column, event);
      int at = 1 + Math.floorMod(31 * event + column.hashCode(), length);
      raw.tamper(
          "UPDATE event SET %1$s = substr(%1$s, 1, %2$d) || char(unicode(substr(%1$s, %2$d + 1, 1)) + 1) || substr(%1$s, %2$d + 2) WHERE sequence = %3$d"
              .formatted(column, at - 1, event));
      Verification found = verify(List.of(), List.of());
      assertFalse(found.whole(), column + " of " + event);
      // an event whose chain was renamed is missed in its own
      String named = column.equals("chain") ? event + " to " + event : String.valueOf(event);
      boolean lastRenamed = column.equals("chain") && event == EVENTS;
      assertTrue(
          lastRenamed
              ? found.broken().stream().anyMatch(b -> b.contains("bench-1:6:"))
              : found.broken().stream().anyMatch(b -> b.startsWith("event bench-1:" + named)),
          column + ": " + found.broken());
      if (!column.equals("chain")) {
        assertTrue(
            found.broken().get(0).startsWith("event bench-1:" + event), found.broken().toString());
      }
    }
  }

  @Test
  void oneEventDroppedAnywhereIsFoundAndNamed() throws Exception {
    for (int event = 1; event <= EVENTS; event++) {
      restore();
      raw.tamper("DELETE FROM event WHERE sequence = " + event);
      List<String> broken = verify(List.of(), List.of()).broken();
      assertTrue(
          broken.get(0).startsWith("event bench-1:" + event + " to " + event + ": missing")
              || (event == EVENTS && broken.get(0).contains("written up to bench-1:6:")),
          broken.toString());
    }
  }

  @Test
  void twoNeighboursSwappedAnywhereAreFoundAndTheFirstNamed() throws Exception {
    for (int event = 1; event < EVENTS; event++) {
      restore();
      raw.tamper(
          ("UPDATE event SET position = 1000 WHERE sequence = %1$d;"
                  + "UPDATE event SET position = %1$d WHERE sequence = %2$d;"
                  + "UPDATE event SET position = %2$d WHERE sequence = %1$d")
              .formatted(event, event + 1));
      List<String> broken = verify(List.of(), List.of()).broken();
      assertTrue(
          broken.get(0).startsWith("event bench-1:" + event + " to " + event), broken.toString());
    }
  }

  @Test
  void aRewrittenHistoryWithFreshHashesHasTheWrongSignatures() {
    raw.rewriteFrom(3, event -> event.replace("0.972", "0.999"));
    List<String> broken = verify(List.of(), List.of()).broken();
    assertEquals("event bench-1:3: its signature is wrong", broken.get(0));
    assertEquals(4, broken.size(), broken.toString());
  }

  @Test
  void aHistoryRewrittenAndSignedAnewIsFoundByTheShopsKey() {
    SigningKey forger = SigningKey.make();
    raw.signAnew(forger);
    assertTrue(verify(List.of(), List.of()).whole(), "the file alone cannot tell");
    List<String> broken = verify(List.of(KEY.publicKey()), List.of()).broken();
    assertEquals(
        "event bench-1:1: is signed with key " + forger.id() + ", which is none of those given",
        broken.get(0));
  }

  @Test
  void signaturesThatWereTakenAwayAreMissed() {
    raw.tamper("UPDATE event SET signature = '', key_id = '' WHERE sequence = 4");
    assertEquals("event bench-1:4: is not signed", verify(List.of(), List.of()).broken().get(0));
    raw.tamper("UPDATE event SET signature = '', key_id = ''");
    assertEquals(0, verify(List.of(), List.of()).signed());
    assertEquals(
        "event bench-1:1: is not signed",
        verify(List.of(KEY.publicKey()), List.of()).broken().get(0));
  }

  @Test
  void aTailCutOffWithItsTracesIsFoundByAPrintedHead() {
    raw.tamper(
        "DELETE FROM event WHERE sequence > 4;"
            + "UPDATE chain SET sequence = 4, hash = (SELECT hash FROM event WHERE sequence = 4)");
    assertTrue(verify(List.of(), List.of()).whole(), "the file alone cannot tell");
    Head printed = Head.of(end.printed());
    assertEquals(
        List.of("the chain bench-1 ends at 4, but held " + printed + ": cut off"),
        verify(List.of(), List.of(printed)).broken());
  }

  @Test
  void anotherEventInThePlaceOfAPrintedHeadIsFound() {
    Head other = new Head("bench-1", 5, "0123456789abcdef");
    assertEquals(
        List.of("event bench-1:5: is not the one named " + other),
        verify(List.of(), List.of(other)).broken());
  }

  @Test
  void aTextThatARunWasHeldAgainstIsMissed() {
    raw.tamper("DELETE FROM content WHERE sha256 = (SELECT min(sha256) FROM content)");
    List<String> broken = verify(List.of(), List.of()).broken();
    assertTrue(broken.get(0).startsWith("event bench-1:4: its text "), broken.toString());
  }

  @Test
  void eventsFromBeforeTheShopHadAKeyAreCountedNotBroken() {
    try (Ledger unsigned =
        Ledger.open(Urls.of(folder.resolve("old.db")), "bench-1", CLOCK, Optional.empty())) {
      unsigned.receive(Samples.core(Tags.of(1), "114"));
    }
    try (Ledger ledger = Ledger.open(folder.resolve("old.db"), "bench-1", CLOCK, KEY)) {
      ledger.decided(Tags.of(1), Samples.pending(), "H. Oduya");
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
      assertEquals(2, found.events());
      assertEquals(1, found.signed());
    }
  }

  private void restore() throws Exception {
    Files.copy(folder.resolve("written.db"), file, StandardCopyOption.REPLACE_EXISTING);
    Files.deleteIfExists(folder.resolve("ledger.db-wal"));
    Files.deleteIfExists(folder.resolve("ledger.db-shm"));
  }

  private Verification verify(List<PublicKey> keys, List<Head> heads) {
    return Ledger.verify(file, new Expectations(keys, heads));
  }
}
