package corewright.station.demo;

import corewright.bench.life.Role;
import corewright.bench.record.Disposition;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.bench.run.Stop;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.profiles.Profile;
import corewright.reports.document.Refusal;
import corewright.station.work.Answers;
import corewright.station.work.AnswersFile;
import corewright.station.work.Outcome;
import corewright.station.work.Paperwork;
import corewright.station.work.RunIds;
import corewright.station.work.SecondPerson;
import corewright.station.work.Testing;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Takes eight cores of a sample shop the whole way: received, identified, tested on an emulated
 * bench, judged, decided, documented. One that goes to the rebuild queue because of its capacitors
 * is then rebuilt and tested as shipped.
 */
public final class Demo {
  private static final String OPERATOR = "I. Marsh";
  private static final String SECOND = "T. Okafor";

  /** Who works in the demonstration, with the role that their steps need. */
  public static final Map<String, Role> PEOPLE =
      Map.of(OPERATOR, Role.INSPECTOR, SECOND, Role.TECHNICIAN);

  /** Both are played here: there is nobody whose password could be asked for. */
  private static final SecondPerson STANDS_BY = SecondPerson.proved(SECOND);

  private static final String REBUILT = "4-dry-capacitors";

  private final Workshop workshop;
  private final Clock clock;
  private final DemoProgress progress;
  private final SplittableRandom random;

  /**
   * A demonstration in an open workshop.
   *
   * @param seed of everything that is drawn; the same seed gives the same samples
   */
  public Demo(Workshop workshop, Clock clock, long seed, DemoProgress progress) {
    this.workshop = workshop;
    this.clock = clock;
    this.progress = progress;
    this.random = new SplittableRandom(seed);
  }

  /**
   * What came of it.
   *
   * @param outcomes the eight cores, in order
   * @param warrantyReport of the one that was rebuilt and passed as shipped; empty if none did
   */
  public record Result(List<Outcome> outcomes, Optional<Path> warrantyReport) {
    public Result {
      outcomes = List.copyOf(outcomes);
    }
  }

  /** Runs all of it; the stop ends the current run in the safe state and the demonstration. */
  public Result run(Stop stop) {
    List<Outcome> outcomes = new ArrayList<>();
    Optional<Path> report = Optional.empty();
    for (DemoCore core : DemoCores.ALL) {
      if (stop.requested().isPresent()) {
        break;
      }
      SplittableRandom own = random.split();
      Outcome outcome = arrival(core, own, outcomes.size(), stop);
      outcomes.add(outcome);
      if (core.name().equals(REBUILT) && outcome.decision().disposition() == Disposition.REBUILD) {
        report = rebuild(outcome, own, stop);
      }
    }
    return new Result(outcomes, report);
  }

  private Outcome arrival(DemoCore core, SplittableRandom own, int index, Stop stop) {
    Answers answers = AnswersFile.read(answers(core), workshop.catalogue()::family);
    String tag = workshop.reception().receive(answers, Optional.empty());
    String family = answers.received().family();
    progress.core(index, DemoCores.ALL.size(), tag, family);
    DemoCore.OnTheBench unit = core.made().apply(new UnitDraw(own.nextLong()));
    progress.drawn(unit);
    RunRecord run = test(tag, family + "-arrival", unit, own, stop);
    return workshop.conclude(run, OPERATOR);
  }

  private Optional<Path> rebuild(Outcome arrived, SplittableRandom own, Stop stop) {
    String tag = arrived.core().tag();
    String family = arrived.core().family();
    workshop
        .ledger()
        .rebuilt(
            tag,
            List.of(
                "Output capacitors C1 to C4, whole bank, lot 2644-K",
                "Cover gasket and vent membrane",
                "Board cleaned of electrolyte, joints of the inductor reflowed"),
            SECOND);
    progress.rebuilt(tag, family);
    test(tag, family + "-ship", DemoCores.stiff(new UnitDraw(own.nextLong()), family), own, stop);
    try {
      return Optional.of(workshop.publishing().write(Paperwork.WARRANTY_REPORT, tag, OPERATOR));
    } catch (Refusal notEarned) {
      return Optional.empty(); // the record says whether it may leave, not the demonstration
    }
  }

  private RunRecord test(
      String tag, String profileId, DemoCore.OnTheBench unit, SplittableRandom own, Stop stop) {
    Profile profile = workshop.catalogue().profile(profileId);
    try (DemoBench bench = DemoBench.open(unit, own.nextLong(), clock)) {
      return workshop
          .testing()
          .run(
              new Testing.Request(
                  tag, profile.id(), bench.description(), OPERATOR, true, Optional.of(STANDS_BY)),
              bench.instruments(),
              new RunIds(bench.description().id(), own),
              progress.listener(),
              stop);
    }
  }

  /** The answers lie beside the ledger afterwards, as examples of how to write one's own. */
  private Path answers(DemoCore core) {
    Path folder = workshop.folders().root().resolve("answers");
    Path file = folder.resolve(core.resource());
    try (InputStream in = Demo.class.getResourceAsStream(core.resource())) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its resource " + core.resource());
      }
      Files.createDirectories(folder);
      Files.write(file, in.readAllBytes());
      return file;
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write " + file, refused);
    }
  }
}
