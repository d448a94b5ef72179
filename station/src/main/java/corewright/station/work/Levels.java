package corewright.station.work;

import corewright.measures.statistics.CalibrationLine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What a channel and a meter read side by side, level by level; in the channel's unit.
 *
 * @param meter reading of the meter
 * @param u its standard uncertainty; above 0
 * @param bench reading of the channel
 */
record Levels(List<Double> meter, List<Double> u, List<Double> bench) {
  /** A line through fewer says too little about its own uncertainty. */
  static final int LEAST = 10;

  /**
   * Reads lines {@code meter;u;bench}, with commas between where the decimals have points. Lines
   * that begin with # and one line of names are left out.
   *
   * @throws Refused that names the line
   */
  static Levels read(Path file) {
    List<String> lines;
    try {
      lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Refused(
          "The levels cannot be read from " + file + (Files.exists(file) ? "" : ": no such file"),
          "Name a text file (UTF-8) with a line for each level: meter;u;bench.");
    }
    Levels levels = new Levels(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (!line.isEmpty()
          && !line.startsWith("#")
          && !(i == 0 && Character.isLetter(line.charAt(0)))) {
        levels.add(line, file + ":" + (i + 1));
      }
    }
    if (levels.meter.size() < LEAST) {
      throw new Refused(
          file + " holds " + levels.meter.size() + " levels",
          "Take at least " + LEAST + " over the whole range of the channel.");
    }
    return levels;
  }

  private void add(String line, String where) {
    String[] cells =
        line.contains(";") ? line.replace(',', '.').split(";", -1) : line.split(",", -1);
    try {
      double known = Double.parseDouble(cells[1].strip());
      if (cells.length != 3 || !(known > 0) || !Double.isFinite(known)) {
        throw new NumberFormatException();
      }
      meter.add(finite(cells[0]));
      bench.add(finite(cells[2]));
      u.add(known);
    } catch (NumberFormatException | ArrayIndexOutOfBoundsException no) {
      throw new Refused(
          where + " is not a level: " + line,
          "Write meter;u;bench: what the meter read, its standard uncertainty (above 0), what the"
              + " channel read.");
    }
  }

  private static double finite(String cell) {
    double value = Double.parseDouble(cell.strip());
    if (!Double.isFinite(value)) {
      throw new NumberFormatException();
    }
    return value;
  }

  /** What the channel reads too much. */
  CalibrationLine line() {
    return CalibrationLine.of(0, array(meter), errors(), array(u));
  }

  double[] errors() {
    double[] errors = new double[meter.size()];
    for (int i = 0; i < errors.length; i++) {
      errors[i] = bench.get(i) - meter.get(i);
    }
    return errors;
  }

  private static double[] array(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
