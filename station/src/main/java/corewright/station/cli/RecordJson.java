package corewright.station.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Finding;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.reports.ledger.Amendment;
import corewright.station.work.Outcome;
import java.util.List;
import java.util.TreeMap;

/** Parts of the record as JSON, for scripts. Keys are never renamed. */
final class RecordJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private RecordJson() {}

  static String text(JsonNode tree) {
    try {
      return MAPPER.writeValueAsString(tree);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree can always be written", impossible);
    }
  }

  static ObjectNode outcome(Outcome outcome) {
    ObjectNode json = core(outcome.core());
    outcome.identification().ifPresent(i -> json.set("identification", identification(i)));
    json.set("run", run(outcome.run()));
    json.set("decision", decision(outcome.decision()));
    json.put("document", outcome.document().toString());
    json.put("chart", outcome.chart().map(Object::toString).orElse(null));
    return json;
  }

  static ObjectNode dossier(Dossier dossier, List<Amendment> amendments) {
    ObjectNode json = core(dossier.core());
    json.put("visit", dossier.visit());
    dossier.identification().ifPresent(i -> json.set("identification", identification(i)));
    ArrayNode runs = json.putArray("runs");
    dossier.runs().forEach(r -> runs.add(run(r)));
    ArrayNode added = json.putArray("amendments");
    amendments.forEach(
        a ->
            added
                .addObject()
                .put("run", a.run())
                .put("original", a.original())
                .put("text", a.text())
                .put("reason", a.reason())
                .put("who", a.who()));
    dossier.rebuild().forEach(json.putArray("rebuild")::add);
    dossier.decision().ifPresent(d -> json.set("decision", decision(d)));
    return json;
  }

  static ObjectNode decided(Core core, Decision decision) {
    ObjectNode json = core(core);
    json.set("decision", decision(decision));
    return json;
  }

  private static ObjectNode core(Core core) {
    ObjectNode json = NODES.objectNode();
    json.put("tag", core.tag());
    json.put("serial", core.serial());
    json.put("label", core.label());
    json.put("family", core.family());
    json.put("mode", core.mode());
    json.put("complaint", core.complaint());
    json.put("received", core.received().toString());
    return json;
  }

  private static ObjectNode identification(Identification id) {
    ObjectNode json = NODES.objectNode();
    json.put("variant", id.variant());
    json.put("probability", id.posterior());
    json.put("band", id.band().name());
    json.put("runnerUp", id.runnerUp());
    words(json.putArray("conflicts"), id.conflicts());
    json.put("nextQuestion", id.nextQuestion());
    return json;
  }

  private static ObjectNode run(RunRecord run) {
    ObjectNode json = NODES.objectNode();
    json.put("id", run.id());
    json.put("purpose", run.purpose());
    json.put("number", run.number());
    json.put("source", run.source().words());
    json.put("operator", run.operator());
    ArrayNode equipment = json.putArray("equipment");
    run.equipment()
        .forEach(
            used ->
                equipment
                    .addObject()
                    .put("role", used.role())
                    .put("identity", used.identity())
                    .put("calibration", used.calibration()));
    json.put("profile", run.profileId());
    json.put("verdict", run.judgement().verdict().map(Enum::name).orElse(null));
    json.put("inputQualifier", run.judgement().qualifier().map(Enum::name).orElse(null));
    words(json.putArray("reasons"), run.judgement().reasons());
    json.put("end", run.end().kind().name());
    json.put("saw", run.end().saw());
    json.put("capture", run.capture());
    json.put("captureSha256", run.captureSha256());
    ArrayNode notes = json.putArray("notes");
    ObjectNode beside = json.putObject("readings");
    run.measured()
        .ifPresent(
            m -> {
              words(notes, m.notes());
              m.readings().forEach((quantity, reading) -> put(beside, quantity, reading));
            });
    ArrayNode holds = json.putArray("case");
    run.measured().ifPresent(m -> m.holds().forEach(h -> holds.add(caseOf(h))));
    ArrayNode findings = json.putArray("findings");
    run.judgement().findings().forEach(f -> findings.add(finding(f)));
    return json;
  }

  /** Temperature of the case in one hold. */
  private static ObjectNode caseOf(MeasuredHold hold) {
    ObjectNode json = NODES.objectNode();
    json.put("hold", hold.index());
    for (Quantity quantity :
        List.of(Quantity.CASE_START, Quantity.CASE_END, Quantity.CASE_HIGHEST)) {
      put(json, quantity, hold.readings().getOrDefault(quantity, Reading.none("not read.")));
    }
    return json;
  }

  private static void put(ObjectNode json, Quantity quantity, Reading reading) {
    reading
        .measurement()
        .ifPresentOrElse(
            m -> {
              ObjectNode each = json.putObject(quantity.id());
              each.put("value", m.value());
              each.put("u", m.u());
              each.put("unit", m.unit().symbol());
            },
            () -> json.putNull(quantity.id()));
  }

  static ObjectNode finding(Finding finding) {
    ObjectNode json = NODES.objectNode();
    json.put("limit", finding.limit().id());
    json.put("quantity", finding.quantity().id());
    json.put("hold", finding.hold());
    finding
        .measurement()
        .ifPresent(
            m -> {
              json.put("value", m.value());
              json.put("u", m.u());
            });
    json.put("unit", finding.quantity().unit().symbol());
    json.put("pass", finding.limit().pass());
    json.put("outcome", finding.outcome().name());
    finding.margin().ifPresent(m -> json.put("margin", m));
    finding.conformity().ifPresent(p -> json.put("conformity", p));
    return json;
  }

  private static ObjectNode decision(Decision decision) {
    ObjectNode json = NODES.objectNode();
    json.put("row", decision.row());
    json.put("tableRevision", decision.tableRevision());
    json.put("disposition", decision.disposition().name());
    json.put("destination", decision.destination());
    json.put("sentence", decision.sentence());
    words(json.putArray("reasons"), decision.reasons());
    json.put("finding", decision.finding());
    decision.diagnosis().ifPresent(d -> json.set("diagnosis", DiagnosisWords.json(d)));
    json.put("question", decision.question());
    json.put("owner", decision.owner());
    json.put("due", decision.due().map(Object::toString).orElse(null));
    ObjectNode saw = json.putObject("saw");
    new TreeMap<>(decision.saw()).forEach(saw::put);
    return json;
  }

  private static void words(ArrayNode list, List<String> words) {
    words.forEach(list::add);
  }
}
