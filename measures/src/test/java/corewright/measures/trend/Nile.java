package corewright.measures.trend;

/**
 * Yearly flow of the Nile at Aswan, 1871 to 1970, 10⁸ m³: the classical record with one step, after
 * 1898 (Cobb, Biometrika 65 (1978) 243). From memory; its means 919.35, 1097.75 before and 849.97
 * after are the published ones.
 */
final class Nile {
  static final double[] FLOW = {
    1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180,
    799, 958, 1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833,
    701, 916, 692, 1020, 1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845,
    864, 862, 698, 845, 744, 796, 1040, 759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649,
    846, 812, 742, 801, 1040, 860, 874, 848, 890, 744, 749, 838, 1050, 918, 986, 797, 923, 975, 815,
    1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740
  };

  private Nile() {}

  static double[] years() {
    double[] years = new double[FLOW.length];
    for (int i = 0; i < years.length; i++) {
      years[i] = i;
    }
    return years;
  }
}
