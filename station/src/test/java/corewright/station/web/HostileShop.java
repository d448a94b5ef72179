package corewright.station.web;

import corewright.bench.life.Role;
import corewright.bench.record.Core;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.Agreements;
import corewright.reports.ledger.Money;
import corewright.station.work.Importing;
import corewright.station.work.RunIds;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/**
 * A small shop whose every text tries to run a script in a page: a unit that was tested from a
 * file, and one that nobody tested.
 */
public final class HostileShop {
  public static final String SCRIPT = "<script>alert('1')</script>";
  public static final String IMG = "\"><img src=x onerror=alert(2)>";

  private HostileShop() {}

  private static Optional<Made> once = Optional.empty();
  private static Optional<Visit> owner = Optional.empty();

  /** The shop that all tests of pages look at; made once, for making it takes long. */
  static synchronized Made shared() throws IOException {
    if (once.isEmpty()) {
      Path folder = Files.createTempDirectory("shop");
      Clock midday = new MiddayClock();
      once = Optional.of(in(folder, midday));
      owner = Optional.of(Visit.to(folder, midday));
      owner.get().signIn(Visit.OWNER, Visit.PASSWORD);
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder)));
    }
    return once.get();
  }

  /** Its owner, signed in; nobody closes this one. */
  static Visit owner() throws IOException {
    shared();
    return owner.orElseThrow();
  }

  private static void remove(Path folder) {
    owner.ifPresent(Visit::close);
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException left) {
      // a temporary folder may stay
    }
  }

  /** What was made. */
  public record Made(String tag, String run, String untested) {}

  private static Made in(Path folder, Clock clock) throws IOException {
    try (Workshop shop =
        Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "console", clock)) {
      shop.ledger()
          .accounts()
          .put(Visit.OWNER, Role.OWNER, Visit.PASSWORD.toCharArray(), Visit.OWNER);
      String tag = receive(shop, clock);
      Path record = folder.resolve("weak.csv");
      Files.writeString(record, weak());
      RunRecord run = tested(shop, tag, record, 1);
      shop.decide(tag, Visit.OWNER);
      shop.ledger().runs().amend(run.id(), SCRIPT, IMG, Visit.OWNER);
      shop.ledger()
          .agreements()
          .quote(
              new Agreements.Quote(
                  SCRIPT,
                  "repair",
                  "sd48",
                  new Money(19_000, "EUR"),
                  new Money(2_000, "EUR"),
                  new Money(0, "EUR"),
                  shop.today(),
                  IMG),
              Visit.OWNER);
      shop.ledger().facts().confirm(tag, SCRIPT, "", Visit.OWNER);
      return new Made(tag, run.id(), receive(shop, clock));
    }
  }

  /** A unit that is practised on was tested, and is weak. */
  static void tested(Path folder, String tag) throws IOException {
    Path practice = folder.resolve("practice");
    Path record = Files.writeString(practice.resolve("weak.csv"), weak());
    try (Workshop shop =
        Workshop.open(
            Catalogue.ofHome(), practice, ShopFile.in(folder), "looks", new MiddayClock())) {
      tested(shop, tag, record, 2);
    }
  }

  private static RunRecord tested(Workshop shop, String tag, Path record, int seed) {
    return shop.importing()
        .take(
            new Importing.Request(
                tag,
                record,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Visit.OWNER),
            new RunIds("import", new Random(seed)));
  }

  private static String receive(Workshop shop, Clock clock) {
    String tag = shop.ledger().nextTag();
    shop.ledger()
        .receive(
            new Core(
                tag,
                "sd48",
                "S" + tag + SCRIPT,
                IMG,
                SCRIPT + "Sons",
                "repair",
                SCRIPT,
                clock.wall(),
                Visit.OWNER));
    return tag;
  }

  /** Rest, then 2 A for 4 s, under which the output sinks from 48 V to 44 V; 1000 a second. */
  public static String weak() {
    StringBuilder csv = new StringBuilder("time_s,input_V,output_V,load_A\n");
    for (int i = 0; i < 8000; i++) {
      double t = i / 1000.0;
      boolean on = t >= 2 && t < 6;
      double output = on ? 44 + 4 * Math.exp(-(t - 2) / 0.02) : 48;
      double wobble = ((i * 7919) % 101 - 50) / 5e4; // noise of 1 mV, the same at every run
      csv.append(
          String.format(
              Locale.ROOT,
              "%.3f,%.4f,%.4f,%.4f%n",
              t,
              12.4 + wobble,
              output + wobble,
              (on ? 2 : 0) + wobble));
    }
    return csv.toString();
  }
}
