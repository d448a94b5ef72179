package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A reader that knows nothing of the drawing reads the address out of it. */
class QrDrawingTest {
  private static final String ADDRESS = "https://bench-room.lan:7348/photograph/U-00004V";
  private static final Pattern MODULE = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");
  private static final int DOTS = 5;

  @Test
  void aScannerReadsTheAddressFromTheScreen() throws Exception {
    QrDrawing drawing = QrDrawing.of(ADDRESS);
    int side = drawing.modules() * DOTS;
    int[] screen = new int[side * side];
    Arrays.fill(screen, 0xFFFFFF);
    Matcher dark = MODULE.matcher(drawing.path());
    while (dark.find()) {
      for (int y = 0; y < DOTS; y++) {
        int row = Integer.parseInt(dark.group(2)) * DOTS + y;
        int from = row * side + Integer.parseInt(dark.group(1)) * DOTS;
        Arrays.fill(screen, from, from + DOTS, 0);
      }
    }
    BinaryBitmap seen =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, screen)));
    assertEquals(ADDRESS, new QRCodeReader().decode(seen).getText());
  }
}
