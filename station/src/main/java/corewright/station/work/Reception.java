package corewright.station.work;

import corewright.bench.identify.BenchCues;
import corewright.bench.identify.Identifier;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.ledger.Ledger;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Receives a core: its tag, what was seen, which build it is. */
public final class Reception {
  private final Catalogue catalogue;
  private final Ledger ledger;
  private final Looking looking;
  private final Clock clock;

  Reception(Catalogue catalogue, Ledger ledger, Looking looking, Clock clock) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.looking = looking;
    this.clock = clock;
  }

  /**
   * Writes down the core, what people saw, and which build that makes it.
   *
   * @param tag the shop's tag; empty: the next free one
   * @return the tag
   */
  public String receive(Answers answers, Optional<String> tag) {
    Family family = catalogue.family(answers.received().family());
    String given = tag.orElseGet(ledger::nextTag);
    Answers.Received as = answers.received();
    ledger.receive(
        new Core(
            given,
            family.id(),
            as.serial(),
            as.label(),
            as.customer(),
            as.mode(),
            as.complaint(),
            clock.wall(),
            answers.who()));
    List<CueAnswer> seen = seen(given, answers);
    ledger.answers(given, seen);
    Identification identification = Identifier.identify(family, seen);
    if (Looking.tells(family, seen, identification)) {
      ledger.identified(given, identification, answers.who());
    }
    return given;
  }

  /** Weighs what a run shows of the build, where it shows anything. */
  void seenByBench(RunRecord run, String who) {
    Family family = catalogue.family(ledger.dossier(run.tag()).core().family());
    List<CueAnswer> shown =
        run.measured()
            .map(m -> BenchCues.of(family, m, "bench " + run.bench(), clock.wall()))
            .orElse(List.of());
    if (!shown.isEmpty()) {
      ledger.answers(run.tag(), shown, who);
      List<CueAnswer> all = ledger.dossier(run.tag()).answers();
      ledger.identified(run.tag(), Identifier.identify(family, all), who);
    }
  }

  /** Adds what a file says of a unit that is here already, on the same visit. */
  public void add(String tag, Answers answers) {
    Family family = catalogue.family(ledger.dossier(tag).core().family());
    if (!family.id().equals(answers.received().family())) {
      throw new Refused(
          "Unit "
              + tag
              + " is of family "
              + family.id()
              + ", and the answers are for "
              + answers.received().family(),
          "Name the unit that the answers are about.");
    }
    ledger.answers(tag, seen(tag, answers));
    ledger.identified(
        tag, Identifier.identify(family, ledger.dossier(tag).answers()), answers.who());
  }

  private List<CueAnswer> seen(String tag, Answers answers) {
    Instant now = clock.wall();
    List<CueAnswer> seen = new ArrayList<>();
    seen.addAll(looking.seen(tag, answers.cues(), answers.who(), now));
    seen.addAll(looking.seen(tag, answers.checklist(), answers.who(), now));
    seen.addAll(looking.seen(tag, answers.symptoms(), answers.who(), now));
    answers
        .agreed()
        .forEach((n, a) -> seen.add(new CueAnswer(Deciding.AGREED + n, a, answers.who(), now)));
    return seen;
  }
}
