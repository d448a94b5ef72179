package corewright.bench.port;

/** The discharge switch. With no power it is in its safe position: discharge connected. */
public interface Switch extends Instrument {

  /** Connects or lifts the discharge resistor. */
  void discharge(boolean connected);

  /** What the switch itself says; never what was last sent. */
  boolean discharging();
}
