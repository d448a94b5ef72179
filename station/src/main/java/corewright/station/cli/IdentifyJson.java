package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.identify.Consequence;
import corewright.bench.identify.Rekey;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.station.work.Looking.Standing;
import corewright.station.work.Rekeying.Result;
import java.util.List;
import java.util.Locale;

/** Which build a unit is, as JSON. Keys are never renamed. */
final class IdentifyJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private IdentifyJson() {}

  static ObjectNode of(Standing standing) {
    ObjectNode json = NODES.objectNode();
    json.put("tag", standing.dossier().core().tag());
    json.put("serial", standing.dossier().core().serial());
    json.put("family", standing.family().id());
    Identification id = standing.identification();
    standing
        .family()
        .variant(id.variant())
        .ifPresent(
            v -> {
              json.put("serviceable", v.serviceable().name().toLowerCase(Locale.ROOT));
              json.put("why", v.why());
              json.put("kit", v.kit());
            });
    put(json, id);
    ArrayNode answers = json.putArray("answers");
    for (CueAnswer answer : standing.dossier().answers()) {
      if (isCue(standing.family(), answer)) {
        answers.add(answer(answer));
      }
    }
    standing.next().ifPresent(cue -> json.set("next", next(standing, cue)));
    return json;
  }

  /** Which build, how sure, what else, what speaks against it, what may have happened. */
  static void put(ObjectNode json, Identification id) {
    json.put("keyRevision", id.keyRevision());
    json.put("variant", id.variant());
    json.put("probability", id.posterior());
    json.put("band", id.band().name());
    json.put("runnerUp", id.runnerUp());
    json.put("runnerUpProbability", id.runnerUpPosterior());
    ObjectNode posteriors = json.putObject("posteriors");
    id.posteriors().entrySet().stream()
        .sorted(java.util.Map.Entry.comparingByKey())
        .forEach(e -> posteriors.put(e.getKey(), e.getValue()));
    id.conflicts().forEach(json.putArray("conflicts")::add);
    json.put("nextQuestion", id.nextQuestion());
    ArrayNode history = json.putArray("history");
    for (Hypothesis h : id.history()) {
      ObjectNode one = history.addObject();
      one.put("past", h.id());
      one.put("probability", h.probability());
      h.because().forEach(one.putArray("because")::add);
      one.put("handling", h.handling());
    }
  }

  static ObjectNode answer(CueAnswer answer) {
    ObjectNode json = NODES.objectNode();
    json.put("id", answer.cue());
    json.put("answer", answer.answer());
    json.put("read", answer.read());
    json.put("who", answer.who());
    json.put("when", answer.when().toString());
    json.put("photoSha256", answer.photo());
    return json;
  }

  static ObjectNode rekeyed(String family, int revision, List<Result> results) {
    ObjectNode json = NODES.objectNode();
    json.put("family", family);
    json.put("keyRevision", revision);
    json.put("units", results.size());
    ArrayNode changed = json.putArray("changed");
    for (Result result : results) {
      Rekey rekey = result.rekey();
      if (rekey.variantChanges() || !rekey.dropped().isEmpty()) {
        ObjectNode one = changed.addObject();
        one.put("tag", result.tag());
        one.put("serial", result.serial());
        one.put("before", rekey.before().map(Identification::variant).orElse(null));
        one.put("beforeRevision", rekey.before().map(Identification::keyRevision).orElse(null));
        one.put("now", rekey.now().variant());
        one.put("probability", rekey.now().posterior());
        one.put("band", rekey.now().band().name());
        rekey.dropped().forEach(one.putArray("unknownAnswers")::add);
      }
    }
    return json;
  }

  private static ObjectNode next(Standing standing, Cue cue) {
    ObjectNode json = NODES.objectNode();
    json.put("id", cue.id());
    json.put("question", cue.question());
    json.put("look", cue.look());
    json.put("cost_s", cue.cost_s());
    ArrayNode answers = json.putArray("answers");
    for (Consequence c : standing.consequences(cue)) {
      ObjectNode one = answers.addObject();
      one.put("answer", c.answer());
      one.put("chance", c.chance());
      one.put("variant", c.variant());
      one.put("probability", c.posterior());
    }
    return json;
  }

  private static boolean isCue(Family family, CueAnswer answer) {
    return family.cues().stream().anyMatch(c -> c.id().equals(answer.cue()));
  }
}
