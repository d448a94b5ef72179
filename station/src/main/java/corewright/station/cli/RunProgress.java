package corewright.station.cli;

import corewright.bench.record.RunEnd;
import corewright.bench.run.GuardFinding;
import corewright.bench.run.RunListener;
import corewright.profiles.Step;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/**
 * One line on stderr that says what the bench is doing; on a terminal it is written over, elsewhere
 * only the end of a run is said.
 */
final class RunProgress implements RunListener {
  private static final int WIDTH = 78;

  private final PrintWriter err;
  private final boolean terminal;
  private final String head;
  private String step = "";
  private int lastPercent = -1;

  RunProgress(PrintWriter err, boolean terminal, String head) {
    this.err = err;
    this.terminal = terminal;
    this.head = head;
  }

  @Override
  public void guarded(List<GuardFinding> findings) {
    findings.stream()
        .filter(f -> !f.passed())
        .forEach(f -> say("guard " + f.guard() + ": " + f.saw() + " " + f.remedy()));
  }

  @Override
  public void step(Step now, int index, int count) {
    step = now.title();
    lastPercent = -1;
  }

  @Override
  public void progress(double done_s, double total_s) {
    int percent = (int) Math.floor(100 * done_s / Math.max(total_s, 1e-9));
    if (terminal && percent != lastPercent) {
      lastPercent = percent;
      String line = String.format(Locale.ROOT, "%s %3d %%  %s", head, percent, step);
      err.print("\r" + padded(line));
      err.flush();
    }
  }

  @Override
  public void safe(List<String> troubles) {
    troubles.forEach(t -> say("NOT SAFE: " + t));
    if (!troubles.isEmpty()) {
      say(
          "Press the stop button on the bench, switch the source off by hand, and measure before"
              + " you touch anything.");
    }
  }

  @Override
  public void ended(RunEnd end) {
    say(end.saw());
  }

  private void say(String sentence) {
    err.println((terminal ? "\r" : "") + padded(head + " " + sentence));
    err.flush();
  }

  private static String padded(String line) {
    return line.length() >= WIDTH ? line : line + " ".repeat(WIDTH - line.length());
  }
}
