package corewright.station.web.door;

import java.util.regex.Pattern;

/**
 * Where somebody wanted to go who had to sign in first. A telephone scans the code of one unit and
 * would else lose it at the door; no other page is kept, and never one of elsewhere.
 */
public final class Onward {
  private static final Pattern PAGE = Pattern.compile("/photograph/[A-Za-z0-9-]{1,40}");

  private Onward() {}

  static String asked(String path) {
    return PAGE.matcher(path).matches() ? "?to=" + path : "";
  }

  /** The page to go on to, {@code /} where none was kept. */
  public static String to(String kept) {
    return PAGE.matcher(kept).matches() ? kept : "/";
  }
}
