package corewright.bench.diagnose;

/**
 * Healthy siblings: profile, trait, median, standard deviation. Counted on units drawn with the
 * spread of their parts, not on a shop's own; a shop replaces it by what its good units show.
 */
final class SiblingTable {
  private SiblingTable() {}

  // counted by .ci/soak/fault-zoo --count
  static final String TEXT =
      """
      ie110-arrival IDLE 1.7903 0.0314
      ie110-arrival LOSS 10.4084 0.4808
      ie110-arrival RINGING 0.2755 0.0083
      ie110-arrival STEP_FROM_REST 5.3447 0.0765
      ie110-arrival STEP_UNDER_LOAD 3.2399 0.0549
      pv65-arrival IDLE 0.9596 0.0377
      pv65-arrival LOSS 10.3088 0.2988
      pv65-arrival RINGING 0.0347 0.0054
      pv65-arrival STEP_FROM_REST 2.1075 0.0354
      pv65-arrival STEP_UNDER_LOAD 0.5439 0.0108
      ref48-crank RINGING 0.0748 0.0032
      ref48-crank STEP_FROM_REST 1.1361 0.0385
      ref48-crank STEP_UNDER_LOAD 0.4168 0.0112
      ref48-switching IDLE 1.0552 0.0071
      ref48-switching LOSS 3.0471 0.5015
      ref48-switching RINGING 0.0111 0.0018
      ref48-switching STEP_FROM_REST 1.5769 0.0161
      ref48-switching STEP_UNDER_LOAD 0.4398 0.0042
      sd48-arrival IDLE 1.1400 0.0237
      sd48-arrival LOSS 10.9301 0.3652
      sd48-arrival RINGING 0.0942 0.0177
      sd48-arrival STEP_FROM_REST 0.3959 0.0046
      sd48-arrival STEP_UNDER_LOAD 0.1318 0.0053
      """;
}
