package corewright.bench.port;

/** The hard-wired chain of cover and stop button: read, never replaced. */
public interface Interlock extends Instrument {

  /** True only while the instrument says that the chain is whole. */
  boolean whole();
}
