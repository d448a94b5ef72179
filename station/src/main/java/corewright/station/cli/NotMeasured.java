package corewright.station.cli;

import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was not measured, by the reason: one sentence each, and told once. */
final class NotMeasured {
  private static final int WIDTH = 100;

  private NotMeasured() {}

  /** Reasons of what is missing in these readings. */
  static Map<Quantity, String> in(Map<Quantity, Reading> readings) {
    Map<Quantity, String> missing = new EnumMap<>(Quantity.class);
    readings.forEach(
        (quantity, reading) -> {
          if (reading instanceof Reading.NotMeasured none) {
            missing.put(quantity, none.reason());
          }
        });
    return missing;
  }

  /** What is missing in every hold for one and the same reason; nothing where there is one hold. */
  static Map<Quantity, String> inAll(List<MeasuredHold> holds) {
    Map<Quantity, String> common = new EnumMap<>(Quantity.class);
    if (holds.size() > 1) {
      common.putAll(in(holds.get(0).readings()));
      holds.forEach(hold -> common.entrySet().retainAll(in(hold.readings()).entrySet()));
    }
    return common;
  }

  /** Lines such as {@code — Undershoot; Overshoot: no load edge begins this hold}. */
  static List<String> lines(Map<Quantity, String> missing) {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    missing.forEach(
        (quantity, reason) ->
            byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(quantity.title()));
    List<String> lines = new ArrayList<>();
    byReason.forEach(
        (reason, titles) -> {
          String sign = "  — ";
          for (String part : Wrapped.lines(String.join("; ", titles) + ": " + reason, WIDTH)) {
            lines.add(sign + part);
            sign = "      ";
          }
        });
    return lines;
  }
}
