package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.inspect.Inspection;
import corewright.bench.inspect.Inspection.Line;
import corewright.bench.inspect.Symptom;
import corewright.station.work.Inspecting.Result;
import java.util.Locale;

/** In which condition a unit came, as JSON. Keys are never renamed. */
final class InspectJson {
  private InspectJson() {}

  static ObjectNode of(Result result) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    Inspection seen = result.inspection();
    json.put("tag", result.dossier().core().tag());
    json.put("serial", result.dossier().core().serial());
    json.put("family", result.dossier().core().family());
    json.put("grade", seen.grade().map(Enum::name).orElse(null));
    seen.because().forEach(json.putArray("because")::add);
    seen.blocking().forEach(json.putArray("blocking")::add);
    seen.open().forEach(json.putArray("notAnswered")::add);
    ObjectNode symptoms = json.putObject("symptoms");
    ArrayNode codes = symptoms.putArray("codes");
    result
        .symptoms()
        .codes()
        .forEach(c -> codes.addObject().put("code", c.text()).put("where", c.where()));
    result.symptoms().said().forEach(s -> symptoms.put(key(s), s.words()));
    if (!result.symptoms().said().isEmpty()) {
      ObjectNode points = symptoms.putObject("pointsAt");
      result
          .symptoms()
          .posterior()
          .forEach((s, p) -> points.put(s.name().toLowerCase(Locale.ROOT), p));
    }
    result.reported().forEach(symptoms.putArray("says")::add);
    ArrayNode lines = json.putArray("lines");
    seen.lines().forEach(line -> lines.add(line(line)));
    seen.mass()
        .ifPresent(
            m -> {
              ObjectNode mass = json.putObject("mass");
              mass.put("value_g", m.measured_g());
              mass.put("U_g", m.measuredU_g());
              mass.put("variant", m.variant());
              mass.put("expected_g", m.expected_g());
              mass.put("expectedU_g", m.expectedU_g());
              mass.put("differs", m.differs());
              mass.put("says", m.words());
            });
    return json;
  }

  private static String key(Symptom symptom) {
    return switch (symptom.kind()) {
      case CODES -> "outputs";
      case WHEN -> "when";
      case AFTER -> "after";
    };
  }

  private static ObjectNode line(Line line) {
    ObjectNode json =
        line.given().map(IdentifyJson::answer).orElseGet(JsonNodeFactory.instance::objectNode);
    json.put("id", line.item().id());
    json.put("group", line.item().group());
    json.put("answer", line.answer());
    json.put("remarkable", line.isRemarkable());
    json.put("meaning", line.isRemarkable() ? line.item().meaning() : "");
    ArrayNode pins = json.putArray("pins");
    line.pins().forEach(p -> pins.add(IdentifyJson.answer(p)));
    return json;
  }
}
