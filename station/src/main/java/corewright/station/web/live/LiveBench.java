package corewright.station.web.live;

import corewright.bench.hand.Hands;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Abilities;
import corewright.bench.run.Clock;
import corewright.bench.run.Stop;
import corewright.files.BadFile;
import corewright.fixtures.describe.BenchDescription;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.reports.ledger.RunBegun;
import corewright.station.work.BenchAbilities;
import corewright.station.work.Dialects;
import corewright.station.work.HandEntry;
import corewright.station.work.Home;
import corewright.station.work.KeptWire;
import corewright.station.work.Refused;
import corewright.station.work.RunIds;
import corewright.station.work.Testing;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * One bench: at most one run at a time, on a thread of its own. Who watches makes no difference to
 * it; whoever sees it may stop it.
 */
public final class LiveBench {
  private static final Logger LOG = Logger.getLogger(LiveBench.class.getName());

  private volatile Bench bench;
  private final String results;
  private final Supplier<Workshop> workshop;
  private final Clock clock;
  private final Supplier<String> elsewhere;
  private final Preparations preparations = new Preparations();
  private final AtomicInteger watchers = new AtomicInteger();
  private final List<String> left = new CopyOnWriteArrayList<>();

  private volatile Optional<LiveRun> run = Optional.empty();
  private volatile Plate before = Plate.NO_RUN;
  private int runs;
  private volatile Optional<Abilities> abilities = Optional.empty();

  /**
   * @param results where the result of a unit is read, its tag follows
   */
  LiveBench(Bench bench, String results, Supplier<Workshop> workshop, Clock clock) {
    this(bench, results, workshop, clock, () -> "");
  }

  /**
   * @param elsewhere what else uses this bench now, a sentence; empty: nothing does. Its open run
   *     would else be taken for one that a dead program has left
   */
  LiveBench(
      Bench bench,
      String results,
      Supplier<Workshop> workshop,
      Clock clock,
      Supplier<String> elsewhere) {
    this.elsewhere = elsewhere;
    this.bench = bench;
    this.results = results;
    this.workshop = workshop;
    this.clock = clock;
  }

  public String id() {
    return bench.description().id();
  }

  /**
   * What its file says now counts from the next run on; one that goes on keeps what it began with.
   */
  synchronized void describedBy(RealBench now) {
    if (bench instanceof RealBench && running().isEmpty()) {
      bench = now;
    }
  }

  /** As people call it. */
  public String title() {
    return bench.description().title();
  }

  public boolean emulated() {
    return bench.emulated();
  }

  /** Where what a unit did is read. */
  String results(String tag) {
    return results + tag;
  }

  /** Whether it is there to practise on: then anybody may drive it. */
  boolean isForPractice() {
    return results.equals(Practice.PATH);
  }

  /** The steps that this bench leaves out, by id, and why: the end of a sentence. */
  Map<String, String> leaves(Profile profile) {
    return abilities().leaves(profile);
  }

  /** What of its steps this bench leaves out though it does the rest, by id, each a sentence. */
  Map<String, List<String>> leavesInPart(Profile profile) {
    return abilities().leavesInPart(profile);
  }

  /** The steps of a profile that somebody may read elsewhere. */
  List<Step> byHand(Profile profile) {
    return HandEntry.steps(profile, leaves(profile).keySet());
  }

  /** Read once, without a lock that a recovery may hold: a bench that is known stays itself. */
  private Abilities abilities() {
    Optional<Abilities> known = abilities;
    if (known.isEmpty()) {
      Path file = Path.of(description().origin().path());
      try {
        known =
            Optional.of(
                BenchAbilities.of(
                    description(), new Dialects(Home.fromSystem(), file).of(description())));
        abilities = known;
      } catch (BadFile told) { // by the start, which opens the bench with them
        return BenchAbilities.unknown();
      }
    }
    return known.get();
  }

  /** Whether people here have accounts, and prove who they are. */
  boolean asksForPasswords() {
    return !workshop().ledger().accounts().all().isEmpty();
  }

  Instant now() {
    return clock.wall();
  }

  BenchDescription description() {
    return bench.description();
  }

  Workshop workshop() {
    return workshop.get();
  }

  Preparations preparations() {
    return preparations;
  }

  /** The run that is on, or was the last one since the program started. */
  Optional<LiveRun> run() {
    return run;
  }

  /** The run that is on. */
  Optional<LiveRun> running() {
    return run.filter(r -> !r.isOver());
  }

  /** Who looks on, counted by their streams. */
  AtomicInteger watchers() {
    return watchers;
  }

  /** What a program that died had left here and how it was closed, each a sentence. */
  public List<String> left() {
    return List.copyOf(left);
  }

  /** What else uses this bench now, a sentence; empty: nothing does. */
  String elsewhere() {
    return elsewhere.get();
  }

  public Plate plate() {
    return run.map(r -> Plate.of(r, clock.nanos(), before)).orElse(before);
  }

