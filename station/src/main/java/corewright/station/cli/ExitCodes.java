package corewright.station.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the program leaves behind, the same for every command. {@code --help} of each command says
 * which of them it uses.
 */
public final class ExitCodes {
  /** Done; what was asked for is there. */
  public static final int DONE = 0;

  /** Refused or not possible: a bad file, an unknown tag. The remedy is on stderr. */
  public static final int REFUSED = 1;

  /** The command line itself is wrong. */
  public static final int USAGE = 2;

  /** The bench is at fault; everything is in the safe state, nothing is said about the unit. */
  public static final int BENCH_FAULT = 3;

  /** The record is not as it was written; the first place stands on stdout. */
  public static final int BROKEN_RECORD = 4;

  /** A fault of the program itself, with a stack trace to send on. */
  public static final int PROGRAM_FAULT = 70;

  /** What {@code --help} of every command lists. */
  static Map<String, String> list() {
    Map<String, String> list = new LinkedHashMap<>();
    list.put(String.valueOf(DONE), "done");
    list.put(String.valueOf(REFUSED), "refused: what was wrong and what to do stand on stderr");
    list.put(String.valueOf(USAGE), "the command line is wrong");
    list.put(
        String.valueOf(BENCH_FAULT),
        "bench fault: safe state commanded, nothing is said about the unit");
    list.put(
        String.valueOf(BROKEN_RECORD),
        "verify: the record was changed, or something is missing in it");
    list.put(String.valueOf(PROGRAM_FAULT), "fault of the program itself");
    return list;
  }

  private ExitCodes() {}
}
