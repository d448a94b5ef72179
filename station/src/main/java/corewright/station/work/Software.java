package corewright.station.work;

import java.util.Objects;

/** Which program made a record. */
public final class Software {
  private Software() {}

  /** As {@code corewright 1.0.0}; says so where it does not run from its jar. */
  public static String version() {
    String built = Software.class.getPackage().getImplementationVersion();
    return "corewright " + Objects.requireNonNullElse(built, "(not packaged)");
  }
}
