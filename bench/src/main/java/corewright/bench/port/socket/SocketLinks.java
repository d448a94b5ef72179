package corewright.bench.port.socket;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Characters;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Opens {@code tcp:ADDRESS:PORT} on this computer as a socket, and hands every other port on. An
 * address beyond this computer is refused: a bench has no interlock against a network.
 */
public final class SocketLinks implements Links {
  private static final Pattern SOCKET = Pattern.compile("tcp:(.+):([0-9]{1,5})");

  private final Clock clock;
  private final Links others;

  /**
   * @param clock what deadlines are held against
   * @param others opens what is no socket
   */
  public SocketLinks(Clock clock, Links others) {
    this.clock = clock;
    this.others = others;
  }

  @Override
  public Link open(String role, String port, int baud, Characters characters) {
    Matcher socket = SOCKET.matcher(port);
    return socket.matches()
        ? SocketLink.open(role, port, address(role, socket), clock)
        : others.open(role, port, baud, characters);
  }

  private static InetSocketAddress address(String role, Matcher socket) {
    int port = Integer.parseInt(socket.group(2));
    try {
      InetAddress host = InetAddress.getByName(socket.group(1));
      if (host.isLoopbackAddress() && port > 0 && port < 65_536) {
        return new InetSocketAddress(host, port);
      }
    } catch (UnknownHostException unknown) {
      // refused below like any other address that is not this computer's
    }
    throw new InstrumentFault(
        role,
        "opening " + socket.group(),
        "that is no port of this computer",
        "Use a serial port; sockets are for an emulated bench on this computer alone.");
  }
}
