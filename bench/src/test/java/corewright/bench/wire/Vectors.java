package corewright.bench.wire;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;

/** Reads fixtures/vectors/frames.txt; its head says how it is built. */
record Vectors(String kind, String name, List<String> lines) {

  static List<Vectors> all(String kind) {
    Path file = Path.of(System.getProperty("corewright.home"), "fixtures/vectors/frames.txt");
    try {
      return Arrays.stream(Files.readString(file).split("\n\n"))
          .map(record -> record.lines().filter(line -> !line.startsWith("#")).toList())
          .filter(lines -> !lines.isEmpty() && lines.get(0).startsWith(kind + " "))
          .map(lines -> new Vectors(kind, lines.get(0).split(" ")[1], lines))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Vectors of(String kind, String name) {
    return all(kind).stream().filter(v -> v.name().equals(name)).findFirst().orElseThrow();
  }

  byte[] wire() {
    return bytes(String.join(" ", values("hex")));
  }

  byte[] payload() {
    return bytes(value("payload"));
  }

  String value(String key) {
    return values(key).stream().findFirst().orElseThrow();
  }

  List<String> values(String key) {
    return lines.stream()
        .filter(line -> line.equals(key) || line.startsWith(key + " "))
        .map(line -> line.substring(key.length()).strip())
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private static byte[] bytes(String hex) {
    return HexFormat.of().parseHex(hex.replace(" ", ""));
  }

  @Override
  public String toString() {
    return kind + " " + name;
  }
}
