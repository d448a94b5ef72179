package corewright.station.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.log.Comparison;
import corewright.bench.log.Crank;
import corewright.bench.log.LogReading;
import corewright.bench.log.Output;
import corewright.bench.log.Supply;
import corewright.bench.log.table.Column;
import corewright.bench.log.table.Inert;
import corewright.measures.Measurement;
import corewright.station.work.CrankLog.Read;
import corewright.station.work.CrankLog.Result;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A customer's log as JSON. A reading is {@code {value, u, unit}} or null; keys are never renamed.
 * Of a second log everything stands under {@code after}, the difference under {@code comparison}.
 */
final class CrankJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Result result;
  private final Optional<Path> picture;

  /**
   * Prepares the text.
   *
   * @param picture that was drawn
   */
  CrankJson(Result result, Optional<Path> picture) {
    this.result = result;
    this.picture = picture;
  }

  String text() {
    ObjectNode json = log(result.log());
    result.after().ifPresent(after -> json.set("after", log(after)));
    result.comparison().ifPresent(c -> json.set("comparison", comparison(c)));
    picture.ifPresent(p -> json.put("plot", p.toString()));
    try {
      return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(json);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(
          "a tree of numbers and texts can always be written", impossible);
    }
  }

  private static ObjectNode log(Read read) {
    LogReading log = read.reading();
    ObjectNode json = NODES.objectNode();
    json.put("file", log.file());
    json.put("sha256", read.sha256());
    json.put("conclusion", log.conclusion().id());
    strings(json, "reasons", log.reasons());
    strings(json, "doubts", log.doubts());
    strings(json, "next", log.next());
    ObjectNode family = json.putObject("family");
    family.put("id", log.family().map(f -> f.id()).orElse(null));
    family.put("how", log.familyHow());
    ArrayNode cranks = json.putArray("cranks");
    for (int i = 0; i < log.cranks().size(); i++) {
      cranks.add(crank(i + 1, log.cranks().get(i)));
    }
    ArrayNode columns = json.putArray("columns");
    log.columns().forEach(c -> columns.add(column(c)));
    json.set("time", time(log));
    ObjectNode text = json.putObject("text");
    text.put("encoding", read.encoding());
    text.put("cells", log.dialect());
    strings(json, "leftOut", log.remarks());
    json.put("uBasis", "scatter and resolution only");
    return json;
  }

  private static ObjectNode time(LogReading log) {
    ObjectNode json = NODES.objectNode();
    json.put("column", log.time().column());
    json.put("how", log.time().how());
    json.put("confidence", rounded(log.time().confidence(), 2));
    json.put("assumed", log.time().assumed());
    json.put("perSignal", log.time().perSignal());
    json.put("start_s", number(log.pace().first_s()));
    json.put("end_s", number(log.pace().last_s()));
    json.put("medianStep_s", number(log.pace().medianStep_s()));
    json.put("longestGap_s", number(log.pace().longestGap_s()));
    ArrayNode rates = json.putArray("rates_Hz");
    log.pace().rates_Hz().forEach(r -> rates.add(rounded(r, 3)));
    return json;
  }

  private static ObjectNode column(Column c) {
    ObjectNode json = NODES.objectNode();
    json.put("column", c.index() + 1);
    json.put("name", Inert.text(c.name()));
    json.put("role", c.role().name().toLowerCase(Locale.ROOT));
    json.put("takenFor", c.role().words());
    json.put("confidence", rounded(c.confidence(), 2));
    json.put("why", c.why());
    if (c.role().kept()) {
      json.put("scale", c.scale());
      json.put("unit", c.unit());
      json.put("decimalMark", String.valueOf(c.decimal()));
    }
    return json;
  }

  private static ObjectNode crank(int number, Crank c) {
    ObjectNode json = NODES.objectNode();
    json.put("index", number);
    json.put("start_s", number(c.start_s()));
    json.put("end_s", number(c.end_s()));
    json.put("shownBy", c.shownBy());
    if (c.window().isPresent()) {
      ObjectNode window = json.putObject("window");
      window.put("start_s", number(c.window().get().start_s()));
      window.put("end_s", number(c.window().get().end_s()));
    } else {
      json.putNull("window");
    }
    json.put("conclusion", c.conclusion().id());
    json.put(
        "inputQualifier", c.qualifier().map(q -> q.name().toLowerCase(Locale.ROOT)).orElse(null));
    json.put("engineStarted", c.started());
    json.put("load", c.load().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    strings(json, "reasons", c.reasons());
    strings(json, "doubts", c.doubts());
    ArrayNode supplies = json.putArray("supplies");
    c.supplies().forEach(s -> supplies.add(supply(s)));
    ArrayNode outputs = json.putArray("outputs");
    c.outputs().forEach(o -> outputs.add(output(o)));
    json.set("readings", readings(supplies, outputs));
    return json;
  }

  /** Every reading of a crank once more in one flat list, for programs that want no tree. */
  private static ArrayNode readings(ArrayNode supplies, ArrayNode outputs) {
    ArrayNode all = NODES.arrayNode();
    supplies.forEach(s -> flatten("supply", s, all));
    outputs.forEach(o -> flatten("output", o, all));
    return all;
  }

  private static void flatten(String role, JsonNode channel, ArrayNode into) {
    for (Map.Entry<String, JsonNode> field : channel.properties()) {
      if (field.getValue().has("u")) {
        ObjectNode reading = into.addObject();
        reading.put("channel", channel.get("name").asText());
        reading.put("role", role);
        reading.put("quantity", field.getKey());
        reading.setAll((ObjectNode) field.getValue());
      }
    }
  }

  private static ObjectNode supply(Supply s) {
    ObjectNode json = NODES.objectNode();
    json.put("name", s.name());
    json.put("nearness", s.nearness());
    reading(json, "rest", s.rest());
    reading(json, "lowestSample", s.lowest());
    reading(json, "middle", s.middle());
    reading(json, "inputMinimum", s.minimum());
    json.put("samples", s.samples());
    json.put("longestSilence_s", number(s.longestSilence_s()));
    json.put("good_V", s.good_V());
    json.put("tolerated_V", s.tolerated_V());
    json.put(
        "inputQualifier", s.qualifier().map(q -> q.name().toLowerCase(Locale.ROOT)).orElse(null));
    json.put("remark", s.remark());
    return json;
  }

  private static ObjectNode output(Output o) {
    ObjectNode json = NODES.objectNode();
    json.put("name", o.name());
    json.put("conclusion", o.conclusion().id());
    reading(json, "rest", o.rest());
    reading(json, "first", o.first());
    reading(json, "last", o.last());
    reading(json, "middle", o.middle());
    reading(json, "lowestQuarter", o.lowestQuarter());
    reading(json, "drift", o.drift());
    reading(json, "scatter", o.scatter());
    reading(json, "change", o.change());
    reading(json, "recovered", o.recovered());
    json.put("samples", o.samples());
    json.put("longestSilence_s", number(o.longestSilence_s()));
    return json;
  }

  private static ObjectNode comparison(Comparison c) {
    ObjectNode json = NODES.objectNode();
    reading(json, "lowestQuarterChange", c.change());
    strings(json, "reasons", c.sentences());
    return json;
  }

  private static void reading(ObjectNode json, String key, Optional<Measurement> m) {
    if (m.isEmpty()) {
      json.putNull(key);
      return;
    }
    ObjectNode value = json.putObject(key);
    value.put("value", number(m.get().value()));
    value.put("u", number(m.get().u()));
    value.put("unit", m.get().unit().symbol());
  }

  private static void strings(ObjectNode json, String key, Iterable<String> texts) {
    ArrayNode array = json.putArray(key);
    texts.forEach(array::add);
  }

  /** Microvolts and microseconds are more than any log has. */
  private static @Nullable Double number(double value) {
    return Double.isFinite(value) ? rounded(value, 6) : null;
  }

  private static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale;
  }
}
