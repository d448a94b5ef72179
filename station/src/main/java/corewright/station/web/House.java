package corewright.station.web;

import corewright.bench.run.Clock;
import corewright.station.work.Workshop;
import java.util.function.Supplier;

/** What every place works with. */
public final class House implements AutoCloseable {
  private final Supplier<Workshop> opener;
  private final Clock clock;
  private volatile Workshop workshop;

  House(Supplier<Workshop> opener, Clock clock) {
    this.opener = opener;
    this.clock = clock;
    this.workshop = opener.get();
  }

  /** The shop's use cases; ask anew for each request, because the shop's file may have changed. */
  public Workshop workshop() {
    return workshop;
  }

  public Clock clock() {
    return clock;
  }

  /** Reads the shop's file again: its name stands on every paper. */
  public void reopen() {
    Workshop old = workshop;
    workshop = opener.get();
    old.close();
  }

  @Override
  public void close() {
    workshop.close();
  }
}
