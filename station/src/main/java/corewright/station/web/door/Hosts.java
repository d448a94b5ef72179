package corewright.station.web.door;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The names under which this console may be asked for. A page of elsewhere whose name was pointed
 * here (DNS rebinding) sends another one, and is refused.
 */
public final class Hosts {
  private final Set<String> names;

  /**
   * Allows loopback and what the owner named.
   *
   * @param named further host names, without a port
   */
  public Hosts(Set<String> named) {
    names =
        Stream.concat(Stream.of("127.0.0.1", "localhost", "[::1]"), named.stream())
            .map(n -> n.toLowerCase(Locale.ROOT))
            .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Whether a request is meant for this console.
   *
   * @param header the {@code Host} header, with or without a port; empty if there was none
   */
  boolean allow(String header) {
    int bracket = header.lastIndexOf(']');
    int colon = header.lastIndexOf(':');
    String name = colon > bracket ? header.substring(0, colon) : header;
    return names.contains(name.toLowerCase(Locale.ROOT));
  }

  /**
   * Whether a page may post here.
   *
   * @param origin the {@code Origin} header; browsers send one with every post
   */
  boolean allowOrigin(String origin) {
    int scheme = origin.indexOf("://");
    return scheme > 0 && allow(origin.substring(scheme + 3));
  }
}
