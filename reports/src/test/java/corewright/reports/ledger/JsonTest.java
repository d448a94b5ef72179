package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.reports.Samples;
import java.util.Random;
import org.junit.jupiter.api.Test;

class JsonTest {
  @Test
  void aRunSurvivesWithoutLoss() {
    RunRecord run = Samples.run("bench-1-000001-x", "U-00418Q");
    String text = Json.canonical(Json.tree(run));
    assertEquals(run, Json.record(Json.read(text), RunRecord.class));
    assertEquals(text, Json.canonical(Json.read(text)));
  }

  @Test
  void everyDoubleReadsBackToItself() {
    Random random = new Random(7);
    for (int i = 0; i < 100_000; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        JsonNode back = Json.read(Json.canonical(Json.tree(value)));
        assertEquals(value, back.asDouble());
      }
    }
  }

  @Test
  void canonicalMeansSortedWithoutBlanksAndWithTheWordsOfTheHouse() {
    String text = Json.canonical(Json.tree(Samples.answers().get(0)));
    assertEquals(
        "{\"answer\":\"6\",\"cue\":\"bosses\",\"photo\":\"\",\"read\":\"\",\"when\":\"2026-11-26T08:16:30.250Z\",\"who\":\"H."
            + " Oduya\"}",
        text);
    String limit = Json.canonical(Json.tree(Samples.OUTPUT_FULL));
    assertTrue(limit.contains("\"quantity\":\"output\""), limit);
    assertTrue(limit.contains("\"to_A\":\"Infinity\""), limit);
    String run = Json.canonical(Json.tree(Samples.run("r", "U-00418Q")));
    assertTrue(run.contains("\"unit\":\"V\""), run);
  }

  /** Events are never changed: what was written before a field existed is read without it. */
  @Test
  void anAnswerOlderThanPhotosIsStillRead() {
    String old =
        "{\"answer\":\"6\",\"cue\":\"bosses\",\"when\":\"2026-11-26T08:16:30.250Z\","
            + "\"who\":\"H. Oduya\"}";
    assertEquals(Samples.answers().get(0), Json.record(Json.read(old), CueAnswer.class));
    ObjectNode identification = (ObjectNode) Json.tree(Samples.identification());
    identification.remove("history");
    assertEquals(Samples.identification(), Json.record(identification, Identification.class));
  }
}
