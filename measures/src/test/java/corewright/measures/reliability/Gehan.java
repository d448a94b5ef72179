package corewright.measures.reliability;

import java.util.ArrayList;
import java.util.List;

/** Remission in weeks of a leukaemia trial (Gehan 1965), from the R package MASS. */
final class Gehan {
  static final List<Lifetime> TREATED =
      lives(
          new double[] {6, 6, 6, 7, 10, 13, 16, 22, 23},
          new double[] {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35});
  static final List<Lifetime> CONTROL =
      lives(
          new double[] {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23},
          new double[] {});

  private Gehan() {}

  private static List<Lifetime> lives(double[] failed, double[] suspended) {
    List<Lifetime> lives = new ArrayList<>();
    for (double time : failed) {
      lives.add(Lifetime.failure(time));
    }
    for (double time : suspended) {
      lives.add(Lifetime.suspension(time));
    }
    return lives;
  }
}
