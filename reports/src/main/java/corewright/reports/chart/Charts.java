package corewright.reports.chart;

import corewright.bench.record.RunRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    return pictures.of(run).map(picture -> write(picture, run, folder.resolve(run.id() + ".svg")));
  }

  /**
   * Writes the headline hold of one run with those of others behind it, the first dashed, the
   * second dotted.
   *
   * @param file what is there is written over
   * @return the file; empty where one of them left no such hold or no capture
   */
  public Optional<Path> overlay(RunRecord front, List<RunRecord> others, Path file) {
    return pictures.of(front, others).map(picture -> write(picture, front, file));
  }

  private Path write(Picture picture, RunRecord run, Path file) {
    try {
      Files.createDirectories(file.resolveSibling(""));
    } catch (IOException e) {
      throw new UncheckedIOException("the folder of " + file + " cannot be made", e);
    }
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
