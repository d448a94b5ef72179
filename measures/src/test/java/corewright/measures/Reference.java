package corewright.measures;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reference values of the test resources; their README says where each comes from. */
public final class Reference {
  private Reference() {}

  /** Lines of a resource, for example {@code /reference/gum_h2.csv}. */
  public static List<String> lines(String resource) {
    try (InputStream in =
        Objects.requireNonNull(Reference.class.getResourceAsStream(resource), resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  /** Rows of numbers of a CSV; comment lines and the one line of names are left out. */
  public static double[][] table(String resource) {
    return lines(resource).stream()
        .filter(line -> !line.startsWith("#"))
        .skip(1)
        .map(Reference::row)
        .toArray(double[][]::new);
  }

  /** One column of {@link #table}. */
  public static double[] column(String resource, int column) {
    double[][] rows = table(resource);
    double[] values = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      values[i] = rows[i][column];
    }
    return values;
  }

  private static double[] row(String line) {
    String[] cells = line.split(",", -1);
    double[] numbers = new double[cells.length];
    for (int i = 0; i < cells.length; i++) {
      numbers[i] = Double.parseDouble(cells[i]);
    }
    return numbers;
  }
}
