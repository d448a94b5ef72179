package corewright.measures.uncertainty;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Inputs and how they err together. */
public final class Inputs {
  private final List<Input> list;
  private final double[][] r;

  private Inputs(List<Input> list, double[][] r) {
    this.list = list;
    this.r = r;
  }

  /**
   * @throws IllegalArgumentException if two inputs have one name, or a correlation names an input
   *     that is not there
   */
  public static Inputs of(List<Input> inputs, List<Correlation> correlations) {
    Set<String> names = new HashSet<>();
    for (Input input : inputs) {
      if (!names.add(input.name())) {
        throw new IllegalArgumentException("two inputs are called '" + input.name() + "'");
      }
    }
    List<String> order = inputs.stream().map(Input::name).toList();
    double[][] r = new double[inputs.size()][inputs.size()];
    for (int i = 0; i < r.length; i++) {
      r[i][i] = 1;
    }
    for (Correlation correlation : correlations) {
      int i = index(order, correlation.one());
      int j = index(order, correlation.other());
      r[i][j] = correlation.r();
      r[j][i] = correlation.r();
    }
    return new Inputs(List.copyOf(inputs), r);
  }

  public static Inputs independent(Input... inputs) {
    return of(Arrays.asList(inputs), List.of());
  }

  private static int index(List<String> order, String name) {
    int index = order.indexOf(name);
    if (index < 0) {
      throw new IllegalArgumentException("no input is called '" + name + "', there are " + order);
    }
    return index;
  }

  public int size() {
    return list.size();
  }

  public Input get(int i) {
    return list.get(i);
  }

  public double correlation(int i, int j) {
    return r[i][j];
  }

  double[] values() {
    return list.stream().mapToDouble(Input::value).toArray();
  }

  /** Whether any two inputs err together. */
  boolean correlated(int i) {
    for (int j = 0; j < r.length; j++) {
      if (j != i && r[i][j] != 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Numbers of groups of inputs that hang together by correlations, one for each input: inputs with
   * the same number err together, directly or through others.
   */
  int[] groups() {
    int[] group = new int[list.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < group.length; i++) {
        for (int j = 0; j < group.length; j++) {
          if (r[i][j] != 0 && group[j] > group[i]) {
            group[j] = group[i];
            changed = true;
          }
        }
      }
    }
    return group;
  }
}
