package corewright.bench.capture;

import corewright.bench.capture.csv.Overrides;
import corewright.bench.capture.csv.TextRecord;
import corewright.bench.record.RunEnd;
import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.measures.Capture;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A recorded file of any kind that can be measured: a capture that a run left, or a text record of
 * another instrument.
 *
 * @param guesses what was taken for granted while reading, each a sentence; to be printed
 * @param end how the run ended; empty for text, and where the file breaks off before
 * @param notes what the file says about itself, as {@code profile} and {@code unit}; empty for text
 */
public record Recording(
    Capture capture, List<String> guesses, Optional<RunEnd> end, Map<String, String> notes) {

  public Recording {
    guesses = List.copyOf(guesses);
    notes = Map.copyOf(notes);
  }

  /** Reads a file, whatever its name is. */
  public static Recording read(Path path) {
    return read(path, ReadProgress.UNSEEN);
  }

  /**
   * Reads a file, whatever its name is.
   *
   * @param progress told how far a long file has been read
   * @throws BadFile if it is damaged, is none of the kinds, or holds no samples to measure
   */
  public static Recording read(Path path, ReadProgress progress) {
    return read(path, progress, Overrides.NONE);
  }

  /**
   * The same with what a person says of a text record; captures describe themselves.
   *
   * @param overrides win over the headings
   */
  public static Recording read(Path path, ReadProgress progress, Overrides overrides) {
    if (!CaptureFile.isCapture(path)) {
      TextRecord.Read text = TextRecord.read(path, progress, overrides);
      return new Recording(text.capture(), text.guesses(), Optional.empty(), Map.of());
    }
    HeldCapture held = CaptureFile.holds(path, progress);
    Capture capture =
        held.holds()
            .orElseThrow(
                () ->
                    new BadFile(
                        List.of(
                            new Mistake(
                                path.toString(),
                                0,
                                "capture",
                                "the run never came to a hold, so there is nothing to measure",
                                "Read how it ended with ./corewright show."))));
    return new Recording(capture, List.of(), held.end(), held.header().notes());
  }
}
