package corewright.station.web.door;

import io.javalin.http.Context;

/** Where what happens at the door is written down. */
@FunctionalInterface
public interface DoorBook {

  /**
   * Writes one thing down.
   *
   * @param what as {@code wrong password}
   * @param who a name, as given; may be nobody's
   * @param from the address and what was asked for
   */
  void note(String what, String who, String from);

  /** Writes down something about a request. */
  default void note(String what, String who, Context context) {
    note(what, who, context.ip() + " " + context.method() + " " + context.path());
  }
}
