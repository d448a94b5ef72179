package corewright.bench.run;

/** The bench that the engine's own tests run on keeps the same promises as a real one. */
class FakeBenchContractTest extends BenchContract {

  @Override
  BenchInstruments fresh() {
    return new FakeBench().instruments();
  }
}
