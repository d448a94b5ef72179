package corewright.measures.wave;

import corewright.measures.Waveform;
import java.util.ArrayList;
import java.util.List;

/**
 * Pulses of the load in a stretch: excursions from the level at which it lies most of the time, by
 * at least a quarter of the largest, all to one side. A single wild sample is none.
 *
 * @param base the level between pulses, in the waveform's unit
 * @param pulses in order; those that the stretch cuts off at either end are left out
 */
public record PulseTrain(double base, List<Pulse> pulses) {
  private static final int BINS = 200;
  private static final double BEGINS = 0.25; // of the largest excursion
  private static final double ENDS = 0.1;
  private static final int FEWEST_SAMPLES = 2;
  private static final double NOISE_MARGIN = 8;
  private static final double CODES_MARGIN = 4;

  /** Smaller ones are no load that anybody switches, in the waveform's unit (A). */
  private static final double SMALLEST = 0.01;

  /** Largest part of the time that the load may be away for the rest to be its level. */
  private static final double MOSTLY = 0.5;

  public PulseTrain {
    pulses = List.copyOf(pulses);
  }

  /**
   * One excursion.
   *
   * @param from first sample that is away from the base
   * @param to after the last
   */
  public record Pulse(int from, int to) {
    public int length() {
      return to - from;
    }
  }

  /** No pulses at all where the load stays on its level, or is away from it most of the time. */
  public static PulseTrain find(Waveform load, int from, int to) {
    Stretch.require(load, from, to, 1);
    int low = load.codeAt(from);
    int high = low;
    for (int i = from; i < to; i++) {
      low = Math.min(low, load.codeAt(i));
      high = Math.max(high, load.codeAt(i));
    }
    double base = load.offset() + load.lsb() * commonest(load, from, to, low, high);
    double top = load.offset() + load.lsb() * high;
    double bottom = load.offset() + load.lsb() * low;
    double sign = top - base >= base - bottom ? 1 : -1;
    double largest = Math.max(top - base, base - bottom);
    double noise = 1.4826 * medianDistance(load, from, to, base, largest);
    double least = Math.max(SMALLEST, Math.max(CODES_MARGIN * load.lsb(), NOISE_MARGIN * noise));
    if (BEGINS * largest < least / 2 || largest < least) {
      return new PulseTrain(base, List.of());
    }
    return train(load, from, to, new Bounds(base, sign, BEGINS * largest, ENDS * largest));
  }

  private record Bounds(double base, double sign, double begins, double ends) {
    double away(Waveform load, int i) {
      return sign * (load.at(i) - base);
    }
  }

  private static PulseTrain train(Waveform load, int from, int to, Bounds bounds) {
    List<Pulse> pulses = new ArrayList<>();
    int away = 0;
    int i = from;
    while (i < to) {
      if (bounds.away(load, i) <= bounds.begins()) {
        i++;
        continue;
      }
      int start = i;
      while (start > from && bounds.away(load, start - 1) > bounds.ends()) {
        start--;
      }
      int end = i;
      while (end < to && bounds.away(load, end) > bounds.ends()) {
        end++;
      }
      away += end - start;
      if (end - start >= FEWEST_SAMPLES && start > from && end < to) {
        pulses.add(new Pulse(start, end));
      }
      i = end;
    }
    return new PulseTrain(bounds.base(), away > MOSTLY * (to - from) ? List.of() : pulses);
  }

  /** Middle of the fullest of {@value #BINS} bins, as a code. */
  private static double commonest(Waveform load, int from, int to, int low, int high) {
    if (high == low) {
      return low;
    }
    double width = Math.max(1, ((double) high - low + 1) / BINS);
    int[] counts = new int[BINS];
    double[] sums = new double[BINS];
    for (int i = from; i < to; i++) {
      int bin = Math.min(BINS - 1, (int) (((double) load.codeAt(i) - low) / width));
      counts[bin]++;
      sums[bin] += load.codeAt(i);
    }
    int fullest = 0;
    for (int b = 1; b < BINS; b++) {
      fullest = counts[b] > counts[fullest] ? b : fullest;
    }
    return sums[fullest] / counts[fullest];
  }

  /** Median distance from the base, by a histogram up to the largest. */
  private static double medianDistance(
      Waveform load, int from, int to, double base, double largest) {
    int bins = 2000;
    int[] counts = new int[bins + 1];
    for (int i = from; i < to; i++) {
      double distance = Math.abs(load.at(i) - base);
      counts[largest == 0 ? 0 : (int) Math.min(bins, distance / largest * bins)]++;
    }
    int seen = 0;
    int bin = 0;
    while (bin < bins && seen + counts[bin] < (to - from) / 2) {
      seen += counts[bin++];
    }
    return bin * largest / bins;
  }
}
