package corewright.station.web.live;

import corewright.bench.run.Clock;
import corewright.station.demo.SampleCore;
import corewright.station.work.Workshop;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Emulated benches with units whose fault nobody has told, and a record of their own beside the
 * shop's: what is practised never gets into it.
 */
final class Practice implements AutoCloseable {
  static final String PATH = "/practice/";
  private static final String BENCH = "practice-";

  private final Supplier<Workshop> shop;
  private final Clock clock;
  private final boolean paced;
  private Optional<Workshop> own = Optional.empty();

  /**
   * @param shop the real one, whose families are practised on
   */
  Practice(Supplier<Workshop> shop, Clock clock, boolean paced) {
    this.shop = shop;
    this.clock = clock;
    this.paced = paced;
  }

  /** The record of what was practised; made when the first unit is taken. */
  synchronized Workshop workshop() {
    if (own.isEmpty()) {
      Workshop real = shop.get();
      own =
          Optional.of(
              Workshop.open(
                  real.catalogue(),
                  real.folders().root().resolve("practice"),
                  real.shop().asInvented(),
                  "practice",
                  clock));
    }
    return own.get();
  }

  /** The bench of a name, if it is one to practise on. */
  Optional<LiveBench> bench(String id) {
    return Benches.EMULATED.stream()
        .filter(family -> id.equals(benchOf(family)))
        .findFirst()
        .map(
            family ->
                new LiveBench(
                    EmulatedOffer.of(family, clock, paced).as(id), PATH, this::workshop, clock));
  }

  static String benchOf(String family) {
    return BENCH + family;
  }

  /** Takes a unit from the shelf; nobody knows what is wrong with it. */
  String take(String family) {
    return SampleCore.receive(workshop(), family);
  }

  @Override
  public synchronized void close() {
    own.ifPresent(Workshop::close);
    own = Optional.empty();
  }
}
