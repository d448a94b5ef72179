package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.life.Act;
import java.util.ArrayList;
import java.util.List;

/** What an event means for the stage of its unit. */
final class Acts {
  private Acts() {}

  static List<Act> of(EventKind kind, JsonNode body) {
    return switch (kind) {
      case RECEIVED, BROUGHT -> List.of(Act.RECEIVE);
      case IDENTIFIED -> List.of(Act.IDENTIFY);
      case RUN_ENDED -> ofRun(body);
      case DECIDED -> List.of(ofDisposition(body.get("disposition").asText()));
      case REBUILT -> List.of(Act.OPEN, Act.WORK, Act.CLOSE);
      default -> kind.act().map(List::of).orElse(List.of());
    };
  }

  /**
   * A void or unfinished final test says nothing about the unit, and only a bench's own pass proves
   * anything. A unit counts as charged where the safe state could not be confirmed, or where
   * somebody else powered it.
   */
  private static List<Act> ofRun(JsonNode run) {
    List<Act> acts = new ArrayList<>();
    String source = run.get("source").asText();
    String verdict = run.at("/judgement/verdict").asText("");
    if (!run.get("purpose").asText().equals("ship")) {
      acts.add(Act.TEST);
    } else if (verdict.equals("PASS") && source.equals("BENCH")) {
      acts.add(Act.PROVE);
    } else if (verdict.equals("FAIL") || verdict.equals("MARGINAL") || verdict.equals("UNSAFE")) {
      acts.add(Act.DISPROVE);
    }
    if (!run.get("troubles").isEmpty() || source.equals("IMPORTED") || source.equals("BY_HAND")) {
      acts.add(Act.LEAVE_CHARGED);
    }
    return acts;
  }

  private static Act ofDisposition(String disposition) {
    return switch (disposition) {
      case "REBUILD" -> Act.DECIDE_REBUILD;
      case "REPLACE" -> Act.DECIDE_REPLACE;
      case "RETURN" -> Act.DECIDE_RETURN;
      default -> Act.HOLD;
    };
  }
}
