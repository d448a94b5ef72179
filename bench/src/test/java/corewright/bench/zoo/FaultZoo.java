package corewright.bench.zoo;

import corewright.bench.diagnose.Counting;
import corewright.bench.diagnose.Diagnostician;
import corewright.bench.diagnose.Group;
import corewright.bench.diagnose.Priors;
import corewright.bench.judge.Judge;
import corewright.bench.judge.ReferenceCheck;
import corewright.bench.record.Diagnosis;
import corewright.bench.record.Diagnosis.Candidate;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.bench.zoo.ZooBench.Judged;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.UnitDraw;
import corewright.fixtures.emulate.unit.UnitFault;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Many emulated units through engine, drivers, meter, judge and diagnosis: faulty ones of every
 * group, severity, temperature and profile; good ones; and good ones on a bench with a fault.
 */
final class FaultZoo {
  private static final List<String> FAMILIES = List.of("sd48", "ie110", "pv65");
  private static final Set<Verdict> BAD = Set.of(Verdict.FAIL, Verdict.MARGINAL, Verdict.UNSAFE);

  private final Catalogue catalogue = Catalogue.ofHome();
  private final ZooBench bench = new ZooBench(catalogue);
  private final Random random;
  private final boolean tell;
  private final Calibration calibration = new Calibration();
  private final Map<String, Judged> references = new HashMap<>();

  private int faulty;
  private int passed;
  private int good;
  private int goodFailed;
  private int benchFaults;
  private int blamed;
  private int named;
  private int right;
  private int overPty;
  private int otherwise;

  FaultZoo(long seed, boolean tell) {
    random = new Random(seed);
    this.tell = tell;
  }

  /** Units with a fault that the physics does not pass, in turn of every kind. */
  FaultZoo faulty(int count, int pty) {
    List<UnitFault> faults =
        Arrays.stream(UnitFault.values()).filter(f -> Counting.group(f).isPresent()).toList();
    for (int i = 0; faulty < count && i < 60 * count; i++) {
      UnitFault fault = faults.get(i % faults.size());
      Animal animal =
          Animal.draw(
              catalogue,
              FAMILIES.get(i / faults.size() % FAMILIES.size()),
              Optional.of(fault),
              random);
      Verdict truth = animal.truth();
      if (truth == Verdict.PASS || (truth == Verdict.MARGINAL && i % 4 != 0)) {
        continue; // severe enough to be wrong; a quarter of what lies in the marginal band
      }
      faulty++;
      Judged judged = bench.inMemory(animal.setup(), animal.profile());
      if (overPty < pty) {
        compare(animal, judged);
      }
      see(animal, truth, judged);
    }
    return this;
  }

  private void compare(Animal animal, Judged judged) {
    overPty++;
    Judgement other = bench.overPty(animal.setup(), animal.profile()).judgement();
    if (!other.verdict().equals(judged.judgement().verdict())) {
      otherwise++;
      tell("over the pty " + other.verdict() + " of " + animal.what());
    }
  }

  private void see(Animal animal, Verdict truth, Judged judged) {
    Verdict verdict = judged.judgement().verdict().orElse(Verdict.INCOMPLETE);
    if (!BAD.contains(verdict)) {
      if (truth != Verdict.MARGINAL) {
        passed++;
        tell(verdict + " " + animal.what() + " " + judged.judgement().reasons());
      }
      return;
    }
    Diagnosis diagnosis =
        Diagnostician.diagnose(
            judged.run(), animal.family(), animal.profile(), judged.judgement(), torn());
    Group group = animal.fault().flatMap(Counting::group).orElseThrow();
    diagnosis
        .candidates()
        .forEach(c -> calibration.add(c.probability(), c.group().equals(group.name())));
    Optional<Candidate> said = diagnosis.named();
    if (said.isEmpty()) {
      tell("not determined " + animal.what() + " " + short_(diagnosis));
      return;
    }
    named++;
    if (said.get().group().equals(group.name())) {
      right++;
    } else {
      tell("wrong " + animal.what() + " " + short_(diagnosis) + " " + said.get().evidenceFor());
    }
  }

