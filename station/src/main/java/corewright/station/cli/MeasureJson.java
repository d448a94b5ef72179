package corewright.station.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Judgement;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.station.work.MeasureFile.Result;
import java.util.Locale;

/**
 * The readings as JSON: what other programs are promised. A reading is {@code {value, u, unit}}, or
 * null with its reason under {@code notMeasured}; keys are never renamed.
 */
final class MeasureJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  static final String NO_FAMILY =
      "No family says what is good for this unit: name one with --family, or a profile with"
          + " --profile.";

  private final Result result;

  MeasureJson(Result result) {
    this.result = result;
  }

  String text() {
    try {
      return new ObjectMapper()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .writeValueAsString(run());
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(
          "a tree of numbers and texts can always be written", impossible);
    }
  }

  private ObjectNode run() {
    MeasuredRun run = result.run();
    ObjectNode json = NODES.objectNode();
    json.put("sampleRate_Hz", run.sampleRate_Hz());
    json.put("samples", run.samples());
    json.put("uBasis", run.uBasis());
    ArrayNode holds = json.putArray("holds");
    run.holds().forEach(hold -> holds.add(hold(hold)));
    ObjectNode reasons = NODES.objectNode();
    for (Quantity quantity : Quantity.values()) {
      if (quantity.ofRun()) {
        put(json, quantity, run.reading(quantity), reasons);
      }
    }
    json.set("notMeasured", reasons);
    judgement(json);
    run.notes().forEach(json.putArray("notes")::add);
    return json;
  }

  private void judgement(ObjectNode json) {
    result.family().ifPresent(family -> json.put("family", family.id()));
    result.profile().ifPresent(profile -> json.put("profile", profile.id()));
    json.put(
        "inputQualifier",
        result.judgement().flatMap(Judgement::qualifier).map(MeasureJson::word).orElse(null));
    json.put(
        "verdict", result.judgement().flatMap(Judgement::verdict).map(Enum::name).orElse(null));
    ArrayNode reasons = json.putArray("reasons");
    if (result.judgement().isPresent()) {
      result.judgement().get().reasons().forEach(reasons::add);
      ArrayNode findings = json.putArray("findings");
      result.judgement().get().findings().forEach(f -> findings.add(RecordJson.finding(f)));
    } else {
      reasons.add(NO_FAMILY);
    }
    result.diagnosis().ifPresent(d -> json.set("diagnosis", DiagnosisWords.json(d)));
    result.finding().ifPresent(words -> json.put("finding", words));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static ObjectNode hold(MeasuredHold hold) {
    ObjectNode json = NODES.objectNode();
    json.put("index", hold.index());
    json.put("start_s", hold.start_s());
    json.put("end_s", hold.end_s());
    json.put("windowStart_s", hold.windowStart_s());
    json.put("windowEnd_s", hold.windowEnd_s());
    ObjectNode reasons = NODES.objectNode();
    for (Quantity quantity : Quantity.values()) {
      Reading reading = hold.readings().get(quantity);
      if (reading != null) {
        put(json, quantity, reading, reasons);
      }
    }
    json.put("recoveryState", hold.recoveryState());
    json.set("notMeasured", reasons);
    ObjectNode feeds = json.putObject("feeds");
    for (FeedReadings feed : hold.feeds()) {
      ObjectNode each = feeds.putObject(feed.name());
      each.set("mean", reading(feed.mean()));
      each.set("minimum", reading(feed.minimum()));
      each.set("lowestMedian", reading(feed.lowestMedian()));
    }
    return json;
  }

  private static void put(ObjectNode json, Quantity quantity, Reading reading, ObjectNode reasons) {
    json.set(quantity.id(), reading(reading));
    if (reading instanceof Reading.NotMeasured none) {
      reasons.put(quantity.id(), none.reason());
    }
  }

  private static com.fasterxml.jackson.databind.JsonNode reading(Reading reading) {
    if (!(reading instanceof Reading.Measured measured)) {
      return NODES.nullNode();
    }
    ObjectNode json = NODES.objectNode();
    json.put("value", measured.value().value());
    json.put("u", measured.value().u());
    json.put("unit", measured.value().unit().symbol());
    if (!measured.flags().isEmpty()) {
      measured.flags().forEach(json.putArray("flags")::add);
    }
    return json;
  }
}
