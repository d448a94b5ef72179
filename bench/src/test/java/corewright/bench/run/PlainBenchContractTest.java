package corewright.bench.run;

import corewright.fixtures.emulate.Digitizing;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Nested;

/** Benches whose digitizer only samples, with a relay box beside it. */
class PlainBenchContractTest {

  @Nested
  class Lines extends OfOne {
    Lines() {
      super(Digitizing.LOGGER, "emulated-sd48-lines", Optional.empty());
    }
  }

  @Nested
  class LinesUnasked extends OfOne {
    LinesUnasked() {
      super(Digitizing.LOGGER, "emulated-sd48-lines", Optional.of("emulated-logger-unasked"));
    }
  }

  @Nested
  class DefiniteBlocks extends OfOne {
    DefiniteBlocks() {
      super(Digitizing.SCOPE, "emulated-sd48-blocks", Optional.empty());
    }
  }

  @Nested
  class IndefiniteBlocks extends OfOne {
    IndefiniteBlocks() {
      super(Digitizing.SCOPE, "emulated-sd48-blocks", Optional.of("emulated-scope-real"));
    }
  }

  @Nested
  class InputRegisters extends OfOne {
    InputRegisters() {
      super(Digitizing.REGISTERS, "emulated-sd48-registers", Optional.empty());
    }
  }

  abstract static class OfOne extends BenchContract {
    private final Digitizing digitizing;
    private final String description;
    private final Optional<String> dialect;
    private Optional<OnPty> lines = Optional.empty();

    OfOne(Digitizing digitizing, String description, Optional<String> dialect) {
      this.digitizing = digitizing;
      this.description = description;
      this.dialect = dialect;
    }

    @Override
    BenchInstruments fresh() throws IOException {
      if (lines.isEmpty()) {
        Setup setup =
            Setup.of(UnitParameters.healthy("sd48"), 1)
                .over(LineKind.LOOPBACK)
                .sampledBy(digitizing);
        lines = Optional.of(OnPty.described(setup, description));
      }
      return dialect.isPresent()
          ? lines.get().openWith("digitizer", dialect.get())
          : lines.get().open();
    }

    @AfterEach
    void unplug() {
      lines.ifPresent(OnPty::close);
    }
  }
}
