package corewright.bench.port;

import corewright.fixtures.describe.Characters;

/** Opens lines. The station hands in the serial one, tests a pipe. */
public interface Links {

  /**
   * @param role the instrument's role, for messages
   * @param port path or name of the port
   * @param baud line rate, bit/s
   * @param characters how a character stands on the line; of no meaning where there are none
   * @throws InstrumentFault if it cannot be had, saying why and what to do
   */
  Link open(String role, String port, int baud, Characters characters);

  /** The same with eight data bits, no parity and one stop bit. */
  default Link open(String role, String port, int baud) {
    return open(role, port, baud, Characters.NONE_1);
  }
}
