package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.station.work.Answers;
import corewright.station.work.Workshop;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScansTest {
  @TempDir private Path shop;

  @Test
  void aWholeTagOrSerialIsMeantWhateverElseReadsLikeIt() {
    try (Visit visit = Visit.asOwner(shop)) {
      String first;
      try (Workshop workshop = Visit.workshop(shop)) {
        first = received(workshop, "0698-114");
        received(workshop, "0698-1140");
        received(workshop, "7-" + first + "-7");
      }
      assertOpens(first, visit.get("/scan?code=" + first));
      assertOpens(first, visit.get("/scan?code=0698-114"));
      HttpResponse<String> part = visit.get("/scan?code=0698");
      assertEquals(200, part.statusCode());
      assertTrue(part.body().contains("2 units read like 0698"), part.body());
    }
  }

  private static void assertOpens(String tag, HttpResponse<String> answer) {
    assertEquals(302, answer.statusCode(), answer.body());
    String to = answer.headers().firstValue("Location").orElse("");
    assertTrue(to.contains("/unit/" + tag), to);
  }

  private static String received(Workshop workshop, String serial) {
    return workshop
        .arrival()
        .receive(
            new Answers(
                Visit.OWNER,
                new Answers.Received("sd48", serial, "SD 12/48", "Orrel", "repair", ""),
                Map.of(),
                Map.of(),
                Map.of()),
            Optional.empty());
  }
}
