package corewright.bench.wirelog;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.io.ByteArrayOutputStream;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The disk is full, and the source must be switched off all the same. */
class FullDiskTest {
  private static final byte[] OFF = "OUTP OFF\n".getBytes(US_ASCII);

  @Test
  void whatCannotBeWrittenDownIsSentAndReadAllTheSame() {
    ByteArrayOutputStream wire = new ByteArrayOutputStream();
    Link link =
        new Link() {
          @Override
          public String name() {
            return "p";
          }

          @Override
          public int read(byte[] into, Duration patience) {
            into[0] = '1';
            return 1;
          }

          @Override
          public void write(byte[] bytes, Duration patience) {
            wire.writeBytes(bytes);
          }

          @Override
          public void close() {}
        };
    WireLog log = new WireLog(new Full(), Clock.system());
    Link logged = log.over((role, port, baud, characters) -> link).open("source", "p", 1);
    assertEquals(Optional.empty(), log.flaw());
    for (int i = 0; i < 3; i++) {
      logged.write(OFF, Duration.ofSeconds(1));
    }
    assertEquals(3 * OFF.length, wire.size());
    assertEquals(1, logged.read(new byte[1], Duration.ofSeconds(1)));
    assertTrue(log.over(Clock.system()).nanos() != 0);
    log.close();
    assertEquals(Optional.of("No space left on device"), log.flaw());
  }

  /** Takes one line. */
  private static final class Full extends FilterWriter {
    private int taken;

    Full() {
      super(new StringWriter());
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
      if (taken++ > 0) {
        throw new IOException("No space left on device");
      }
    }

    @Override
    public void write(int character) {}

    @Override
    public void close() throws IOException {
      throw new IOException("No space left on device");
    }
  }
}
