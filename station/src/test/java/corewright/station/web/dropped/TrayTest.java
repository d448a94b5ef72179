package corewright.station.web.dropped;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.run.Clock;
import corewright.station.work.DroppedFile;
import corewright.station.work.Refused;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrayTest {
  @TempDir private Path root;
  private Instant now = Instant.parse("2026-11-24T09:00:00Z");

  private final Clock clock =
      new Clock() {
        @Override
        public long nanos() {
          return 0;
        }

        @Override
        public Instant wall() {
          return now;
        }

        @Override
        public void pause(Duration time) {
          throw new UnsupportedOperationException();
        }
      };

  private final Tray tray = new Tray(() -> root, clock, 1000);

  @Test
  void keepsAFileForItsSessionAndAnHour() {
    Tray.Item item = tray.take("mine", "drive.csv", bytes(1000));
    assertEquals(32, item.id().length());
    assertEquals(item, tray.of(item.id(), "mine"));
    assertThrows(Refused.class, () -> tray.of(item.id(), "another's"));
    now = now.plus(Duration.ofMinutes(59));
    tray.sweep();
    assertTrue(Files.exists(item.file()));
    now = now.plus(Duration.ofMinutes(2));
    tray.sweep();
    assertFalse(Files.exists(item.folder()));
    assertThrows(Refused.class, () -> tray.of(item.id(), "mine"));
  }

  @Test
  void nothingStaysOfWhatIsTooLargeOrEmpty() throws IOException {
    assertThrows(Refused.class, () -> tray.take("mine", "large.csv", bytes(1001)));
    assertThrows(Refused.class, () -> tray.take("mine", "empty.csv", bytes(0)));
    try (Stream<Path> left = Files.list(root)) {
      assertEquals(0, left.count());
    }
  }

  /** The reserved names and signs of POSIX and of other systems, from outside. */
  @Test
  void noNameLeadsOutOfItsFolder() {
    assertEquals("passwd", Tray.harmless("../../etc/passwd"));
    assertEquals("boot.ini", Tray.harmless("C:\\boot.ini"));
    assertEquals("file", Tray.harmless(".."));
    assertEquals("file", Tray.harmless("/"));
    assertEquals("a_b_.csv", Tray.harmless("a\0b\n.csv"));
    assertEquals(80, Tray.harmless("x".repeat(500)).length());
    Tray.Item item = tray.take("mine", "../../../" + "y".repeat(300) + "/.hidden", bytes(5));
    assertTrue(item.file().startsWith(root), item.file().toString());
  }

  /** A file without an end of line is told from its first stretch alone. */
  @Test
  void tellsAFileOfOneEndlessLineWithoutReadingItWhole() throws IOException {
    Path file = root.resolve("line.csv");
    Files.write(file, new byte[3_000_000]);
    assertEquals(DroppedFile.Kind.LOG, DroppedFile.tell(file));
  }

  private static InputStream bytes(int count) {
    return new ByteArrayInputStream(new byte[count]);
  }
}
