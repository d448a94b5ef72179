package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.life.Role;
import corewright.reports.ledger.Found;
import corewright.station.work.Answers;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every kind of page comes, whatever the shop holds. {@code -Dconsole.shop=FOLDER} asks a large
 * shop many times and writes down how long its pages take; nothing is asserted about time.
 */
class PageTimesTest {
  private static final int MANY = 300;
  private static final int FEW = 2;
  private static final long SEED = 17;

  @TempDir private Path folder;

  @Test
  void everyKindOfPageComes() throws IOException {
    String large = System.getProperty("console.shop");
    Path shop = large == null ? folder : Path.of(large);
    List<String> tags = large == null ? received(shop) : drawn(shop);
    Map<String, double[]> took = new TreeMap<>();
    try (Visit visit = Visit.to(shop)) {
      visit.signIn(Visit.OWNER, Visit.PASSWORD);
      int times = large == null ? FEW : MANY;
      for (String page : kinds()) {
        took.put(page, times(visit, page, tags, times));
      }
    }
    if (large != null) {
      Files.writeString(Path.of("target", "page-times.txt"), told(took));
    }
  }

  private static List<String> kinds() {
    List<String> kinds = new ArrayList<>(List.of("/unit/TAG", "/scan?code=TAG", "/build/TAG"));
    Arrays.stream(PlaceName.values()).map(PlaceName::path).forEach(kinds::add);
    return kinds;
  }

  private static double[] times(Visit visit, String page, List<String> tags, int times) {
    double[] ms = new double[times];
    for (int i = 0; i < times; i++) {
      String path = page.replace("TAG", tags.get(i % tags.size()));
      long start = System.nanoTime();
      HttpResponse<String> answer = visit.get(path);
      ms[i] = (System.nanoTime() - start) / 1e6;
      assertEquals(page.startsWith("/scan") ? 302 : 200, answer.statusCode(), path);
    }
    Arrays.sort(ms);
    return ms;
  }

  private static String told(Map<String, double[]> took) {
    double worst = took.values().stream().mapToDouble(PageTimesTest::p99).max().orElseThrow();
    String slowest =
        took.entrySet().stream()
            .max((a, b) -> Double.compare(p99(a.getValue()), p99(b.getValue())))
            .orElseThrow()
            .getKey();
    took.forEach(
        (page, ms) ->
            System.out.printf(
                Locale.ROOT,
                "%-16s half %.1f ms, p99 %.1f ms%n",
                page,
                ms[ms.length / 2],
                p99(ms)));
    return String.format(Locale.ROOT, "page_p99_ms=%.1f slowest=%s", worst, slowest);
  }

  private static double p99(double[] sorted) {
    return sorted[(int) Math.ceil(0.99 * sorted.length) - 1];
  }

  private static List<String> received(Path shop) {
    try (Workshop workshop = Visit.workshop(shop)) {
      owner(workshop);
      return List.of(
          workshop
              .arrival()
              .receive(
                  new Answers(
                      Visit.OWNER,
                      new Answers.Received("sd48", "0698-114", "SD 12/48", "Orrel", "repair", ""),
                      Map.of(),
                      Map.of(),
                      Map.of()),
                  Optional.empty()));
    }
  }

  private static List<String> drawn(Path shop) {
    try (Workshop workshop = Visit.workshop(shop)) {
      owner(workshop);
      List<String> tags = workshop.ledger().find("S").stream().map(Found::tag).toList();
      Random random = new Random(SEED);
      return random.ints(MANY, 0, tags.size()).mapToObj(tags::get).toList();
    }
  }

  private static void owner(Workshop workshop) {
    workshop
        .ledger()
        .accounts()
        .put(Visit.OWNER, Role.OWNER, Visit.PASSWORD.toCharArray(), Visit.OWNER);
  }
}
