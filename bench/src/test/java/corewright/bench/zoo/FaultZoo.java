package corewright.bench.zoo;

import corewright.bench.diagnose.Counting;
import corewright.bench.diagnose.Counting.Sample;
import corewright.bench.diagnose.Diagnostician;
import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import corewright.bench.judge.Judge;
import corewright.bench.judge.ReferenceCheck;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.bench.zoo.ZooBench.Judged;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Many emulated units through engine, drivers, meter, judge and diagnosis: faulty ones of every
 * group, severity, temperature and load; good ones; and good ones on a bench with a fault. Each
 * unit follows from seed and number alone, whichever thread takes it.
 */
final class FaultZoo {
  /** Draws within a combination before a more severe fault is taken. */
  private static final int TRIES = 3;

  /** Draws in all before a combination counts as one that the physics passes. */
  private static final int MOST_TRIES = 6;

  private final Catalogue catalogue = Catalogue.ofHome();
  private final ZooBench bench = new ZooBench(catalogue);
  private final Map<String, Judged> references = new ConcurrentHashMap<>();
  private final long seed;
  private final Crew crew;

  FaultZoo(long seed, Crew crew) {
    this.seed = seed;
    this.crew = crew;
  }

  /**
   * Units with a fault that the physics does not pass, of every combination in turn.
   *
   * @param pty how many of them are also tested over a pseudo-terminal
   */
  List<Seen> faulty(int count, int pty) {
    List<Cell> cells = Cell.every(new Random(seed), 3 * count);
    List<Seen> seen = new ArrayList<>();
    for (int from = 0; seen.size() < count && from < cells.size(); ) {
      int first = from;
      int missing = Math.min(count - seen.size(), cells.size() - from);
      List<Optional<Seen>> found = crew.each(missing, i -> unit(cells.get(first + i), first + i));
      found.forEach(each -> each.ifPresent(seen::add));
      from += missing;
    }
    for (int i = 0; i < Math.min(pty, seen.size()); i++) { // one at a time: the host's time counts
      int at = i * seen.size() / pty;
      seen.set(at, overPty(seen.get(at)));
    }
    return seen;
  }

  private Optional<Seen> unit(Cell cell, int number) {
    Random random = new Random(seed * 1_000_003 + number);
    for (int i = 0; i < MOST_TRIES; i++) {
      Animal animal = Animal.faulty(catalogue, cell, i >= TRIES, random);
      Verdict truth = animal.truth();
      if (truth != Verdict.PASS) {
        return Optional.of(see(animal, truth, bench.inMemory(animal.setup(), animal.profile())));
      }
    }
    return Optional.empty();
  }

  private static Seen see(Animal animal, Verdict truth, Judged judged) {
    Judgement judgement = judged.judgement();
    Diagnosis diagnosis =
        Diagnostician.diagnose(judged.run(), animal.family(), animal.profile(), judgement, torn());
    return new Seen(
        animal,
        truth,
        judgement.verdict().orElse(Verdict.INCOMPLETE),
        judgement.reasons(),
        animal.fault().flatMap(Counting::group),
        Optional.of(diagnosis).filter(d -> !d.candidates().isEmpty()),
        Optional.empty(),
        new Sample(animal.fault(), animal.family(), animal.profile(), judged.run(), judgement));
  }

  private Seen overPty(Seen seen) {
    Judged judged = bench.overPty(seen.animal().setup(), seen.animal().profile());
    return new Seen(
        seen.animal(),
        seen.truth(),
        seen.verdict(),
        seen.reasons(),
        seen.group(),
        seen.diagnosis(),
        Optional.of(judged.judgement().verdict().orElse(Verdict.INCOMPLETE)),
        seen.sample());
  }

  /** As a shop would hand in after as many teardowns of each group that fails here. */
  private static Priors torn() {
    Map<Group, Integer> confirmed = new EnumMap<>(Group.class);
    Arrays.stream(UnitFault.values())
        .flatMap(f -> Counting.group(f).stream())
        .forEach(g -> confirmed.merge(g, 30, Integer::sum));
    return Priors.ofTeardowns(confirmed);
  }

  /** Healthy units that the physics passes. */
  List<Seen> good(int count) {
    return crew.each(
        count,
        i -> {
          Random random = new Random(seed * 1_000_003 + 1_000_000 + i);
          Animal animal = Animal.healthy(catalogue, random);
          while (animal.truth() != Verdict.PASS) {
            animal = Animal.healthy(catalogue, random);
          }
          return see(animal, Verdict.PASS, bench.inMemory(animal.setup(), animal.profile()));
        });
  }

  /**
   * Healthy units on benches with a fault. What the run itself does not give away, the reference
   * unit does that is tried on the same bench.
   */
  List<Seen> benchFaults(int count) {
    BenchFault[] faults = BenchFault.values();
    return crew.each(
        count,
        i -> {
          Random random = new Random(seed * 1_000_003 + 2_000_000 + i);
          BenchFault fault = faults[i % faults.length];
          Animal sound = Animal.healthy(catalogue, random);
          Animal animal = sound.on(fault.in(sound.harness(), random.nextDouble()), fault.name());
          Judged judged = bench.inMemory(animal.setup(), animal.profile());
          Seen seen = see(animal, Verdict.PASS, judged);
          return seen.bad() ? see(animal, Verdict.PASS, doubted(animal, judged)) : seen;
        });
  }

  private Judged doubted(Animal animal, Judged judged) {
    return new Judged(
        judged.run(),
        judged.end(),
        Judge.judge(
            judged.run(), animal.family(), animal.profile(), judged.end(), reference(animal)));
  }

  /** What the shop's known good unit shows on this bench, against its own record. */
  private List<String> reference(Animal animal) {
    UnitParameters known = new UnitDraw(7).healthy(animal.family().id());
    Judged record =
        references.computeIfAbsent(
            animal.profile().id() + animal.harness().loadMode(),
            id -> {
              Setup proved = Setup.of(known, 7);
              return bench.inMemory(
                  proved.on(proved.harness().with(animal.harness().loadMode())), animal.profile());
            });
    Judged now = bench.inMemory(Setup.of(known, 8).on(animal.harness()), animal.profile());
    return ReferenceCheck.doubts(record.run(), now.run(), animal.family());
  }
}
