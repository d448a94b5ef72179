package corewright.bench.log;

import corewright.bench.log.table.Role;
import java.util.List;

/** Samples of one channel about a crank, for the picture: dots, since nothing is known between. */
public record Trace(String title, Role role, List<Dot> dots) {
  public Trace {
    dots = List.copyOf(dots);
  }
}
