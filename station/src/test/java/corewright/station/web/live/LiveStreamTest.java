package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.record.RunEnd;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Descriptions;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import io.javalin.Javalin;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * The stream to browsers, fed with four channels of two million samples a second each. Twenty
 * watch, one never reads, one loses its link.
 */
@Timeout(60)
class LiveStreamTest {
  private static final int RATE_HZ = 2_000_000;
  private static final int FRAME = 8000; // 4 ms
  private static final int FRAMES = 500; // 2 s
  private static final int MOST_BYTES_PER_S = 200_000;

  private static final List<Channel> CHANNELS =
      List.of(
          new Channel("input", "V", 0.001, 0),
          new Channel("output", "V", 0.003, 0),
          new Channel("load", "A", 0.0001, 0),
          new Channel("inputCurrent", "A", 0.001, 0));

  private final Clock clock = Clock.system();
  private final HttpClient client = HttpClient.newHttpClient();
  private LiveBench bench;
  private LiveRun run;
  private Javalin server;

  @BeforeEach
  void open() {
    Catalogue catalogue = Catalogue.ofHome();
    Profile profile = catalogue.profile("sd48-arrival");
    Course course =
        new Course(
            catalogue.family("sd48"),
            profile,
            Descriptions.shippedBench("emulated-sd48").channels());
    run =
        new LiveRun(
            new Start("U-000012", "sd48-arrival", "I. Marsh", Optional.empty()), course, 7, clock);
    bench = new LiveBench(new EmulatedForTests(), "/did/", () -> null, clock);
    server =
        Javalin.create(
                config -> {
                  config.startup.showJavalinBanner = false;
                  config.routes.get(
                      "/live", c -> new LiveStream(bench, run, clock, () -> false).to(c));
                })
            .start("127.0.0.1", 0);
  }

  @AfterEach
  void close() {
    run.over();
    server.stop();
  }

