package corewright.station.work.books;

import corewright.profiles.Catalogue;
import corewright.reports.ledger.Books;
import corewright.reports.ledger.Books.Known;
import corewright.reports.ledger.Ledger;
import corewright.station.work.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Brings a shop's old spreadsheet: first what would happen, then, when somebody agrees, it. */
public final class OldBooks {
  private final Catalogue catalogue;
  private final Ledger ledger;

  public OldBooks(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /**
   * Reads a spreadsheet that was saved as CSV. Nothing is written.
   *
   * @param mapping how it is read; empty: as it seems to be
   * @throws Refused if there is no such file, or not one row in it
   */
  public Proposal propose(Path file, Optional<Mapping> mapping) {
    String text = SheetText.decode(bytes(file));
    if (text.isBlank() || text.indexOf('\0') >= 0) {
      throw new Refused(
          file + (text.isBlank() ? " is empty" : " is no text"),
          "Save the sheet as CSV, with its header.");
    }
    List<String> families = catalogue.familyIds();
    Mapping used = mapping.orElseGet(() -> Guess.of(text, families));
    List<SheetText.Line> lines = SheetText.lines(text, used.separator());
    if (lines.size() < 2) {
      throw new Refused(
          file + " has no row under a header", "Save the sheet as CSV, with its header.");
    }
    List<String> header = lines.get(0).cells();
    refuseMissing(used, header, file);
    List<Books.Entry> read = new ArrayList<>();
    List<Row.Refusal> refused = new ArrayList<>();
    for (SheetText.Line line : lines.subList(1, lines.size())) {
      Row row =
          Row.of(line, header, used, new TreeSet<>(families), String.valueOf(file.getFileName()));
      if (row instanceof Row.Read good) {
        read.add(good.entry());
      } else if (row instanceof Row.Bad bad) {
        refused.add(bad.refusal());
      }
    }
    List<String> unused = new ArrayList<>(header);
    unused.removeAll(used.columns().values());
    return sorted(file, used, unused, read, refused);
  }

  /**
   * Brings every row of a proposal that is not there yet; all of them or none.
   *
   * @return their tags, in the order of the rows
   */
  public List<String> bring(Proposal accepted, String who) {
    return ledger.books().bring(accepted.fresh(), who);
  }

  private Proposal sorted(
      Path file,
      Mapping mapping,
      List<String> unused,
      List<Books.Entry> read,
      List<Row.Refusal> refused) {
    Map<String, Known> known = ledger.books().known(read);
    Map<String, Integer> seen = new HashMap<>();
    List<Books.Entry> fresh = new ArrayList<>();
    Map<String, Books.Entry> before = new LinkedHashMap<>();
    for (Books.Entry entry : read) {
      Known brought = known.get(entry.key());
      Integer first = seen.putIfAbsent(entry.key(), entry.line());
      if (first != null) {
        refused.add(
            new Row.Refusal(
                entry.line(),
                entry.key() + " stands in line " + first + " already",
                "Give one of the two another number"));
      } else if (brought == null) {
        fresh.add(entry);
      } else if (brought.same()) {
        before.put(brought.tag(), entry);
      } else {
        refused.add(
            new Row.Refusal(
                entry.line(),
                entry.key() + " was brought before as " + brought.tag() + " and said otherwise",
                "What was brought stays; attach a note to " + brought.tag()));
      }
    }
    refused.sort((a, b) -> Integer.compare(a.line(), b.line()));
    return new Proposal(file.toString(), mapping, unused, fresh, before, refused);
  }

  private static void refuseMissing(Mapping mapping, List<String> header, Path file) {
    Set<String> missing = new TreeSet<>(mapping.columns().values());
    header.forEach(missing::remove);
    if (!missing.isEmpty()) {
      throw new Refused(
          file + " has no column " + String.join(", ", missing),
          "Its columns are: " + String.join(", ", header));
    }
    if (!mapping.columns().containsKey(Field.RECEIVED)
        || !mapping.columns().containsKey(Field.FAMILY)) {
      throw new Refused(
          "Nothing says which column of " + file + " is the day of reception, or the family",
          "Give --mapping; --save writes one to begin with. Its columns are: "
              + String.join(", ", header));
    }
  }

  private static byte[] bytes(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new Refused("There is no file " + file, "Name the sheet that was saved as CSV.");
    }
    try {
      return Files.readAllBytes(file);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot read " + file, refused);
    }
  }
}
