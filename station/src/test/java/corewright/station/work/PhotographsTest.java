package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.station.work.Photographs.Kind;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Held against pictures that the platform's own encoders write. */
class PhotographsTest {
  @TempDir private Path folder;

  @Test
  void whatTheEncodersOfThePlatformWriteIsToldByItsFirstBytes() throws Exception {
    assertEquals(Optional.of(Kind.JPEG), Kind.of(encoded("jpg")));
    assertEquals(Optional.of(Kind.PNG), Kind.of(encoded("png")));
    byte[] webp = "RIFF\4\0\0\0WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1); // RFC 9649, 2.4
    assertEquals(Optional.of(Kind.WEBP), Kind.of(webp));
  }

  @Test
  void whatIsNoPictureIsRefusedAndNothingOfItStays() throws Exception {
    for (String other :
        new String[] {"<svg onload='x'/>", "GIF89a", "MZ", "RIFF\4\0\0\0WAVE", ""}) {
      byte[] bytes = other.getBytes(StandardCharsets.ISO_8859_1);
      assertTrue(Kind.of(bytes).isEmpty(), other);
      assertThrows(Refused.class, () -> photographs().take(new ByteArrayInputStream(bytes), "top"));
    }
    byte[] large = new byte[(int) Photographs.MOST_BYTES + 1];
    System.arraycopy(encoded("png"), 0, large, 0, 60);
    Refused refused =
        assertThrows(
            Refused.class, () -> photographs().take(new ByteArrayInputStream(large), "top"));
    assertTrue(refused.getMessage().contains("larger than 10 MB"), refused.getMessage());
    assertEquals(false, Files.exists(folder.resolve("incoming")));
  }

  private Photographs photographs() {
    return new Photographs(null, Folders.at(folder));
  }

  static byte[] encoded(String format) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), format, out));
    return out.toByteArray();
  }
}