  private static List<String> short_(Diagnosis diagnosis) {
    return diagnosis.candidates().stream()
        .map(c -> c.group() + String.format(Locale.ROOT, " %.2f", c.probability()))
        .toList();
  }

  /** As a shop would hand in after as many teardowns of each group that fails here. */
  private static Priors torn() {
    Map<Group, Integer> confirmed = new EnumMap<>(Group.class);
    Arrays.stream(UnitFault.values())
        .filter(f -> f != UnitFault.INPUT_DRY)
        .flatMap(f -> Counting.group(f).stream())
        .forEach(g -> confirmed.merge(g, 30, Integer::sum));
    return Priors.ofTeardowns(confirmed);
  }

  /** Healthy units that the physics passes. */
  FaultZoo good(int count) {
    while (good < count) {
      String family = FAMILIES.get(good % FAMILIES.size());
      Animal animal = Animal.draw(catalogue, family, Optional.empty(), random);
      if (animal.truth() != Verdict.PASS) {
        tell("the physics does not pass a healthy " + family);
        continue;
      }
      good++;
      Judgement judged = bench.inMemory(animal.setup(), animal.profile()).judgement();
      if (judged.verdict().filter(v -> v == Verdict.FAIL || v == Verdict.UNSAFE).isPresent()) {
        goodFailed++;
        tell("failed " + animal.what() + " " + judged.reasons());
      }
    }
    return this;
  }

  /**
   * Healthy units on benches with a fault. What the run itself does not give away, the reference
   * unit does that was tried on the same bench before.
   */
  FaultZoo benchFaults(int count) {
    BenchFault[] faults = BenchFault.values();
    while (benchFaults < count) {
      BenchFault fault = faults[benchFaults % faults.length];
      String family = FAMILIES.get(benchFaults / faults.length % FAMILIES.size());
      Animal sound = Animal.draw(catalogue, family, Optional.empty(), random);
      Harness broken = fault.in(sound.harness(), random.nextDouble());
      Animal animal = sound.on(broken, fault.name());
      benchFaults++;
      Judged judged = bench.inMemory(animal.setup(), animal.profile());
      Judgement judgement = judged.judgement();
      if (judgement.verdict().filter(BAD::contains).isPresent()) {
        judgement =
            Judge.judge(
                judged.run(), animal.family(), animal.profile(), judged.end(), reference(animal));
      }
      if (judgement.verdict().filter(BAD::contains).isPresent()) {
        blamed++;
        tell("blamed " + animal.what() + " " + judgement.reasons());
      }
    }
    return this;
  }

  /** What the shop's known good unit shows on this bench, against its own record. */
  private List<String> reference(Animal animal) {
    UnitParameters known = new UnitDraw(7).healthy(animal.family().id());
    Judged record =
        references.computeIfAbsent(
            animal.profile().id(), id -> bench.inMemory(Setup.of(known, 7), animal.profile()));
    Judged now = bench.inMemory(Setup.of(known, 8).on(animal.harness()), animal.profile());
    return ReferenceCheck.doubts(record.run(), now.run(), animal.family());
  }

  int passed() {
    return passed;
  }

  double goodFailed() {
    return goodFailed / (double) Math.max(1, good);
  }

  int blamed() {
    return blamed;
  }

  double named() {
    return named / (double) Math.max(1, faulty);
  }

  double groupRight() {
    return right / (double) Math.max(1, named);
  }

  int otherwiseOverPty() {
    return otherwise;
  }

  Calibration calibration() {
    return calibration;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "fault-zoo: faulty=%d passed=%d good=%d goodFailed=%.4f benchFaults=%d blamed=%d"
            + " named=%.3f groupRight=%.3f overPty=%d otherwise=%d brier=%.3f ece=%.3f",
        faulty,
        passed,
        good,
        goodFailed(),
        benchFaults,
        blamed,
        named(),
        groupRight(),
        overPty,
        otherwise,
        calibration.brier(),
        calibration.expectedError());
  }

  private void tell(String what) {
    if (tell) {
      System.out.println(what);
    }
  }
}
