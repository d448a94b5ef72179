package corewright.station.web.live;

import corewright.bench.run.Clock;
import corewright.files.BadFile;
import corewright.files.JsonFile;
import corewright.files.Origin;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The benches of a shop: those described in {@code benches/*.json} of its folder, in an invented
 * shop the emulated ones, and those that people practise on. Closing ends every run in the safe
 * state.
 */
public final class Benches implements AutoCloseable {
  /** Families with an emulated bench. */
  static final List<String> EMULATED = List.of("sd48", "ie110", "pv65");

  private static final List<String> WORST_FIRST = List.of("danger", "on", "unknown", "off");

  private final Supplier<Workshop> workshop;
  private final Clock clock;
  private final boolean paced;
  private final Map<String, LiveBench> known = new ConcurrentHashMap<>();
  private final SampleShop sample;
  private final Practice practice;
  private volatile boolean closed;

  /**
   * @param paced whether emulated benches go as slowly as real ones
   */
  public Benches(Supplier<Workshop> workshop, Clock clock, boolean paced) {
    this.workshop = workshop;
    this.clock = clock;
    this.paced = paced;
    this.sample = new SampleShop(workshop, clock);
    this.practice = new Practice(workshop, clock, paced);
  }

  /** All benches of the shop; the files are read anew, and a bench that is known stays itself. */
  public List<LiveBench> all() {
    List<Bench> described = new ArrayList<>();
    for (Path file : files()) {
      read(file).ifPresent(d -> described.add(new RealBench(d, clock)));
    }
    if (workshop.get().shop().invented()) {
      EMULATED.forEach(family -> described.add(EmulatedOffer.of(family, clock, paced)));
    }
    return described.stream().map(this::live).distinct().toList();
  }

  /** What is wrong with the files that describe no bench, each a sentence. */
  public List<String> mistakes() {
    List<String> mistakes = new ArrayList<>();
    for (Path file : files()) {
      try {
        Descriptions.bench(file);
      } catch (BadFile bad) {
        mistakes.add(Objects.requireNonNullElse(bad.getMessage(), file.toString()));
      }
    }
    return mistakes;
  }

  /** A bench by its id. */
  Optional<LiveBench> of(String id) {
    LiveBench there = known.get(id);
    return there != null
        ? Optional.of(asNow(there))
        : practice
            .bench(id)
            .map(this::add)
            .or(() -> all().stream().filter(b -> b.id().equals(id)).findFirst());
  }

  /** It may have been calibrated, or its reference units named, since it was looked at last. */
  private LiveBench asNow(LiveBench bench) {
    Origin then = bench.description().origin();
    try {
      Path file = Path.of(then.path());
      if (files().contains(file) && !Files.readString(file).equals(then.text())) {
        read(file).ifPresent(now -> bench.describedBy(new RealBench(now, clock)));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException("cannot read " + then.path(), unreadable);
    }
    return bench;
  }

  /** The bench of a request's path. */
  LiveBench at(Context context) {
    String id = context.pathParam("id");
    return of(id)
        .orElseThrow(() -> new Refused("There is no bench " + id, "Look at the list of benches."));
  }

  /** Where people practise. */
  Practice practice() {
    return practice;
  }

  private LiveBench add(LiveBench bench) {
    known.put(bench.id(), bench);
    return bench;
  }

  private LiveBench live(Bench bench) {
    LiveBench live = known(bench);
    if (bench instanceof RealBench now
        && !now.description().origin().equals(live.description().origin())) {
      live.describedBy(now);
    }
    return live;
  }

  private LiveBench known(Bench bench) {
    return known.computeIfAbsent(
        bench.description().id(),
        id ->
            new LiveBench(
                bench,
                "/did/",
                workshop,
                clock,
                bench instanceof RealBench ? () -> "" : sample::busy));
  }

  private static Optional<BenchDescription> read(Path file) {
    try {
      return Optional.of(Descriptions.bench(file));
    } catch (BadFile told) {
      return Optional.empty(); // mistakes() says what is wrong with it
    }
  }

  private List<Path> files() {
    Path folder = workshop.get().folders().benches();
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".json") && !isDialect(f)).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException("cannot read " + folder, unreadable);
    }
  }

  /** A dialect of the shop's own may lie beside the bench that names it. */
  private static boolean isDialect(Path file) {
    try {
      JsonFile json = JsonFile.read(file);
      return Descriptions.likenessToDialect(json) > Descriptions.likenessToBench(json);
    } catch (BadFile told) {
      return false; // mistakes() says what is wrong with it
    }
  }

  /** The bench that matters most now. */
  public Glance glance() {
    Stream<LiveBench> shown = known.isEmpty() ? all().stream() : known.values().stream();
    return shown
        .min(
            Comparator.comparing((LiveBench b) -> b.plate().equals(Plate.NO_RUN))
                .thenComparing(Benches::glance, order()))
        .map(b -> b.plate().equals(Plate.NO_RUN) ? Glance.NO_RUN : glance(b))
        .orElse(Glance.NONE);
  }

  private static Comparator<Glance> order() {
    return Comparator.<Glance>comparingInt(g -> g.stoppable() ? 0 : 1)
        .thenComparingInt(g -> WORST_FIRST.indexOf(g.form()))
        .thenComparing(Glance::name);
  }

  static Glance glance(LiveBench bench) {
    Plate plate = bench.plate();
    String unit = plate.volts().matches("[0-9.,]+") ? " V" : "";
    return new Glance(
        bench.id(),
        plate.form(),
        bench.id() + " " + plate.word().toLowerCase(Locale.ROOT),
        plate.volts() + unit,
        "/bench/" + bench.id(),
        bench.running().isPresent());
  }

  /** Closes what a program that died has left on any bench, in the background. */
  public void recover() {
    if (workshop.get().ledger().runs().unfinished().isEmpty()) {
      all();
      return;
    }
    all().forEach(b -> new Thread(b::recover, "recovery " + b.id()).start());
  }

  /** Fills a sample shop, in the background. */
  public void fillSample() {
    sample.fill();
  }

  /** What is to be known of the benches, each a sentence; often empty. */
  public List<String> told() {
    return Stream.concat(
            Stream.of(sample.progress()).filter(s -> !s.isEmpty()),
            known.values().stream().flatMap(b -> b.left().stream()))
        .toList();
  }

  boolean isClosed() {
    return closed;
  }

  Clock clock() {
    return clock;
  }

  @Override
  public void close() {
    closed = true;
    known.values().forEach(LiveBench::close);
    sample.close();
    practice.close();
  }
}
