package corewright.reports.ledger;

import corewright.bench.life.VehicleNumbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Leaves the numbers of vehicles out of what is given out, and says where there were any. */
final class LeftOut {
  private final boolean vehicles;
  private final Predicate<String> serial;
  private final Map<String, Integer> texts = new LinkedHashMap<>();
  private final List<String> events = new ArrayList<>();

  /**
   * @param vehicles whether their numbers go out all the same
   * @param serial whether a unit bears it: a maker's serial may have as many letters and digits
   */
  LeftOut(boolean vehicles, Predicate<String> serial) {
    this.vehicles = vehicles;
    this.serial = serial;
  }

  /** A row as it is given out. */
  List<@Nullable Object> of(String table, List<@Nullable Object> cells) {
    List<@Nullable Object> out = new ArrayList<>(cells.size());
    for (Object cell : cells) {
      if (cell instanceof String text) {
        String without = text(text);
        if (!without.equals(text)) {
          texts.merge(table, 1, Integer::sum);
        }
        out.add(without);
      } else {
        out.add(cell);
      }
    }
    return out;
  }

  /** An event as it is given out; its hash stays that of the whole one. */
  Event of(Event event) {
    String body = text(event.body());
    if (body.equals(event.body())) {
      return event;
    }
    events.add(event.chain() + ":" + event.sequence());
    return event.saying(body);
  }

  /** A line for each place; none where nothing was left out. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    texts.forEach((table, count) -> lines.add("table " + table + ": in " + count + " texts"));
    events.forEach(
        event -> lines.add("event " + event + ": its hash and signature are of the whole text"));
    return lines;
  }

  private String text(String text) {
    return vehicles ? text : VehicleNumbers.without(text, serial);
  }
}
