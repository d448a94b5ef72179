package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is missing on it is asked of the record of such benches: an emulated one's is its own. */
class RealBenchTest {
  @Test
  void aFileThatNamesAnEmulatedPortIsOfAnEmulatedBench() {
    BenchDescription shipped = Descriptions.shippedBench("emulated-sd48");
    assertTrue(new RealBench(shipped, Clock.system()).emulated());
    Map<String, String> wired = new HashMap<>();
    shipped.instruments().forEach(i -> wired.put(i.role(), "usb:0403:6001:" + i.role()));
    assertFalse(new RealBench(shipped.withPorts(wired), Clock.system()).emulated());
    wired.remove("meter");
    assertTrue(new RealBench(shipped.withPorts(wired), Clock.system()).emulated(), "one is enough");
  }
}
