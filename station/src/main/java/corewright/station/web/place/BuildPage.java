package corewright.station.web.place;

import corewright.bench.identify.Consequence;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.measures.Chance;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.profiles.Variant;
import corewright.station.work.Looking;
import corewright.station.work.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Which build a unit is, as the page shows it.
 *
 * @param verdict where the question stands, a sentence
 * @param fate whether that build can be rebuilt and why, a sentence
 * @param ask what to look at; empty where no answer would change what is done
 * @param said what was seen so far, the latest first
 * @param history what may have happened to it, each a sentence
 */
public record BuildPage(
    Unit unit,
    String verdict,
    String fate,
    Optional<Ask> ask,
    List<Candidate> candidates,
    List<String> conflicts,
    List<String> history,
    List<Said> said) {

  /** A past that is less probable than this is not worth a line. */
  private static final int BAR = 300;

  /**
   * One question.
   *
   * @param where which part of the drawing it points at
   * @param typed what to type, for a number or a date; empty where an answer is chosen
   * @param before what was answered before; empty where it is asked for the first time
   * @param worth what it tells about, how often it is right, and how long it takes
   */
  public record Ask(
      String cue,
      String question,
      String look,
      String where,
      String typed,
      String before,
      String worth,
      List<Option> options) {}

  /**
   * One answer.
   *
   * @param then what it would change, a clause
   */
  public record Option(String answer, String then) {}

  /**
   * One build.
   *
   * @param bar its share of a bar, of 300
   */
  public record Candidate(String id, String title, String chance, int bar) {}

  /**
   * What somebody saw.
   *
   * @param photo hash of the photograph; empty where there is none
   */
  public record Said(String cue, String question, String words, String who, String photo) {}

  static BuildPage of(Workshop workshop, Looking.Standing standing, Optional<Cue> asked) {
    Identification id = standing.identification();
    return new BuildPage(
        Unit.of(workshop, standing.dossier()),
        verdict(standing.family(), id),
        standing.family().variant(id.variant()).map(BuildPage::fate).orElse(""),
        asked.map(cue -> ask(standing, cue)),
        candidates(standing.family(), id),
        id.conflicts().stream().map(c -> plainly(standing.family(), c)).toList(),
        history(id),
        said(standing));
  }

  private static String verdict(Family family, Identification id) {
    String title = family.variant(id.variant()).map(Variant::title).orElse("");
    String build = id.variant() + (title.isEmpty() ? "" : ", " + title);
    return switch (id.band()) {
      case IDENTIFIED -> "It is " + build;
      case PROBABLE -> "It is probably " + build;
      case UNCERTAIN -> "Not known yet; nearest is " + build;
    };
  }

  /** Cues by words, not by the names that they have in the family's file. */
  private static String plainly(Family family, String sentence) {
    String plain = sentence;
    for (Cue cue : family.cues()) {
      String words = cue.id().replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
      plain = plain.replace("'" + cue.id() + "'", words);
    }
    return plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
  }

  private static String fate(Variant variant) {
    return "That build "
        + can(variant.serviceable())
        + ": "
        + variant.why()
        + (variant.kit().isEmpty() ? "." : ". Its kit is " + variant.kit() + ".");
  }

  private static String can(Variant.Serviceable serviceable) {
    return switch (serviceable) {
      case YES -> "can be rebuilt";
      case CONDITIONAL -> "can be rebuilt in part";
      case NO -> "cannot be rebuilt";
    };
  }

  private static Ask ask(Looking.Standing standing, Cue cue) {
    return new Ask(
        cue.id(),
        cue.question(),
        cue.look() + read(cue, standing.dossier().core().label()),
        where(cue),
        typed(cue),
        standing.dossier().answers().stream()
            .filter(a -> a.cue().equals(cue.id()))
            .findFirst()
            .map(CueAnswer::words)
            .orElse(""),
        String.format(
            Locale.ROOT,
            "It tells about the %s, is right %.0f times in 100, and takes about %.0f s.",
            cue.travelsWith().name().toLowerCase(Locale.ROOT),
            100 * cue.reliability(),
            cue.cost_s()),
        standing.consequences(cue).stream().map(BuildPage::option).toList());
  }

  /** What was read at the counter is not asked again without saying so. */
  private static String read(Cue cue, String label) {
    return cue.travelsWith() == Cue.TravelsWith.LABEL && !label.isEmpty()
        ? " At the counter the label was read as: " + label + "."
        : "";
  }

  /** What the bench reads is chosen: nobody types what an instrument knows better. */
  private static String typed(Cue cue) {
    if (cue.scale().isEmpty() || cue.travelsWith() == Cue.TravelsWith.BENCH) {
      return "";
    }
    return cue.scale().get().isDate()
        ? "The code, as it stands"
        : "The number, in " + cue.scale().get().unit();
  }

  private static String where(Cue cue) {
    boolean weighed = cue.scale().isPresent() && cue.scale().get().unit().equals("g");
    return weighed ? "scale" : cue.travelsWith().name().toLowerCase(Locale.ROOT);
  }

  private static Option option(Consequence c) {
    return new Option(
        c.answer(),
        "then " + c.variant() + " at " + Chance.words(c.posterior()) + ", " + can(c.serviceable()));
  }

  private static List<Candidate> candidates(Family family, Identification id) {
    return id.posteriors().entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .map(
            e ->
                new Candidate(
                    e.getKey(),
                    family.variant(e.getKey()).map(Variant::title).orElse(""),
                    Chance.words(e.getValue()),
                    (int) Math.round(BAR * e.getValue())))
        .toList();
  }

  private static List<String> history(Identification id) {
    return id.history().stream()
        .filter(Hypothesis::worthSaying)
        .map(h -> h.sentence() + " " + h.handling())
        .toList();
  }

  private static List<Said> said(Looking.Standing standing) {
    List<Said> said = new ArrayList<>();
    for (CueAnswer a : standing.dossier().answers()) {
      standing.family().cues().stream()
          .filter(c -> c.id().equals(a.cue()))
          .findFirst()
          .ifPresent(
              c -> said.add(0, new Said(c.id(), c.question(), a.words(), a.who(), a.photo())));
    }
    return said;
  }
}
