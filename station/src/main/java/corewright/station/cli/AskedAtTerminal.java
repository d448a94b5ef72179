package corewright.station.cli;

import corewright.bench.hand.Hands;
import java.io.PrintWriter;

/** Asks the operator for what no instrument does; the bench measures whether it was done. */
record AskedAtTerminal(String name, PrintWriter err) implements Hands {
  @Override
  public void please(String what) {
    err.println();
    err.println(">>> " + what);
    err.flush();
  }
}
