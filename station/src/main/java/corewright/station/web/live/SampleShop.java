package corewright.station.web.live;

import corewright.bench.run.Clock;
import corewright.bench.run.Stop;
import corewright.reports.ledger.Accounts;
import corewright.station.demo.Demo;
import corewright.station.demo.DemoProgress;
import corewright.station.work.Workshop;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Fills an invented shop with the eight cores of the demonstration, in the background. */
final class SampleShop implements AutoCloseable {
  private static final Logger LOG = Logger.getLogger(SampleShop.class.getName());
  private static final long SEED = 1;

  private final Supplier<Workshop> workshop;
  private final Clock clock;
  private static final int SECRET_BYTES = 24;

  private final Stop stop = new Stop();
  private volatile String progress = "";
  private volatile Optional<Thread> filling = Optional.empty();

  SampleShop(Supplier<Workshop> workshop, Clock clock) {
    this.workshop = workshop;
    this.clock = clock;
  }

  /** Begins; does nothing where the shop is not invented. */
  synchronized void fill() {
    if (!workshop.get().shop().invented() || filling.isPresent()) {
      return;
    }
    progress = "The sample shop is being filled.";
    Thread thread = new Thread(this::run, "sample shop");
    filling = Optional.of(thread);
    thread.start();
  }

  /** How far it is, one sentence; empty when nothing is being filled. */
  String progress() {
    return progress;
  }

  /** Why an emulated bench cannot be used by anybody else, one sentence; empty when it can. */
  String busy() {
    return filling.filter(Thread::isAlive).isPresent() ? progress : "";
  }

  private void run() {
    try {
      people(workshop.get().ledger().accounts());
      new Demo(workshop.get(), clock, SEED, new Told()).run(stop);
      progress = "";
    } catch (RuntimeException broken) {
      LOG.log(Level.WARNING, "the sample shop", broken);
      progress = "The sample shop could not be filled: " + broken.getMessage();
    }
  }

  /** Above every family that is emulated, V. */
  private static final double EMULATED_V = 120;

  /** Its invented people have accounts that nobody can sign in to. */
  private static void people(Accounts accounts) {
    List<Accounts.Account> there = accounts.all();
    String owner =
        there.stream()
            .filter(a -> a.role().keepsTheShop())
            .map(Accounts.Account::name)
            .findFirst()
            .orElse("");
    byte[] random = new byte[SECRET_BYTES];
    new SecureRandom().nextBytes(random);
    char[] secret = HexFormat.of().formatHex(random).toCharArray();
    if (!owner.isEmpty()) {
      Demo.PEOPLE.forEach(
          (name, role) -> {
            if (there.stream().noneMatch(a -> a.name().equals(name))) {
              accounts.put(name, role, secret, owner);
              accounts.grant(name, EMULATED_V, owner);
            }
          });
    }
  }

  @Override
  public void close() {
    stop.request("The station was closed.");
    try {
      if (filling.isPresent()) {
        filling.get().join();
      }
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
  }

  /** Each core becomes a sentence. */
  private final class Told implements DemoProgress {
    @Override
    public void core(int index, int count, String tag, String family) {
      progress =
          "The sample shop is being filled: core "
              + (index + 1)
              + " of "
              + count
              + ", "
              + tag
              + ", is on an emulated bench.";
    }

    @Override
    public void rebuilt(String tag, String family) {
      progress = "The sample shop is being filled: " + tag + " was rebuilt and is tested again.";
    }
  }
}
