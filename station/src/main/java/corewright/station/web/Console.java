package corewright.station.web;

import corewright.bench.run.Clock;
import corewright.station.web.door.Door;
import corewright.station.web.door.DoorBook;
import corewright.station.web.door.Hosts;
import corewright.station.web.door.Sparing;
import corewright.station.web.door.Strays;
import corewright.station.web.live.BenchPlaces;
import corewright.station.web.live.Benches;
import corewright.station.web.place.CorePlaces;
import corewright.station.web.place.OfficePlaces;
import corewright.station.web.place.Today;
import corewright.station.work.Workshop;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The console: a server on this machine, until it is closed. */
public final class Console implements AutoCloseable {
  private static final int MOST_THREADS = 64;
  private static final int LEAST_THREADS = 4;
  private static final long MOST_BYTES = 1_000_000;
  private static final int MOST_UPLOADED_MB = 10; // one file; ten of them a form
  private static final int CODE_BYTES = 6;

  private final Javalin server;
  private final House house;
  private final Benches benches;
  private final String code;
  private final Reach reach;

  private Console(Javalin server, House house, Benches benches, String code, Reach reach) {
    this.reach = reach;
    this.server = server;
    this.house = house;
    this.benches = benches;
    this.code = code;
  }

  /**
   * Opens the console.
   *
   * @param opener opens the shop
   * @param wanted from where it can be reached
   * @throws corewright.station.work.Refused if others could read along, or it has no owner yet
   */
  public static Console open(Supplier<Workshop> opener, Clock clock, Reach wanted) {
    return open(opener, clock, wanted, true);
  }

  /**
   * Opens the console.
   *
   * @param paced whether emulated benches go as slowly as real ones, so that people can watch
   */
  static Console open(Supplier<Workshop> opener, Clock clock, Reach wanted, boolean paced) {
    House house = new House(opener, clock);
    Benches benches = new Benches(house::workshop, clock, paced);
    byte[] random = new byte[CODE_BYTES];
    new SecureRandom().nextBytes(random);
    String code = HexFormat.of().formatHex(random);
    try {
      Reach reach = wanted.checked(!house.workshop().ledger().accounts().all().isEmpty());
      Javalin server = Javalin.create(config -> wire(config, house, benches, code, reach));
      Console console = new Console(server.start(), house, benches, code, reach);
      benches.recover();
      return console;
    } catch (RuntimeException taken) {
      house.close();
      throw taken;
    }
  }

  private static void wire(
      JavalinConfig config, House house, Benches benches, String code, Reach reach) {
    Listening.on(config.jetty, reach);
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.jetty.threadPool = new QueuedThreadPool(MOST_THREADS, LEAST_THREADS);
    config.http.maxRequestSize = MOST_BYTES;
    config.jetty.multipartConfig.maxFileSize(MOST_UPLOADED_MB, SizeUnit.MB);
    config.jetty.multipartConfig.maxTotalRequestSize(MOST_UPLOADED_MB * 10L, SizeUnit.MB);
    DoorBook book =
        new Sparing(
            (what, who, from) -> house.workshop().ledger().accounts().atTheDoor(what, who, from),
            house.clock());
    config.jetty.modifyServer(server -> server.setRequestLog(new Strays(book)));
    Pages pages = new Pages(() -> house.workshop().shop().name(), benches::glance);
    Drafts drafts = new Drafts(house.workshop().folders().root().resolve("drafts"));
    Door door =
        new Door(
            new Hosts(reach.hosts()),
            () -> house.workshop().ledger().accounts(),
            book,
            house.clock(),
            reach.tls().isPresent());
    door.stand(config.routes);
    new Accident(pages, book).answer(config.routes);
    List<Place> places =
        List.of(
            new Static(),
            new FirstDay(house, pages, door, code, benches::fillSample),
            new SignIn(house, pages, door),
            new Habits(drafts),
            new Scans(house, pages),
            new Today(house, pages, benches));
    List.of(
            places,
            CorePlaces.of(house, pages, drafts, reach),
            BenchPlaces.of(house, pages, drafts, benches, door),
            OfficePlaces.of(house, pages, benches, reach))
        .forEach(part -> part.forEach(place -> place.answer(config.routes)));
  }

  /** Where it is, with the code of the first day while nobody has an account. */
  public String address() {
    String at = reach.url(server.port());
    boolean first = house.workshop().ledger().accounts().all().isEmpty();
    return first ? at + "first?code=" + code : at;
  }

  House house() {
    return house;
  }

  public int port() {
    return server.port();
  }

  @Override
  public void close() {
    benches.close();
    server.stop();
    house.close();
  }
}
