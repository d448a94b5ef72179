package corewright.station.work;

import corewright.bench.identify.Consequence;
import corewright.bench.identify.Identifier;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.reports.ledger.Ledger;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What people see of a unit, one answer at a time. Each is in the ledger, with the build that it
 * makes, before the next is asked for: nothing that was typed is lost.
 */
public final class Looking {
  private final Catalogue catalogue;
  private final Ledger ledger;
  private final FileStore files;
  private final Clock clock;

  Looking(Catalogue catalogue, Ledger ledger, FileStore files, Clock clock) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.files = files;
    this.clock = clock;
  }

  /**
   * Where a unit stands.
   *
   * @param identification what all answers so far make it
   * @param next the cue to look at next; empty when no answer would change what is done with it
   */
  public record Standing(
      Family family, Dossier dossier, Identification identification, Optional<Cue> next) {

    /** What each answer to a cue would make of the unit. */
    public List<Consequence> consequences(Cue cue) {
      return Identifier.consequences(family, dossier.answers(), Map.of(), cue);
    }
  }

  /** All that was answered about a unit so far, weighed by the key as it is now. */
  public Standing standing(String tag) {
    Dossier dossier = ledger.dossier(tag);
    Family family = catalogue.family(dossier.core().family());
    return new Standing(
        family,
        dossier,
        Identifier.identify(family, dossier.answers()),
        Identifier.next(family, dossier.answers(), Map.of()));
  }

  /** Saves one answer. */
  public void save(String tag, String id, Given given, String who) {
    save(tag, Map.of(id, given), who);
  }

  /** Saves answers, and which build they make of the unit. */
  public void save(String tag, Map<String, Given> answers, String who) {
    if (answers.isEmpty()) {
      return;
    }
    ledger.answers(tag, seen(tag, answers, who, clock.wall()));
    Standing standing = standing(tag);
    if (tells(standing.family(), standing.dossier().answers(), standing.identification())) {
      ledger.identified(tag, standing.identification(), who);
    }
  }

  /** Whether there is anything to say of the build: a look at it, or a family with one alone. */
  static boolean tells(Family family, List<CueAnswer> answers, Identification identification) {
    Set<String> cues = family.cues().stream().map(Cue::id).collect(Collectors.toSet());
    return identification.band() != Identification.Band.UNCERTAIN
        || answers.stream().map(CueAnswer::cue).anyMatch(cues::contains);
  }

  /** Answers as the record keeps them; photographs are copied beside the ledger. */
  List<CueAnswer> seen(String tag, Map<String, Given> answers, String who, Instant when) {
    List<CueAnswer> seen = new ArrayList<>();
    answers.forEach(
        (id, given) ->
            seen.add(
                new CueAnswer(
                    id,
                    given.answer(),
                    who,
                    when,
                    given.read(),
                    given.photo().map(p -> photo(tag, p, id, who)).orElse(""))));
    return seen;
  }

  private String photo(String tag, Path file, String shows, String who) {
    return files.attach(tag, file, "photo", shows, who).sha256();
  }
}
