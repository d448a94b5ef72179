package corewright.station.cli;

/** Whether a person is looking: lines are written over on a terminal only. */
final class Terminal {
  private Terminal() {}

  /**
   * False in a pipe, in a script, and where NO_COLOR or a dumb terminal asks for plain text. The
   * launcher looks whether stderr is a terminal; Java itself answers differently by version.
   */
  static boolean here() {
    return "yes".equals(System.getProperty("corewright.terminal"))
        && System.getenv("NO_COLOR") == null
        && !"dumb".equals(System.getenv("TERM"));
  }
}
