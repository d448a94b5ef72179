package corewright.station.web.life;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.reports.ledger.Happened;
import corewright.station.web.When;
import corewright.station.web.did.Purposes;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing that happened, in words.
 *
 * @param when local
 * @param href where more of it is; empty where there is none
 */
public record Past(String when, String words, String who, String href, String head) {

  /** Everything, the latest first. */
  static List<Past> of(List<Happened> history) {
    List<Past> past = new ArrayList<>();
    for (Happened h : history) {
      past.add(0, new Past(When.moment(h.at()), words(h), h.who(), href(h), h.head().printed()));
    }
    return past;
  }

  private static String href(Happened h) {
    return h.kind().equals("run ended") ? "/did/" + text(h.body(), "id") : "";
  }

  /** What an event says; its own kind where nobody wrote words for it yet. */
  static String words(Happened h) {
    JsonNode b = h.body();
    return switch (h.kind()) {
      case "received" -> "Received" + said(b, "complaint");
      case "answered" -> "Looked at: " + answers(b);
      case "identified" -> "Build " + text(b, "variant") + said(b, "nextQuestion");
      case "run begun" ->
          "On bench "
              + text(b, "bench")
              + ", run begun"
              + (text(b, "second").isEmpty() ? "" : "; " + text(b, "second") + " stood by");
      case "run ended" ->
          "Tested "
              + Purposes.words(text(b, "purpose"))
              + ", run "
              + text(b, "number")
              + ": "
              + b.at("/judgement/verdict").asText("no verdict");
      case "decided" -> "Decided: " + text(b, "disposition") + said(b, "sentence");
      case "rebuilt" -> "Rebuilt: " + list(b.path("lines"));
      case "worked" -> worked(list(b.path("did")), fitted(b.path("fitted")));
      case "documented" -> "Paper written: " + text(b, "kind");
      case "relabelled" ->
          "Its label: serial "
              + text(b, "serialWas")
              + " is "
              + text(b, "serial")
              + ", label "
              + text(b, "labelWas")
              + " is "
              + text(b, "label")
              + said(b, "reason");
      case "amended" -> "Added to run " + text(b, "run") + said(b, "text");
      case "made safe" -> "Made safe, " + text(b, "residual_V") + " V left" + said(b, "note");
      case "held" -> "On hold" + said(b, "question");
      case "sealed" -> "Sealed, seal " + text(b, "number");
      case "shipped" -> "Left us" + said(b, "carrier") + said(b, "tracking");
      case "graded" -> "Graded " + text(b, "grade") + said(b, "why");
      case "promised" -> "Promised for " + text(b, "until");
      case "attached" -> "Kept: " + text(b, "kind") + ", " + text(b, "name") + said(b, "note");
      case "claim opened" -> "Claim opened" + said(b, "symptom");
      case "claim closed" ->
          "Claim closed: " + text(b, "claimClass") + ", " + text(b, "outcome") + said(b, "reason");
      case "confirmed" -> "Opened and seen" + said(b, "fault");
      default ->
          h.kind().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
              + h.kind().substring(1)
              + said(b, "note");
    };
  }

  private static String answers(JsonNode body) {
    List<String> all = new ArrayList<>();
    body.path("answers")
        .forEach(
            a ->
                all.add(
                    text(a, "cue")
                        + " "
                        + (text(a, "read").isEmpty() ? text(a, "answer") : text(a, "read"))));
    return String.join("; ", all);
  }

  private static String fitted(JsonNode parts) {
    List<String> all = new ArrayList<>();
    parts.forEach(
        p -> all.add(text(p, "place") + " " + text(p, "part") + ", lot " + text(p, "lot")));
    return all.isEmpty() ? "" : "fitted " + String.join("; ", all);
  }

  private static String worked(String did, String fitted) {
    return "Worked on: " + did + (did.isEmpty() || fitted.isEmpty() ? "" : "; ") + fitted;
  }

  private static String list(JsonNode lines) {
    List<String> all = new ArrayList<>();
    lines.forEach(line -> all.add(line.asText()));
    return String.join("; ", all);
  }

  private static String said(JsonNode body, String key) {
    String text = text(body, key);
    return text.isEmpty() ? "" : ": " + text;
  }

  private static String text(JsonNode body, String key) {
    return body.path(key).asText("");
  }
}
