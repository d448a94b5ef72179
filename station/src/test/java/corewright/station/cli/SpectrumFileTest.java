package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.measures.meter.HoldSpectrum;
import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Half a spectrum is no spectrum. */
class SpectrumFileTest {
  @Test
  void aDiskThatIsFullIsTold() {
    Spectrum spectrum = Spectrum.of(new double[256], 1000, Window.HANN, 64);
    Writer full =
        new Writer() {
          private int room = 400;

          @Override
          public void write(char[] text, int from, int count) throws IOException {
            room -= count;
            if (room < 0) {
              throw new IOException("No space left on device");
            }
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    List<HoldSpectrum> spectra = List.of(new HoldSpectrum(0, spectrum, spectrum));
    IOException told = assertThrows(IOException.class, () -> SpectrumFile.write(spectra, full));
    assertEquals("No space left on device", told.getMessage());
  }
}
