package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.station.demo.SampleCore;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole run on the sample bench, watched by many through the console; {@code
 * -Dconsole.viewers=20}. Writes how many frames were missed to {@code target/viewers.txt}. A plain
 * build has the stream's own test.
 */
@Timeout(300)
class ViewersTest {
  private static final String BENCH = "/bench/emulated-sd48";

  @TempDir private Path shop;

  @Test
  void nobodyWhoWatchesCostsTheEngineAFrame() throws Exception {
    int viewers = Integer.getInteger("console.viewers", 0);
    assumeTrue(viewers > 0, "set -Dconsole.viewers=20");
    Files.writeString(
        shop.resolve("shop.json"),
        "{\"name\":\"Mill Yard Rebuild\",\"address\":\"4 Mill Yard\",\"invented\":true}");
    String tag;
    try (Workshop workshop = Visit.workshop(shop)) {
      tag = SampleCore.receive(workshop, "sd48");
    }
    long missed = 0;
    long columns = 0;
    long most = 0;
    try (Visit visit = Visit.asOwner(shop)) {
      visit.get(BENCH + "?tag=" + tag);
      visit.post(BENCH + "/prepare", Map.of("tag", tag, "cautions", "yes"));
      assertEquals(BENCH, Visit.location(visit.post(BENCH + "/start", Map.of())));
      HttpClient client = HttpClient.newBuilder().cookieHandler(visit.cookies()).build();
      List<CompletableFuture<long[]>> all = new ArrayList<>();
      for (int i = 0; i < viewers; i++) {
        all.add(
            CompletableFuture.supplyAsync(
                () -> watch(client, visit.at(BENCH + "/live")), r -> new Thread(r).start()));
      }
      for (CompletableFuture<long[]> viewer : all) {
        long[] seen = viewer.get();
        missed += seen[0];
        columns = Math.max(columns, seen[1]);
        most = Math.max(most, seen[2]);
      }
    }
    try (Workshop workshop = Visit.workshop(shop)) {
      RunRecord run = workshop.ledger().dossier(tag).runs().get(0);
      assertEquals(RunEnd.Kind.COMPLETED, run.end().kind(), run.end().saw());
    }
    Files.createDirectories(Path.of("target"));
    Files.writeString(
        Path.of("target", "viewers.txt"),
        String.format(
            Locale.ROOT,
            "viewers=%d dropped=%d columns=%d most_kBps=%.0f",
            viewers,
            missed,
            columns,
            most / 1000.0));
    assertEquals(0, missed);
  }

  /** Columns that were missed, columns that were told, most bytes in any second. */
  private static long[] watch(HttpClient client, String address) {
    HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
    long missed = 0;
    long next = -1;
    long most = 0;
    long bytes = 0;
    long second = System.nanoTime();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                client.send(request, HttpResponse.BodyHandlers.ofInputStream()).body(),
                StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        bytes += line.getBytes(StandardCharsets.UTF_8).length + 1;
        if (System.nanoTime() - second > 1_000_000_000L) {
          most = Math.max(most, bytes);
          bytes = 0;
          second = System.nanoTime();
        }
        if (line.startsWith("data: {\"i\"")) {
          JsonNode told = JsonMapper.builder().build().readTree(line.substring(6));
          missed += next < 0 ? 0 : Math.abs(told.path("i").asLong() - next);
          for (JsonNode value : told.path("v")) {
            missed += value.isNull() ? 1 : 0;
          }
          next = told.path("i").asLong() + told.path("n").asLong();
        }
      }
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
    return new long[] {missed, next, most};
  }
}
