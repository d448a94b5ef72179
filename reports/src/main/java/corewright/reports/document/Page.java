package corewright.reports.document;

import corewright.bench.record.Decision;
import corewright.bench.record.RunRecord;
import corewright.bench.record.ShopDay;
import corewright.bench.record.Source;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.reports.chart.Words;
import corewright.reports.document.template.Templates;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.w3c.dom.Element;

/**
 * What every part of one page shares.
 *
 * @param zone where the shop is: a day is a day there
 * @param run the run that the page speaks of; empty where the unit was never tested
 * @param arrived for a page about a rebuilt unit: the run it arrived with
 * @param pictured whether the curves of the run are there to be drawn
 * @param head where the record ended when the page was made; may be empty
 * @param issue for a certificate: its number and code
 * @param templates what the shop made of its documents
 * @param answered who answers for the limits that the run was held against
 * @param room what there is room for
 */
record Page(
    Markup markup,
    Words words,
    Locale locale,
    Clean clean,
    Shop shop,
    LocalDate issued,
    ZoneId zone,
    Optional<RunRecord> run,
    Optional<RunRecord> arrived,
    Optional<Family> family,
    Optional<Profile> profile,
    boolean pictured,
    String head,
    Optional<Issue> issue,
    Templates templates,
    List<Answered> answered,
    Room room) {

  /** More than any tag or sentence of numbers has, and little enough for a page. */
  private static final int MOST_WHOLE = 340;

  /** ISO 4217 behind a number. */
  private static final Pattern MONEY = Pattern.compile("[0-9] [A-Z]{3}\\b");

  /** Marks the place above the foot that is stretched so that the foot stands at the bottom. */
  static final String GAP = "gap";

  /** Marks the end of everything. */
  static final String END = "end";

  /** A text from the bundle. */
  String say(String key, Object... values) {
    return Words.tied(words.get(key, values));
  }

  /** What a quantity is called on paper. */
  String quantity(Quantity quantity) {
    return say("quantity." + quantity.id());
  }

  /** A closed word, as a verdict or a disposition, as the bundle has it. */
  String word(Enum<?> constant) {
    return say("word." + constant.name());
  }

  /** A number as the region writes it. */
  String number(double value, int decimals) {
    return words.numerals().number(value, decimals);
  }

  /** A reading as the region writes it. */
  String withU(Measurement m) {
    return words.numerals().withU(m);
  }

  /** A sentence that the program put into the record: numbers as the region writes them. */
  String kept(String sentence, int most) {
    return foreign(words.numerals().sentence(sentence), most);
  }

  /**
   * What decided, but for what its sentence says already; and without the sums: what a unit is
   * worth to the shop stays in its record.
   */
  static List<String> reasons(Decision decision) {
    return decision.reasons().stream()
        .filter(r -> !MONEY.matcher(r).find() && !decision.sentence().contains(r))
        .toList();
  }

  /** Texts that are counted in the bundle: {@code key.1}, {@code key.2} and so on. */
  List<String> list(String key) {
    return IntStream.iterate(1, i -> words.has(key + "." + i), i -> i + 1)
        .mapToObj(i -> say(key + "." + i))
        .toList();
  }

  /** Foreign text, cut to its place. */
  String foreign(String text, int most) {
    return Words.tied(clean.text(text, (int) Math.ceil(most * room.text())));
  }

  /** The serial or label that stands on a unit, as {@link #foreign} else. */
  String onUnit(String text, int most) {
    return Words.tied(clean.asItStands(text, (int) Math.ceil(most * room.text())));
  }

  /** Foreign text that must stand in full: the unit's tag, and sentences made of the numbers. */
  String whole(String text) {
    return Words.tied(clean.text(text, MOST_WHOLE));
  }

  String date(LocalDate date) {
    return date.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale));
  }

  /** A moment as the day it was, at the shop. */
  String day(Instant moment) {
    return date(ShopDay.of(moment, zone));
  }

  /** Where the numbers come from; a unit that was never tested has none. */
  Optional<Source> source() {
    return run.map(RunRecord::source);
  }

  /** No unit was ever on a bench: nothing may look like a document that proves something. */
  boolean specimen() {
    return shop.invented() || source().filter(s -> s == Source.EMULATED).isPresent();
  }

  /** An empty element that {@link Sheet} finds by its name. */
  Element mark(String name) {
    Element mark = markup.tag("div." + name);
    mark.setAttribute("id", name);
    return mark;
  }
}
