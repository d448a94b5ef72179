package corewright.bench.wirelog;

import corewright.bench.port.Link;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;

/** One instrument of a wire log that is played back. */
final class PlayedLink implements Link {
  private static final int SHOWN = 24;

  private final PlayedLog log;
  private final String role;
  private final String name;

  PlayedLink(PlayedLog log, String role, String name) {
    this.log = log;
    this.role = role;
    this.name = name;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void write(byte[] bytes, Duration patience) {
    WireEvent then = log.turn(role, "writing");
    if (then.kind() != WireEvent.Kind.WRITTEN || !Arrays.equals(then.bytes(), bytes)) {
      throw log.other(
          role,
          "writing",
          "the station writes "
              + shown(bytes)
              + ", and the log has "
              + then.kind()
              + " "
              + shown(then.bytes()));
    }
    log.played();
    if (log.follows(role, WireEvent.Kind.WRITE_FAILED)) {
      WireEvent failed = log.turn(role, "writing");
      log.played();
      throw failed.fault();
    }
  }

  @Override
  public int read(byte[] into, Duration patience) {
    WireEvent then = log.turn(role, "reading");
    if (then.kind() == WireEvent.Kind.READ_FAILED) {
      log.played();
      throw then.fault();
    }
    if (then.kind() != WireEvent.Kind.READ || then.bytes().length > into.length) {
      throw log.other(role, "reading", "the log has " + then.kind() + " " + shown(then.bytes()));
    }
    log.played();
    System.arraycopy(then.bytes(), 0, into, 0, then.bytes().length);
    return then.bytes().length;
  }

  @Override
  public void close() {}

  private static String shown(byte[] bytes) {
    String hex = HexFormat.of().withUpperCase().formatHex(bytes);
    return hex.length() <= SHOWN ? hex : hex.substring(0, SHOWN) + "…";
  }
}
