package corewright.bench.port;

/** Reads identification answers: maker, model, serial, firmware (IEEE 488.2, 10.14). */
public final class Identities {

  private Identities() {}

  /** Whether the instrument says of itself that it is emulated: its model begins with EMULATED. */
  public static boolean isEmulated(String identity) {
    String[] fields = identity.split(",", -1);
    return fields.length > 1 && fields[1].strip().startsWith("EMULATED");
  }
}
