package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import io.jhdf.HdfFile;
import io.jhdf.WritableHdfFile;
import io.jhdf.api.DatasetCreationOptions;
import io.jhdf.api.WritableDataset;
import io.jhdf.api.WritableGroup;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Seals a capture into HDF5: a group for each segment, a dataset of 16-bit codes for each channel,
 * chunked, shuffled and deflated; value = offset + lsb × code.
 */
final class HdfWriter {

  private HdfWriter() {}

  static void write(StoredCapture capture, Path path) {
    CaptureHeader header = capture.header();
    try (WritableHdfFile file = HdfFile.write(path)) {
      file.putAttribute(HdfFormat.FORMAT, HdfFormat.FORMAT_1);
      file.putAttribute(HdfFormat.RATE, header.rate_Hz());
      file.putAttribute(
          HdfFormat.CHANNELS, header.channels().stream().map(Channel::name).toArray(String[]::new));
      if (!header.feeds().isEmpty()) {
        file.putAttribute(HdfFormat.FEEDS, header.feeds().toArray(String[]::new));
      }
      header.notes().forEach((name, value) -> text(file, HdfFormat.NOTE + name, value));
      capture.end().ifPresent(end -> end(file, end));
      for (int i = 0; i < capture.segments().size(); i++) {
        Segment segment = capture.segments().get(i);
        segment(
            file.putGroup(String.format(Locale.ROOT, "%03d-%s", i, segment.id())), header, segment);
      }
    }
  }

  private static void segment(WritableGroup group, CaptureHeader header, Segment segment) {
    group.putAttribute(HdfFormat.ID, segment.id());
    group.putAttribute(HdfFormat.KIND, segment.kind());
    group.putAttribute(HdfFormat.RATE, segment.rate_Hz());
    group.putAttribute(HdfFormat.FIRST, segment.first());
    DatasetCreationOptions packed =
        DatasetCreationOptions.builder()
            .chunkDimensions(Math.min(HdfFormat.CHUNK, segment.samples()))
            .shuffle()
            .deflate(4)
            .build();
    for (int c = 0; c < header.channels().size(); c++) {
      Channel channel = header.channels().get(c);
      WritableDataset codes = group.putDataset(channel.name(), segment.codes()[c], packed);
      codes.putAttribute(HdfFormat.UNIT, channel.unit());
      codes.putAttribute(HdfFormat.LSB, channel.lsb());
      codes.putAttribute(HdfFormat.OFFSET, channel.offset());
    }
    if (!segment.gaps().isEmpty()) {
      group.putDataset(HdfFormat.GAPS, gaps(segment.gaps()));
    }
  }

  private static int[][] gaps(List<Capture.Gap> gaps) {
    return gaps.stream().map(g -> new int[] {g.from(), g.count()}).toArray(int[][]::new);
  }

  private static void end(WritableHdfFile file, RunEnd end) {
    text(file, HdfFormat.END + "kind", end.kind().name());
    text(file, HdfFormat.END + "trip", end.trip().name());
    text(file, HdfFormat.END + "step", end.step());
    file.putAttribute(HdfFormat.END + "at_s", end.at_s());
    text(file, HdfFormat.END + "saw", end.saw());
    text(file, HdfFormat.END + "remedy", end.remedy());
  }

  /** An empty text has no size that HDF5 could store. */
  private static void text(WritableHdfFile file, String name, String value) {
    if (!value.isEmpty()) {
      file.putAttribute(name, value);
    }
  }
}
