package corewright.reports.chart;

import corewright.bench.record.RunRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Writes the picture of a run as a file of its own. */
public final class Charts {
  private static final int HEIGHT = 320;

  private final Pictures pictures;
  private final Words words;

  /**
   * @param region whose language and decimal mark they take
   */
  public Charts(Evidence evidence, Locale region) {
    this.pictures = new Pictures(evidence, region);
    this.words = Words.of(Charts.class, region);
  }

  /**
   * Writes the picture of one run as SVG, named after the run.
   *
   * @param folder where it goes; made if missing
   * @return the file; empty where the run left no capture
   */
  public Optional<Path> svg(RunRecord run, Path folder) {
    return pictures.of(run).map(picture -> write(picture, run, folder));
  }

  private Path write(Picture picture, RunRecord run, Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException("the folder " + folder + " cannot be made", e);
    }
    Path file = folder.resolve(run.id() + ".svg");
    String alt =
        words.get(
            "alt.run",
            run.tag(),
            run.judgement().reasons().stream()
                .findFirst()
                .map(words.numerals()::sentence)
                .orElse(words.get("alt.none")));
    Svg.write(picture, HEIGHT, alt, file);
    return file;
  }
}
