package corewright.bench.log.made;

import java.util.List;
import java.util.Random;

/** One made log with its truth. */
public record MadeLog(
    int number, Story story, Vehicle vehicle, Poll poll, Export export, List<Poll.Shot> shots) {
  private static final double[] NOMINALS_V = {48, 110, 65};
  private static final double[] RATES_HZ = {2, 4, 5, 10, 20};
  private static final String[] ENCODINGS = {"8", "8b", "l", "b", "w"};
  private static final char[] DELIMITERS = {';', '\t', ',', '|'};
  private static final String[] LINE_ENDS = {"\n", "\r\n", "\r"};

  /** Languages, layouts, rates and encodings: so many numbers have every combination of them. */
  public static final int COMBINATIONS =
      Language.values().length * Layout.values().length * RATES_HZ.length * ENCODINGS.length;

  /**
   * The log of this number. Neighbours differ in everything: 907 shares no divisor with the number
   * of combinations, so each comes once, and the first few hundred have every pair. Stamp, story
   * and the rest count on at their own pace.
   */
  public static MadeLog of(int number) {
    Random random = new Random(7919L * number + 17);
    int rest = (int) (907L * number % COMBINATIONS);
    Language language = pick(Language.values(), rest);
    rest /= Language.values().length;
    Layout layout = pick(Layout.values(), rest);
    rest /= Layout.values().length;
    double rate_Hz = RATES_HZ[rest % RATES_HZ.length];
    String encoding = ENCODINGS[rest / RATES_HZ.length];
    Stamp stamp = stamp(layout, pick(Stamp.values(), number / 3 + number / 30));
    Story story = pick(Story.values(), number / 7 + number);
    char delimiter = delimiter(layout, stamp, DELIMITERS[(number / 4) % DELIMITERS.length]);
    boolean milli = number % 9 == 4 && layout != Layout.COMMA_PAIRS;
    Export export =
        new Export(
            language,
            delimiter,
            stamp,
            layout,
            milli,
            story.wantsFuel() || number % 4 == 1,
            encoding,
            LINE_ENDS[(number / 13) % LINE_ENDS.length]);
    double nominal_V = NOMINALS_V[(number / 8) % NOMINALS_V.length];
    Poll poll =
        new Poll(
            rate_Hz,
            layout == Layout.TIME_PER_SIGNAL
                || layout == Layout.ONE_CHANNEL_A_ROW
                || number % 2 == 0,
            stamp == Stamp.FRAMES ? 0 : 0.25,
            stamp == Stamp.FRAMES ? 0 : 0.05,
            number % 3 == 0 ? 0.05 : 0.1,
            number % 6 == 2 ? 0.5 : 0.1,
            0.04 * nominal_V / 48);
    Vehicle vehicle = story.vehicle(nominal_V, rate_Hz, random);
    return new MadeLog(number, story, vehicle, poll, export, poll.of(vehicle, number));
  }

  /** Whether it may be read at all: frames without a rate may not. */
  public boolean readable() {
    return export.stamp() != Stamp.FRAMES;
  }

  public String name() {
    return String.format(
        java.util.Locale.ROOT,
        "%03d-%s-%s-%s-%s-%s-%.0fHz.csv",
        number,
        story,
        export.language(),
        export.layout(),
        export.stamp(),
        export.encoding(),
        poll.rate_Hz());
  }

  public byte[] bytes() {
    return export.bytes(shots);
  }

  /** Whole seconds need rows enough to spread; signals polled in turn need a finer clock. */
  private static Stamp stamp(Layout layout, Stamp wanted) {
    boolean inTurn = layout == Layout.TIME_PER_SIGNAL || layout == Layout.ONE_CHANNEL_A_ROW;
    boolean repeated = layout == Layout.REPEATED_ROWS || layout == Layout.CELL_UNITS;
    return (inTurn || repeated) && (wanted == Stamp.WHOLE_SECONDS || wanted == Stamp.FRAMES)
        ? Stamp.CLOCK
        : wanted;
  }

  private static char delimiter(Layout layout, Stamp stamp, char wanted) {
    return switch (layout) {
      case COMMA_PAIRS -> ',';
      case QUOTED -> wanted == '|' ? ',' : wanted;
      default -> wanted;
    };
  }

  private static <T> T pick(T[] from, int number) {
    return from[number % from.length];
  }
}