  @Test
  void twentyWatchAtTwoMillionSamplesASecondAndNobodyDelaysTheEngine() throws Exception {
    try (Socket deaf = new Socket("127.0.0.1", server.port())) {
      deaf.setReceiveBufferSize(1024);
      deaf.getOutputStream()
          .write(
              "GET /live HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
      List<CompletableFuture<Heard>> watchers = new ArrayList<>();
      for (int i = 0; i < 20; i++) {
        watchers.add(
            CompletableFuture.supplyAsync(
                () -> listen("", Integer.MAX_VALUE), r -> new Thread(r).start()));
      }
      while (bench.watchers().get() < 21) {
        clock.pause(Duration.ofMillis(5));
      }
      long slowest = feed();
      assertEquals(2000, run.columns().size(), "no frame was dropped at the engine");
      // The deaf one would have held it up for the server's thirty seconds; less is the machine's
      // load.
      assertTrue(slowest < 2_000_000_000L, "a frame waited " + slowest / 1e6 + " ms");
      run.over();
      for (CompletableFuture<Heard> watcher : watchers) {
        Heard heard = watcher.get();
        heard.assertWithoutGap(0, 2000);
        double seconds = Math.max(1, heard.nanos() / 1e9);
        assertTrue(heard.bytes() / seconds <= MOST_BYTES_PER_S, heard.bytes() + " B in " + seconds);
        assertTrue(heard.now() <= 4 * seconds + 4 + run.begun().size(), heard.now() + " figures");
      }
    }
  }

  @Test
  void aLostLinkGoesOnWhereItWasWithoutAGap() throws Exception {
    CompletableFuture<Long> fed = CompletableFuture.supplyAsync(this::feed);
    Heard before = listen("", 5);
    clock.pause(Duration.ofMillis(600)); // nobody listens; the run goes on
    CompletableFuture<Heard> after =
        CompletableFuture.supplyAsync(() -> listen(before.lastId(), Integer.MAX_VALUE));
    fed.get();
    run.over();
    int reached = Integer.parseInt(before.lastId().replace("7:", ""));
    assertTrue(reached > 0 && reached < 1500, before.lastId());
    after.get().assertWithoutGap(reached, 2000);
    assertEquals(
        0, listen("7:2000", Integer.MAX_VALUE).spans().size(), "all of it was told before");
    listen("6:1500", Integer.MAX_VALUE)
        .assertWithoutGap(0, 2000); // another run's place says nothing
  }

  @Test
  void whoIsFarBehindCatchesUpWithinTheSameRate() throws Exception {
    int[] column = new int[Columns.WIDTH * 1000];
    Arrays.fill(column, -48_123);
    for (int at = 0; at < 60_000; at += 1000) {
      run.columns().add(at, column, 1000); // a minute of a run, there at once
    }
    long begun = clock.nanos();
    Heard heard = listen("7:0", 30);
    double seconds = (clock.nanos() - begun) / 1e9;
    assertTrue(heard.spans().get(0)[1] > 1000, "joined, not left out");
    assertEquals(0, heard.spans().get(0)[0]);
    assertTrue(heard.bytes() / seconds <= MOST_BYTES_PER_S, heard.bytes() + " B in " + seconds);
    run.over();
  }

  @Test
  void withoutAFrameForASecondNothingIsKnownAnyMore() {
    run.sampling(CHANNELS, RATE_HZ);
    run.step(run.course().step(2), 2, 13);
    run.frame(frame(0));
    run.progress(0.004, 22);
    assertEquals(
        "on",
        Plate.of(run, run.seen().orElseThrow().atNanos() + 999_000_000L, Plate.NO_RUN).form());
    Plate later = Plate.of(run, run.seen().orElseThrow().atNanos() + 1_001_000_000L, Plate.NO_RUN);
    assertEquals("unknown", later.form());
    assertEquals("NOT KNOWN", later.word());
    assertEquals("?", later.volts());
    run.ended(new RunEnd(RunEnd.Kind.BENCH_FAULT, "rest", 1, "It fell silent.", "Look."));
    run.over();
    assertEquals("unknown", Plate.of(run, clock.nanos(), Plate.NO_RUN).form(), "not proved");
  }

  @Test
  void anOpenChainWithVoltsIsDanger() {
    run.sampling(CHANNELS, RATE_HZ);
    run.frame(
        new Digitizer.Frame(0, new Status(false, false, true, false, false, false), codes(), 0));
    run.progress(0.004, 22);
    Plate plate = Plate.of(run, run.seen().orElseThrow().atNanos(), Plate.NO_RUN);
    assertEquals("danger", plate.form());
    assertEquals("DANGER", plate.word());
  }

  /** Real time, and what the slowest call took, ns. */
  private long feed() {
    run.sampling(CHANNELS, RATE_HZ);
    run.step(run.course().step(2), 2, 13);
    long begun = clock.nanos();
    long slowest = 0;
    for (int i = 0; i < FRAMES; i++) {
      long due = begun + i * 4_000_000L;
      long now = clock.nanos();
      if (due > now) {
        clock.pause(Duration.ofNanos(due - now));
      }
      Digitizer.Frame frame = frame((long) i * FRAME);
      long before = clock.nanos();
      run.frame(frame);
      run.progress((i + 1) * 0.004, 22);
      slowest = Math.max(slowest, clock.nanos() - before);
    }
    run.ended(RunEnd.completed(2));
    return slowest;
  }

  private static Digitizer.Frame frame(long first) {
    return new Digitizer.Frame(
        first, new Status(true, true, false, false, false, false), codes(), 0);
  }

  private static short[][] codes() {
    short[][] codes = new short[4][FRAME];
    for (int i = 0; i < FRAME; i++) {
      codes[0][i] = (short) (12_400 + i % 17);
      codes[1][i] = (short) (16_000 + i % 23);
      codes[2][i] = (short) (20_000 + i % 5);
    }
    return codes;
  }

  /**
   * What a browser was told.
   *
   * @param spans first column and how many, of each event
   * @param now how often the figures came
   */
  record Heard(List<int[]> spans, long bytes, int now, String lastId, long nanos) {
    void assertWithoutGap(int from, int to) {
      int at = from;
      for (int[] span : spans) {
        assertEquals(at, span[0]);
        at += span[1];
      }
      assertEquals(to, at);
    }
  }

  private Heard listen(String lastId, int most) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/live"));
    if (!lastId.isEmpty()) {
      request.header("Last-Event-ID", lastId);
    }
    long begun = clock.nanos();
    List<int[]> spans = new ArrayList<>();
    long bytes = 0;
    int now = 0;
    String id = lastId;
    String event = "";
    try (InputStream in =
            client.send(request.build(), HttpResponse.BodyHandlers.ofInputStream()).body();
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      String line = lines.readLine();
      while (line != null && spans.size() < most) {
        bytes += line.getBytes(StandardCharsets.UTF_8).length + 1;
        if (line.startsWith("id: ")) {
          id = line.substring(4);
        } else if (line.startsWith("event: ")) {
          event = line.substring(7);
        } else if (line.startsWith("data: ") && event.equals("columns")) {
          JsonNode columns = JsonMapper.builder().build().readTree(line.substring(6));
          spans.add(new int[] {columns.path("i").asInt(), columns.path("n").asInt()});
          assertEquals(
              6
                  * ((columns.path("n").asInt() + columns.path("k").asInt() - 1)
                      / columns.path("k").asInt()),
              columns.path("v").size());
        } else if (line.startsWith("data: ")) {
          now++;
        }
        line = lines.readLine();
      }
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
    return new Heard(spans, bytes, now, id, clock.nanos() - begun);
  }
}
