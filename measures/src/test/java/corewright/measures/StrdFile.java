package corewright.measures;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One of NIST's Statistical Reference Datasets: certified values as printed, and the data. */
public final class StrdFile {
  private static final String NUMBER = "(-?[\\d.]+(?:[Ee][-+]?\\d+)?)";

  private final List<String> lines;

  private StrdFile(List<String> lines) {
    this.lines = lines;
  }

  public static StrdFile read(String name) {
    return new StrdFile(Reference.lines("/nist-strd/" + name + ".dat"));
  }

  /** The numbers at the end of the first line that begins with {@code label}. */
  public double[] certified(String label) {
    Pattern pattern = Pattern.compile("^\\s*" + label + ".*?((\\s+" + NUMBER + ")+)\\s*$");
    for (String line : lines) {
      Matcher found = pattern.matcher(line);
      if (found.matches()) {
        return numbers(found.group(1));
      }
    }
    throw new IllegalArgumentException("no line '" + label + "'");
  }

  /** Lines {@code B0}, {@code b1 =} and so on: one row of numbers for each parameter. */
  public List<double[]> parameters() {
    Pattern pattern =
        Pattern.compile("^\\s*[Bb]\\d+\\s*=?\\s+(" + NUMBER + "\\s+" + NUMBER + ".*)$");
    List<double[]> rows = new ArrayList<>();
    for (String line : lines) {
      Matcher found = pattern.matcher(line);
      if (found.matches()) {
        rows.add(numbers(found.group(1)));
      }
    }
    return rows;
  }

  /** Rows under the last line that begins with {@code Data:}. */
  public double[][] data() {
    int last = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith("Data:")) {
        last = i;
      }
    }
    return lines.subList(last + 1, lines.size()).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("---"))
        .map(StrdFile::numbers)
        .toArray(double[][]::new);
  }

  /** Column of {@link #data}. */
  public double[] column(int column) {
    double[][] data = data();
    double[] values = new double[data.length];
    for (int i = 0; i < data.length; i++) {
      values[i] = data[i][column];
    }
    return values;
  }

  /**
   * Correct digits of a value, log relative error, at most 15: what a certified value of 15 digits
   * can show. Where 0 is certified, the log of the absolute error.
   */
  public static double digits(double value, double certified) {
    if (value == certified) {
      return 15;
    }
    double error = Math.abs(value - certified) / (certified == 0 ? 1 : Math.abs(certified));
    return Math.min(15, -Math.log10(error));
  }

  /** Fails unless {@code value} has at least that many {@link #digits}. */
  public static void assertDigits(double least, double value, double certified, String what) {
    double digits = digits(value, certified);
    assertTrue(digits >= least, what + ": " + value + " has " + digits + " digits of " + certified);
  }

  private static double[] numbers(String text) {
    return Pattern.compile("\\s+")
        .splitAsStream(text.strip())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
