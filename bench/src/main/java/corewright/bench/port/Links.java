package corewright.bench.port;

/** Opens lines. The station hands in the serial one, tests a pipe. */
public interface Links {

  /**
   * @param role the instrument's role, for messages
   * @param port path or name of the port
   * @param baud line rate, bit/s
   * @throws InstrumentFault if it cannot be had, saying why and what to do
   */
  Link open(String role, String port, int baud);
}
