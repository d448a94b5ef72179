package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What no limit asks for is told; what is judged stands elsewhere, what was not done in the notes.
 */
class ToldTest {
  private static final Map<Quantity, Reading> READ =
      Map.of(
          Quantity.CRANK_OUTPUT,
          Reading.of(47.9, 0.02, Unit.VOLT),
          Quantity.HOLDS_TO,
          Reading.none("the output held all the way, with the input down to 9.1 V"),
          Quantity.SURVIVAL_LOWEST,
          new Reading.Measured(new Measurement(38.41, 0.02, Unit.VOLT), List.of("Once only.")),
          Quantity.COLD_OUTPUT,
          Reading.none("this bench cannot do it, and nobody entered it."));

  @Test
  void whatNoLimitAsksForIsTold() {
    assertEquals(
        List.of(
            "Input down to which it holds under load: none, as the output held all the way, with"
                + " the input down to 9.1 V.",
            "Output through a deep cranking, lowest: 38.41 ± 0.04 V (Once only)."),
        Told.of(READ, Set.of(Quantity.CRANK_OUTPUT), Figures::withU));
  }
}
