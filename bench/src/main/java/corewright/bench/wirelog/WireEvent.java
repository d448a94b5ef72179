package corewright.bench.wirelog;

import corewright.bench.port.InstrumentFault;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * One line of a wire log: when, who, what, and what went over the wire in hex.
 *
 * <pre>
 * 1203456 load &gt; 2A49444E3F0A     the station wrote
 * 1301000 load &lt; 313B0A          the station read; without bytes: nothing came in time
 * 1302000 load X …                writing failed, and with Y reading did: what was told then
 * 1300000 engine T 81276500       a monotonic clock was read, ns
 * </pre>
 *
 * @param at_ns since the log began
 * @param who the instrument's role; for the clock, the thread that read it
 */
@SuppressWarnings("ArrayRecordComponent") // written or played once, and never compared
record WireEvent(long at_ns, String who, Kind kind, byte[] bytes) {
  private static final HexFormat HEX = HexFormat.of().withUpperCase();
  private static final String FIELD = "\n";

  /** What happened. */
  enum Kind {
    WRITTEN('>'),
    READ('<'),
    WRITE_FAILED('X'),
    READ_FAILED('Y'),
    CLOCK('T');

    private final char mark;

    Kind(char mark) {
      this.mark = mark;
    }

    static Kind of(String mark) {
      return Stream.of(values())
          .filter(k -> mark.length() == 1 && k.mark == mark.charAt(0))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("'" + mark + "' is no mark of an event"));
    }
  }

  String line() {
    String text =
        kind == Kind.CLOCK ? new String(bytes, StandardCharsets.US_ASCII) : HEX.formatHex(bytes);
    return at_ns + " " + who + " " + kind.mark + (text.isEmpty() ? "" : " " + text);
  }

  /**
   * @throws IllegalArgumentException if it is no line of a wire log
   */
  static WireEvent of(String line) {
    String[] parts = line.split(" ", 4);
    if (parts.length < 3) {
      throw new IllegalArgumentException("'" + line + "' is no event of a wire log");
    }
    Kind kind = Kind.of(parts[2]);
    String text = parts.length > 3 ? parts[3] : "";
    byte[] bytes =
        kind == Kind.CLOCK ? text.getBytes(StandardCharsets.US_ASCII) : HEX.parseHex(text);
    return new WireEvent(Long.parseLong(parts[0]), parts[1], kind, bytes);
  }

  static byte[] bytesOf(InstrumentFault fault) {
    return String.join(
            FIELD, List.of(fault.instrument(), fault.doing(), fault.found(), fault.remedy()))
        .getBytes(StandardCharsets.UTF_8);
  }

  InstrumentFault fault() {
    String[] fields = new String(bytes, StandardCharsets.UTF_8).split(FIELD, 4);
    return new InstrumentFault(fields[0], fields[1], fields[2], fields[3]);
  }

  long nanos() {
    return Long.parseLong(new String(bytes, StandardCharsets.US_ASCII));
  }
}
