package corewright.bench.port;

/** Anything on the bench that answers. Every method may throw {@link InstrumentFault}. */
public interface Instrument extends AutoCloseable {

  /** Its role on this bench, as {@code load}. */
  String role();

  /** Its whole identification answer; asked again each time. */
  String identity();

  /** Takes it to zero energy, confirmed by an answer. Idempotent. */
  void off();

  /** Gives the port back. Never switches anything on. */
  @Override
  void close();
}