  /**
   * Starts a run.
   *
   * @throws Refused if one is on, naming who drives
   */
  synchronized LiveRun start(Start start) {
    running()
        .ifPresent(
            on -> {
              throw new Refused(
                  on.start().driver()
                      + " drives "
                      + id()
                      + ": "
                      + on.start().tag()
                      + " is on it, and one bench takes one person",
                  "Watch that run, or wait until it is over. STOP works for everyone.");
            });
    if (!elsewhere.get().isEmpty()) {
      throw new Refused(
          elsewhere.get().replaceAll("\\.$", ""), "Wait until Today no longer says so.");
    }
    Workshop shop = workshop.get();
    Catalogue catalogue = shop.catalogue();
    Family family = catalogue.family(shop.ledger().dossier(start.tag()).core().family());
    Profile profile = catalogue.profile(start.profile());
    before = plate();
    LiveRun next =
        new LiveRun(
            start, new Course(family, profile, bench.description().channels()), ++runs, clock);
    run = Optional.of(next);
    new Thread(() -> drive(next, shop), "bench " + id()).start();
    return next;
  }

  /** Anybody's STOP. Asked again it changes nothing. */
  void stop(String who) {
    running().ifPresent(r -> r.stop().request(who + " pressed STOP on the console."));
  }

  private void drive(LiveRun on, Workshop shop) {
    try (KeptWire wire = KeptWire.begin(on.start().wireLog(), shop.folders(), clock, on::wire)) {
      RunRecord record = run(on, shop, wire);
      wire.keepFor(record).ifPresent(on::wire);
      on.concluded(shop.conclude(record, on.start().driver()));
    } catch (RuntimeException broken) {
      LOG.log(Level.WARNING, "run on " + id(), broken);
      on.failed(Objects.requireNonNullElse(broken.getMessage(), broken.toString()));
    } finally {
      on.over();
    }
  }

  private RunRecord run(LiveRun on, Workshop shop, KeptWire wire) {
    Start start = on.start();
    Profile profile = on.course().profile();
    boolean rebuilt = profile.purpose() == Profile.Purpose.SHIP;
    Bench.Unit unit = new Bench.Unit(start.tag(), on.course().family().id(), rebuilt);
    try (Bench.Opened opened = bench.open(unit, on.hands(), wire)) {
      settle(opened, shop);
      RunRecord record =
          shop.testing(wire.clock())
              .run(
                  new Testing.Request(
                      start.tag(),
                      profile.id(),
                      opened.description(),
                      start.driver(),
                      true,
                      start.second(),
                      start.byHand()),
                  opened.instruments(),
                  new RunIds(id(), new SecureRandom()),
                  on,
                  on.stop());
      on.kept(record);
      return record;
    }
  }

  private void settle(Bench.Opened opened, Workshop shop) {
    shop.recovery()
        .settle(opened.instruments(), opened.description().id())
        .forEach(
            r ->
                left.add(
                    "Run "
                        + r.id()
                        + " of "
                        + r.tag()
                        + " had been left open. The safe state was commanded first. "
                        + r.end().saw()));
  }

  /**
   * Closes what a program that died has left on this bench: safe state first, then the record.
   * Until that is done nothing is known of what is on it.
   */
  synchronized void recover() {
    Workshop shop = workshop.get();
    List<RunBegun> open =
        shop.ledger().runs().unfinished().stream().filter(r -> r.bench().equals(id())).toList();
    if (open.isEmpty() || running().isPresent() || !elsewhere.get().isEmpty()) {
      return;
    }
    RunBegun first = open.get(0);
    before = Plate.left("The program died in a run of " + first.tag() + ".");
    String family = shop.ledger().dossier(first.tag()).core().family();
    try (KeptWire wire = KeptWire.none(shop.folders(), clock);
        Bench.Opened opened =
            bench.open(new Bench.Unit(first.tag(), family, false), new LeftToAll(left), wire)) {
      settle(opened, shop);
      before =
          Plate.left(
              "A run of "
                  + first.tag()
                  + " died here. The safe state was commanded; the discharge is proved by the next"
                  + " run's dead check.");
    } catch (RuntimeException unreachable) {
      LOG.log(Level.WARNING, "recovery of " + id(), unreachable);
      left.add(
          "Run "
              + first.id()
              + " of "
              + first.tag()
              + " was left open, and the bench cannot be reached: "
              + unreachable.getMessage());
    }
  }

  /** Nobody is there who was asked: whoever looks at the bench next is told. */
  private record LeftToAll(List<String> told) implements Hands {
    @Override
    public String name() {
      return "nobody";
    }

    @Override
    public void please(String what) {
      told.add(what);
    }
  }

  /** Ends the run that is on in the safe state, and waits for it. */
  void close() {
    Optional<LiveRun> on = running();
    on.map(LiveRun::stop).ifPresent(LiveBench::leave);
    try {
      if (on.isPresent()) {
        on.get().latch().await();
      }
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
  }

  private static void leave(Stop stop) {
    stop.request("The station was closed.");
  }
}
