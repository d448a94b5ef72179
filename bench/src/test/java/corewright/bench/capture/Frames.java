package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A capture of two channels, made up: code of channel c at sample i is 100 c + i. */
final class Frames {
  static final CaptureHeader HEADER =
      new CaptureHeader(
          1000,
          List.of(
              new Channel("input", "V", 0.001, 0),
              new Channel("output", "V", 0.004, -1),
              new Channel("load", "A", 0.001, 0)),
          List.of("input"),
          new TreeMap<>(Map.of("profile", "sd48-arrival revision 3", "unit", "Prüfling Ω")));

  static final Status GOOD = new Status(true, true, false, false, false, false);

  private Frames() {}

  static Frame frame(int first, int samples) {
    short[][] codes = new short[3][samples];
    for (int c = 0; c < 3; c++) {
      for (int i = 0; i < samples; i++) {
        codes[c][i] = (short) (100 * c + first + i);
      }
    }
    return new Frame(first, GOOD, codes, 0);
  }
}
