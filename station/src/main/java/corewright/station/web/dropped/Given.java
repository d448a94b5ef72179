package corewright.station.web.dropped;

import java.util.function.UnaryOperator;

/** What was typed into the form of corrections the last time, to be shown in it again. */
public record Given(UnaryOperator<String> field) {
  public String of(String name) {
    return field.apply(name);
  }
}
