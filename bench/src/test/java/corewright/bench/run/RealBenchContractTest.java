package corewright.bench.run;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.port.Links;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.wire.BenchOpener;
import corewright.bench.wire.PortFinder;
import corewright.fixtures.describe.Descriptions;
import java.nio.file.Path;

/**
 * A bench of hardware, without a unit in its fixture, whatever its digitizer is: {@code mvn -pl
 * bench -am test -Dtest=RealBenchContractTest -Dcorewright.bench=FILE}. Dialects are looked for
 * beside the bench file, then among those of the program.
 */
class RealBenchContractTest extends BenchContract {

  @Override
  BenchInstruments fresh() {
    String file = System.getProperty("corewright.bench", "");
    assumeTrue(!file.isEmpty(), "no bench is named with -Dcorewright.bench=FILE");
    Clock clock = Clock.system();
    Path bench = Path.of(file);
    SerialLinks serial = new SerialLinks(clock);
    Links links = new SocketLinks(clock, serial);
    return new BenchOpener(
            links,
            id ->
                bench.resolveSibling(id + ".json").toFile().exists()
                    ? Descriptions.dialect(bench.resolveSibling(id + ".json"))
                    : Descriptions.shippedDialect(id),
            clock)
        .open(new PortFinder(links, serial::list, clock).bind(Descriptions.bench(bench)));
  }
}
