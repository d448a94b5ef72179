package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import io.jhdf.HdfFile;
import io.jhdf.api.Attribute;
import io.jhdf.api.Dataset;
import io.jhdf.api.Group;
import io.jhdf.api.Node;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntConsumer;

/** Reads a sealed capture, a chunk of every channel at a time. */
final class HdfReader {

  private HdfReader() {}

  /**
   * @param progress told after each chunk
   * @throws IllegalArgumentException if it is not one of ours
   */
  static void read(Path path, CaptureParts parts, ReadProgress progress) {
    try (HdfFile file = new HdfFile(path)) {
      if (!file.getAttributes().containsKey(HdfFormat.FORMAT)
          || !text(file, HdfFormat.FORMAT).equals(HdfFormat.FORMAT_1)) {
        throw new IllegalArgumentException("its 'format' is not '" + HdfFormat.FORMAT_1 + "'");
      }
      List<Group> groups = new ArrayList<>();
      for (Node node : file) {
        if (node instanceof Group group) {
          groups.add(group);
        }
      }
      groups.sort((a, b) -> a.getName().compareTo(b.getName()));
      List<String> names = words(file, HdfFormat.CHANNELS);
      List<Channel> channels = groups.isEmpty() ? List.of() : channels(groups.get(0), names);
      parts.header(
          new CaptureHeader(
              (double) value(file, HdfFormat.RATE),
              channels,
              words(file, HdfFormat.FEEDS),
              notes(file)));
      long all = groups.stream().mapToLong(g -> samples(g, names)).sum();
      long done = 0;
      for (Group group : groups) {
        long before = done;
        segment(
            group,
            names,
            parts,
            n -> progress.at(Math.round((double) file.size() * (before + n) / all), file.size()));
        done += samples(group, names);
      }
      end(file).ifPresent(parts::end);
    }
  }

  private static List<Channel> channels(Group group, List<String> names) {
    return names.stream()
        .map(
            name -> {
              Node codes = group.getChild(name);
              return new Channel(
                  name,
                  text(codes, HdfFormat.UNIT),
                  (double) value(codes, HdfFormat.LSB),
                  (double) value(codes, HdfFormat.OFFSET));
            })
        .toList();
  }

  private static void segment(
      Group group, List<String> names, CaptureParts parts, IntConsumer progress) {
    parts.segment(
        text(group, HdfFormat.ID),
        text(group, HdfFormat.KIND),
        (double) value(group, HdfFormat.RATE));
    List<Dataset> channels = names.stream().map(group::getDatasetByPath).toList();
    long first = (long) value(group, HdfFormat.FIRST);
    int samples = samples(group, names);
    if (channels.stream().anyMatch(c -> c.getSize() != samples)) {
      throw new IllegalArgumentException("channels of '" + group.getName() + "' differ in length");
    }
    for (int at = 0; at < samples; at += HdfFormat.CHUNK) {
      long[] from = {at};
      int[] count = {Math.min(HdfFormat.CHUNK, samples - at)};
      parts.samples(
          first + at,
          channels.stream().map(c -> (short[]) c.getData(from, count)).toArray(short[][]::new));
      progress.accept(at + count[0]);
    }
    if (group.getChildren().containsKey(HdfFormat.GAPS)) {
      List<Capture.Gap> gaps = new ArrayList<>();
      for (int[] gap : (int[][]) group.getDatasetByPath(HdfFormat.GAPS).getData()) {
        gaps.add(new Capture.Gap(gap[0], gap[1]));
      }
      parts.gaps(gaps);
    }
  }

  private static int samples(Group group, List<String> names) {
    return names.isEmpty() ? 0 : Math.toIntExact(group.getDatasetByPath(names.get(0)).getSize());
  }

  private static SortedMap<String, String> notes(HdfFile file) {
    SortedMap<String, String> notes = new TreeMap<>();
    for (Attribute attribute : file.getAttributes().values()) {
      if (attribute.getName().startsWith(HdfFormat.NOTE)) {
        notes.put(
            attribute.getName().substring(HdfFormat.NOTE.length()),
            text(file, attribute.getName()));
      }
    }
    return notes;
  }

  private static Optional<RunEnd> end(HdfFile file) {
    if (!file.getAttributes().containsKey(HdfFormat.END + "kind")) {
      return Optional.empty();
    }
    return Optional.of(
        new RunEnd(
            RunEnd.Kind.valueOf(text(file, HdfFormat.END + "kind")),
            RunEnd.Trip.valueOf(text(file, HdfFormat.END + "trip")),
            text(file, HdfFormat.END + "step"),
            (double) value(file, HdfFormat.END + "at_s"),
            text(file, HdfFormat.END + "saw"),
            text(file, HdfFormat.END + "remedy")));
  }

  private static List<String> words(Node node, String name) {
    return node.getAttributes().containsKey(name)
        ? List.of((String[]) value(node, name))
        : List.of();
  }

  private static String text(Node node, String name) {
    return node.getAttributes().containsKey(name) ? value(node, name).toString() : "";
  }

  private static Object value(Node node, String name) {
    Attribute attribute = node.getAttributes().get(name);
    if (attribute == null) {
      throw new IllegalArgumentException("'" + node.getName() + "' has no '" + name + "'");
    }
    return attribute.getData();
  }
}
