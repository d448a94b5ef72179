package corewright.station.web.live;

import corewright.bench.hand.Hands;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.station.demo.SampleBench;
import corewright.station.work.KeptWire;

/**
 * An emulated bench for one family, with a unit that follows from its tag.
 *
 * @param paced near real time, so that people can watch
 */
record EmulatedOffer(BenchDescription description, Clock clock, boolean paced) implements Bench {

  static EmulatedOffer of(String family, Clock clock, boolean paced) {
    return new EmulatedOffer(Descriptions.shippedBench("emulated-" + family), clock, paced);
  }

  /** The same under another name. */
  EmulatedOffer as(String id) {
    BenchDescription d = description;
    return new EmulatedOffer(
        new BenchDescription(
            id,
            d.revision(),
            "Emulated, to practise on",
            d.instruments(),
            d.channels(),
            d.fixture(),
            d.trip_s(),
            d.origin()),
        clock,
        paced);
  }

  @Override
  public boolean emulated() {
    return true;
  }

  @Override
  public Opened open(Unit unit, Hands hands, KeptWire wire) {
    return new Sample(SampleBench.open(unit.family(), unit.tag(), unit.rebuilt(), clock, paced));
  }

  private record Sample(SampleBench bench) implements Opened {
    @Override
    public BenchDescription description() {
      return bench.description();
    }

    @Override
    public BenchInstruments instruments() {
      return bench.instruments();
    }

    @Override
    public void close() {
      bench.close();
    }
  }
}
