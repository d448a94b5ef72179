package corewright.bench.log;

import corewright.bench.log.made.Export;
import corewright.bench.log.made.Poll;
import corewright.bench.log.made.Vehicle;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.LogText;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Made logs as text, and their readings. */
final class Logs {
  private Logs() {}

  static LogReading read(String text) {
    return read(text, Choices.none(), Optional.empty());
  }

  static LogReading read(String text, Choices choices, Optional<LogFamily> family) {
    return LogAnalysis.of(
        LogText.of("log.csv", text),
        new LogRequest(family, MadeFamilies.ALL, choices, Optional.empty()));
  }

  static LogReading read(Vehicle vehicle, Export export) {
    return read(String.join("\n", export.lines(shots(vehicle))));
  }

  /** Four rows a second, one channel's noise, no jitter. */
  static List<Poll.Shot> shots(Vehicle vehicle) {
    return Poll.steady(4).of(vehicle, 1);
  }

  /** A header and a line for each shot, for logs that no export of the generator writes. */
  static String lines(String header, List<Poll.Shot> shots, Function<Poll.Shot, String> line) {
    return header + "\n" + shots.stream().map(line).collect(Collectors.joining("\n"));
  }

  static String line(Object... cells) {
    StringBuilder line = new StringBuilder();
    for (Object cell : cells) {
      line.append(line.isEmpty() ? "" : ",")
          .append(
              cell instanceof Double d ? String.format(java.util.Locale.ROOT, "%.2f", d) : cell);
    }
    return line.toString();
  }
}
