package corewright.station.web;

import corewright.station.work.Refused;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * From where the console can be reached: this machine alone, unless somebody says otherwise.
 *
 * @param address where it listens
 * @param port 0 takes a free one
 * @param tls certificate and key; demanded as soon as others can reach it
 * @param names further host names under which it may be asked for
 */
public record Reach(String address, int port, Optional<Tls> tls, Set<String> names) {
  private static final String HERE = "127.0.0.1";

  public Reach {
    names = Set.copyOf(names);
  }

  /**
   * A key store in the PKCS #12 format (RFC 7292).
   *
   * @param password of the store and of its key
   */
  public record Tls(Path store, String password) {}

  /** This machine alone. */
  public static Reach here(int port) {
    return new Reach(HERE, port, Optional.empty(), Set.of());
  }

  /**
   * The same, looked at.
   *
   * @param hasAccounts whether the first day is over
   * @throws Refused if others could reach it unencrypted, or before it has an owner
   */
  Reach checked(boolean hasAccounts) {
    tls.filter(t -> !Files.isReadable(t.store()))
        .ifPresent(
            t -> {
              throw new Refused(
                  "The key store " + t.store() + " cannot be read", "Name a PKCS #12 file.");
            });
    if (isHere()) {
      return this;
    }
    if (tls.isEmpty()) {
      throw new Refused(
          "At " + address + " others could reach the console, and read along",
          "Give --key-store with a certificate, or leave --address away.");
    }
    if (!hasAccounts) {
      throw new Refused(
          "At " + address + " others could reach a console that has no owner yet",
          "Start it once without --address and make the owner's account.");
    }
    return this;
  }

  /** Who can reach it, a sentence. */
  public String words() {
    return isHere()
        ? "This machine alone: nobody elsewhere can reach the console."
        : "Others can reach it at "
            + address
            + ", over TLS and with their account alone. 'serve' without --address closes it to"
            + " them.";
  }

  /**
   * The address under which a telephone of the same network finds the console; empty where others
   * are not let in, or where nobody said under which name they ask.
   */
  public Optional<String> elsewhere(int actualPort) {
    if (isHere()) {
      return Optional.empty();
    }
    return names.stream()
        .sorted()
        .findFirst()
        .or(() -> Optional.of(address).filter(a -> !isEveryAddress(a)))
        .map(host -> "https://" + host + ":" + actualPort + "/");
  }

  private static boolean isEveryAddress(String address) {
    try {
      return InetAddress.getByName(address).isAnyLocalAddress();
    } catch (UnknownHostException unknown) {
      return false;
    }
  }

  boolean isOpen() {
    return !isHere();
  }

  private boolean isHere() {
    try {
      return InetAddress.getByName(address).isLoopbackAddress();
    } catch (UnknownHostException unknown) {
      throw new Refused("There is no address " + address + " here", "Give one of this machine's.");
    }
  }

  /** The host names under which it may be asked for, besides those of this machine alone. */
  Set<String> hosts() {
    return Stream.concat(Stream.of(address), names.stream()).collect(Collectors.toSet());
  }

  /** As a browser takes it. */
  String url(int actualPort) {
    return (tls.isPresent() ? "https://" : "http://") + address + ":" + actualPort + "/";
  }
}
