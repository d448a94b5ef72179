package corewright.station.web;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A picture in few colours: a page of this look needs no more, and the file is a third as large.
 */
final class FewColours {
  private static final int MOST_USED = 120;

  /** Beside them those that are least like any of them: a mark that is small keeps its copper. */
  private static final int RARE = 40;

  private FewColours() {}

  static BufferedImage of(BufferedImage seen) {
    int[] palette = palette(counts(seen));
    IndexColorModel model =
        new IndexColorModel(8, palette.length, palette, 0, false, -1, DataBuffer.TYPE_BYTE);
    BufferedImage flat =
        new BufferedImage(
            seen.getWidth(), seen.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        int index = nearest.computeIfAbsent(seen.getRGB(x, y), c -> nearest(palette, c));
        flat.getRaster().setSample(x, y, 0, index);
      }
    }
    return flat;
  }

  private static Map<Integer, Integer> counts(BufferedImage seen) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        counts.merge(seen.getRGB(x, y), 1, Integer::sum);
      }
    }
    return counts;
  }

  private static int[] palette(Map<Integer, Integer> counts) {
    List<Integer> left = new ArrayList<>(counts.keySet());
    left.sort(Comparator.comparing((Integer c) -> -counts.get(c)).thenComparing(c -> c));
    List<Integer> taken = new ArrayList<>(left.subList(0, Math.min(MOST_USED, left.size())));
    left.subList(0, taken.size()).clear();
    while (!left.isEmpty() && taken.size() < MOST_USED + RARE) {
      int[] sofar = taken.stream().mapToInt(Integer::intValue).toArray();
      Integer far =
          left.stream()
              .max(Comparator.comparingLong(c -> apart(sofar[nearest(sofar, c)], c)))
              .orElseThrow();
      taken.add(far);
      left.remove(far);
    }
    return taken.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int nearest(int[] palette, int colour) {
    int best = 0;
    long least = Long.MAX_VALUE;
    for (int i = 0; i < palette.length; i++) {
      long apart = apart(palette[i], colour);
      if (apart < least) {
        least = apart;
        best = i;
      }
    }
    return best;
  }

  private static long apart(int one, int other) {
    long red = (one >> 16 & 255) - (other >> 16 & 255);
    long green = (one >> 8 & 255) - (other >> 8 & 255);
    long blue = (one & 255) - (other & 255);
    return red * red + green * green + blue * blue;
  }
}
