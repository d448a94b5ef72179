package corewright.station.work;

import corewright.bench.life.Stage;
import corewright.bench.record.Core;
import corewright.bench.record.Dossier;
import corewright.profiles.Grade;
import corewright.reports.document.Label;
import corewright.reports.ledger.Found;
import corewright.reports.ledger.Ledger;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A core comes over the counter: once, with everything that is asked there, and never twice. */
public final class Intake {
  private static final List<String> MODES = List.of("repair", "test only", "exchange", "stock");

  private final Arrival arrival;
  private final Quotes quotes;
  private final Publishing publishing;
  private final Ledger ledger;
  private final LocalDate today;

  Intake(Arrival arrival, Quotes quotes, Publishing publishing, Ledger ledger, LocalDate today) {
    this.today = today;
    this.arrival = arrival;
    this.quotes = quotes;
    this.publishing = publishing;
    this.ledger = ledger;
  }

  /**
   * A unit that was here before under a serial.
   *
   * @param core as it was received last
   * @param visits how often it was
   */
  public record Known(Core core, int visits, Stage stage) {

    /** Whether it has left, so that its next visit can begin. */
    public boolean canReturn() {
      return stage == Stage.SHIPPED;
    }
  }

  /**
   * What is asked at the counter.
   *
   * @param unit tag of the known unit that comes back; empty for a new one
   * @param namesake a person says that it is another unit with a serial that is known
   * @param missing parts that are not there, each in words
   * @param quote number of the quote that it comes under; may be empty
   * @param promised until when the customer shall have it back; empty: nothing was said
   */
  public record Coming(
      Answers answers,
      Optional<String> unit,
      boolean namesake,
      Grade grade,
      List<String> missing,
      String quote,
      Optional<LocalDate> promised) {

    public Coming {
      missing = List.copyOf(missing);
    }
  }

  /** Units that are known under exactly this serial; none for a core without one. */
  public List<Known> known(String serial) {
    if (serial.isBlank()) {
      return List.of();
    }
    return ledger.find(serial).stream()
        .filter(f -> f.why().equals("serial"))
        .map(Found::tag)
        .map(this::unit)
        .toList();
  }

  /** A unit by its tag, as it was received last. */
  public Known unit(String tag) {
    Dossier dossier = ledger.dossier(tag);
    return new Known(
        dossier.core(),
        dossier.visit(),
        ledger.lives().standing(dossier.core().tag()).life().stage());
  }

  /**
   * Receives it, with its grade and under its quote.
   *
   * @return the tag
   * @throws Refused if its serial is known and nobody said whether it is that unit, if it is here,
   *     or if a day is promised that is over
   */
  public String receive(Coming coming) {
    Answers.Received as = coming.answers().received();
    requireMode(as.mode());
    coming.promised().ifPresent(day -> requireToCome(day, today));
    if (coming.unit().isEmpty() && !coming.namesake()) {
      known(as.serial()).stream().findFirst().ifPresent(Intake::refuse);
    }
    if (!coming.quote().isBlank()) {
      ledger
          .agreements()
          .free(coming.quote(), coming.unit().orElse("")); // before anything is written
    }
    String tag = arrival.receive(coming.answers(), coming.unit());
    String who = coming.answers().who();
    ledger.lives().grade(tag, coming.grade(), why(coming), who);
    coming.promised().ifPresent(day -> ledger.lives().promise(tag, day, who));
    if (!coming.quote().isBlank()) {
      quotes.arrived(coming.quote(), tag, who);
    }
    return tag;
  }

  /**
   * Refuses what is no way in which a core comes in.
   *
   * @param mode as {@code repair}
   */
  public static void requireMode(String mode) {
    if (!MODES.contains(mode)) {
      throw new Refused(
          mode.isBlank()
              ? "Nobody said how the core comes in"
              : "A core does not come in as '" + mode + "'",
          "Possible are " + String.join(", ", MODES) + ".");
    }
  }

  /**
   * Refuses to promise a day that is over.
   *
   * @throws Refused if it is
   */
  public static void requireToCome(LocalDate until, LocalDate today) {
    if (until.isBefore(today)) {
      throw new Refused(until + " is over; today is " + today, "Promise a day to come.");
    }
  }

  /** The tag that is tied to it, as a document; {@code size} is one of {@link Label#sizes()}. */
  public Path tag(String tag, String size, String who) {
    return publishing.write(Paperwork.coreTag(Label.of(size)), tag, who);
  }

  private static void refuse(Known known) {
    throw new Refused(
        "Serial " + known.core().serial() + " is known: " + known.core().tag(),
        known.canReturn()
            ? "Receive it as that unit, or say that this is another one with the same serial."
            : "It is "
                + known.stage().words()
                + " here. Say that this is another unit with the same serial, if it is.");
  }

  private static String why(Coming coming) {
    return coming.missing().isEmpty()
        ? coming.grade().words()
        : coming.grade().words() + "; missing: " + String.join(", ", coming.missing());
  }
}
