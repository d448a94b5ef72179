package corewright.bench.log.made;

import java.util.Locale;

/** How an export writes times. */
public enum Stamp {
  SECONDS,
  MILLISECONDS,
  CLOCK,
  OVER_MIDNIGHT,
  TWELVE_HOURS,
  DATE_AND_CLOCK,
  EPOCH_MS,
  SPREADSHEET_DAYS,
  WHOLE_SECONDS,
  FRAMES;

  /** Beginning of the recording, seconds of the day. */
  private static final double BEGIN_S = 46_797.25;

  String text(double t_s, int frame, char decimal) {
    return switch (this) {
      case SECONDS -> number(t_s, 2, decimal);
      case MILLISECONDS -> number(1000 * t_s, 0, decimal);
      case CLOCK -> clock(BEGIN_S + t_s, decimal, 24);
      case OVER_MIDNIGHT -> clock((86_396.5 + t_s) % 86_400, decimal, 24);
      case TWELVE_HOURS -> clock(BEGIN_S + t_s, decimal, 12) + " PM";
      case DATE_AND_CLOCK -> "03.11.2025 " + clock(BEGIN_S + t_s, decimal, 24);
      case EPOCH_MS -> number(1_762_178_722_310.0 + 1000 * t_s, 0, decimal);
      case SPREADSHEET_DAYS -> number(45_964 + (BEGIN_S + t_s) / 86_400, 9, decimal);
      case WHOLE_SECONDS -> clock(BEGIN_S + t_s, decimal, 24).substring(0, 8);
      case FRAMES -> String.valueOf(frame);
    };
  }

  /** What the header says after the name. */
  String unit() {
    return switch (this) {
      case SECONDS -> "s";
      case MILLISECONDS -> "ms";
      default -> "";
    };
  }

  static String number(double value, int decimals, char decimal) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value).replace('.', decimal);
  }

  private static String clock(double s, char decimal, int hours) {
    int hour = (int) (s / 3600);
    int shown = hours == 12 ? (hour + 11) % 12 + 1 : hour;
    String rest = number(s % 60, 3, decimal);
    return String.format(Locale.ROOT, hours == 12 ? "%d" : "%02d", shown)
        + String.format(Locale.ROOT, ":%02d:", (int) (s / 60) % 60)
        + (s % 60 < 10 ? "0" : "")
        + rest;
  }
}
