package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.fixtures.describe.Samples;
import corewright.fixtures.describe.Samples.Lines;
import corewright.fixtures.describe.Samples.SampledChannel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScanLineTest {
  private static final short OVER = Short.MAX_VALUE;

  private static ScanLine reader(String separator, boolean comma) {
    Lines form = new Lines(separator, comma, List.of(), OptionalInt.of(1), "-?OL");
    return new ScanLine(
        new Samples(
            form,
            "",
            "",
            10,
            List.of(
                new SampledChannel("output", "V", 3, 1, 0.01, "", ""),
                new SampledChannel("load", "A", 2, -0.001, 0.001, "", ""))),
        form);
  }

  private static void reads(ScanLine reader, String line, long counter, int output, int load) {
    ScanLine.Scan scan = reader.read(line).orElseThrow();
    assertEquals(counter, scan.counter().orElseThrow());
    assertArrayEquals(new short[] {(short) output, (short) load}, scan.codes());
  }

  @ParameterizedTest
  @ValueSource(strings = {"7;-2500;48,03", " 7 ; -2500,0 ; +48,03 \r", "7;-2,5E3;4803e-2;more"})
  void numbersWithACommaAreReadInTheirColumnsWithScaleAndSign(String line) {
    reads(reader(";", true), line, 7, 4803, 2500); // a shunt in mA whose leads are swapped
  }

  @ParameterizedTest
  @ValueSource(strings = {"7,-2500,48.03", "7, -2.5E3, 4.803E1"})
  void numbersWithAPointMayBeSeparatedByCommas(String line) {
    reads(reader(",", false), line, 7, 4803, 2500);
  }

  @ParameterizedTest
  @ValueSource(strings = {"7;0;9,9E37", "7;0;OL", "7;0;400,00"})
  void whatIsBeyondTheRangeIsARail(String line) {
    reads(reader(";", true), line, 7, OVER, 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "7",
        "7;1",
        "7;1;",
        "7;1;48.03",
        "7;1;1.048,03",
        "7;1;48,0,3",
        "7;1;4x,03",
        "x;1;48,03",
        "7;1;NaN",
        "7;1;0x1p3",
        "7.1.48,03",
        "-7;1;48,03"
      })
  void whatCannotBeReadIsNoSample(String line) {
    assertEquals(Optional.empty(), reader(";", true).read(line).map(ScanLine.Scan::counter));
  }
}
