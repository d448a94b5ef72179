package corewright.station.cli;

import corewright.measures.Figures;
import corewright.measures.meter.HoldSpectrum;
import corewright.measures.spectrum.Spectrum;
import corewright.station.work.MeasureFile.Result;
import corewright.station.work.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;

/**
 * The spectrum of the output in every hold, as CSV: lines that begin with # say how it was made,
 * then headings, units, and a row for each bin.
 */
final class SpectrumFile {
  private SpectrumFile() {}

  /**
   * Writes a new file.
   *
   * @throws Refused if it is there already, or no hold is long enough
   */
  static void write(Result result, Path path) {
    List<HoldSpectrum> spectra = HoldSpectrum.of(result.recording().capture(), result.run());
    if (spectra.isEmpty()) {
      throw new Refused(
          "No hold leaves 256 samples or more without a gap, so there is no spectrum",
          "Record longer holds or faster, or give a shorter --settle.");
    }
    try (Writer out = Files.newBufferedWriter(path, StandardOpenOption.CREATE_NEW)) {
      write(spectra, out);
    } catch (FileAlreadyExistsException there) {
      throw new Refused(path + " is there already", "Name a new file.");
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write " + path, refused);
    }
  }

  /**
   * @throws IOException if the disk does not take all of it
   */
  static void write(List<HoldSpectrum> spectra, Writer out) throws IOException {
    for (HoldSpectrum each : spectra) {
      out.write(about(each));
    }
    out.write("hold,frequency,amplitude,density\n,Hz,V,V/√Hz\n");
    for (HoldSpectrum each : spectra) {
      for (int bin = 0; bin < each.lines().size(); bin++) {
        out.write(
            String.format(
                Locale.ROOT,
                "%d,%.9g,%.6g,%.6g\n",
                each.hold() + 1,
                each.lines().frequency_Hz(bin),
                each.lines().amplitude(bin),
                each.noise().density(bin)));
      }
    }
  }

  private static String about(HoldSpectrum each) {
    Spectrum lines = each.lines();
    int samples = 2 * (lines.size() - 1);
    return String.format(
        Locale.ROOT,
        "# hold %d: output over the judged window; %d segments of %d samples; half overlapping;"
            + " bins %s Hz apart\n"
            + "# amplitude: peak of a sine; flat-top window %s; resolution %s Hz\n"
            + "# density: one-sided rms; window %s; resolution %s Hz; ± %s %% (k = 2)\n",
        each.hold() + 1,
        lines.segments(),
        samples,
        Figures.number(lines.binWidth_Hz(), 5),
        lines.window(),
        resolution(lines),
        each.noise().window(),
        resolution(each.noise()),
        Figures.number(200 * each.densityU_rel(), 2));
  }

  /** Noise bandwidth of the window. */
  private static String resolution(Spectrum spectrum) {
    return Figures.number(spectrum.window().noiseBandwidth() * spectrum.binWidth_Hz(), 4);
  }
}
