package corewright.station.work;

import corewright.bench.capture.Recording;
import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.fixtures.describe.Calibration;
import corewright.measures.Capture;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a calibration says of the channels that a record has. */
final class OwnChannels {
  private OwnChannels() {}

  /**
   * Those of the calibration that the record has.
   *
   * @throws BadFile if it says nothing of the output, so that no reading would be the better for it
   */
  static List<ChannelCalibration> of(Calibration calibration, Recording recording) {
    Set<String> recorded = names(recording.capture());
    List<ChannelCalibration> own =
        calibration.channels().stream().filter(c -> recorded.contains(c.channel())).toList();
    if (own.stream().noneMatch(c -> c.channel().equals("output"))) {
      throw new BadFile(
          List.of(
              new Mistake(
                  calibration.origin().path(),
                  0,
                  "/channels",
                  "it says nothing of the channel output",
                  "Add it; this record has " + String.join(", ", recorded))));
    }
    return own;
  }

  private static Set<String> names(Capture capture) {
    Set<String> names = new LinkedHashSet<>();
    names.add("output");
    capture.load().ifPresent(load -> names.add("load"));
    capture.feeds().forEach(feed -> names.add(feed.name()));
    capture.inputCurrent().ifPresent(current -> names.add("inputCurrent"));
    return names;
  }
}
