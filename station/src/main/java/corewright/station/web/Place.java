package corewright.station.web;

import io.javalin.config.RoutesConfig;

/** One place of the console. */
public interface Place {

  /** Adds what it answers. A handler asks one use case and shows a page, or refuses. */
  void answer(RoutesConfig routes);
}
