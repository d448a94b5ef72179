package corewright.measures;

import java.util.List;
import java.util.Map;

/**
 * Everything that was read from one capture.
 *
 * @param uBasis what the uncertainties contain, in words: {@code scatter and resolution only} where
 *     the channels have no calibration
 * @param readings quantities of the run as a whole, {@link Quantity#OUTPUT_RESISTANCE} among them
 * @param notes what a reader must know about the whole run, each a sentence; often empty
 */
public record MeasuredRun(
    double sampleRate_Hz,
    long samples,
    String uBasis,
    List<MeasuredHold> holds,
    Map<Quantity, Reading> readings,
    List<String> notes) {

  public MeasuredRun {
    holds = List.copyOf(holds);
    readings = Map.copyOf(readings);
    notes = List.copyOf(notes);
  }

  /** The reading, or that it was not taken. */
  public Reading reading(Quantity quantity) {
    return readings.getOrDefault(quantity, Reading.none("it is not a reading of the whole run"));
  }
}
