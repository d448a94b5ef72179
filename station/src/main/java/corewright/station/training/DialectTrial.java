package corewright.station.training;

import corewright.bench.port.Link;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.Clock;
import corewright.bench.wire.DialectPlay;
import corewright.bench.wire.Said;
import corewright.files.JsonFile;
import corewright.files.Mistake;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Samples;
import corewright.fixtures.emulate.Digitizing;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * A dialect that is played to the emulated instrument of its role, line by line. Whether it fits a
 * maker's instrument, only that can tell: what the emulated one has no command for, it refuses.
 */
public final class DialectTrial {
  private static final int BAUD = 115_200;
  private static final String FAMILY = "sd48";

  private DialectTrial() {}

  /**
   * What was said, and what is wrong with the file by it.
   *
   * @param mistakes one for each line that is not good, with its place in the file
   */
  public record Trial(List<Said> said, List<Mistake> mistakes) {
    public Trial {
      said = List.copyOf(said);
      mistakes = List.copyOf(mistakes);
    }
  }

  /**
   * Plays it.
   *
   * @throws corewright.files.BadFile if it cannot be read
   */
  public static Trial of(Path path, Clock clock) {
    JsonFile file = JsonFile.read(path);
    List<Said> said = play(Descriptions.dialect(path), clock);
    return new Trial(
        said,
        said.stream()
            .filter(s -> !s.good())
            .map(s -> file.mistake(s.pointer(), s.sent() + ": " + s.came(), s.remedy()))
            .toList());
  }

  private static List<Said> play(Dialect dialect, Clock clock) {
    Setup setup =
        Setup.of(UnitParameters.healthy(FAMILY), 1)
            .over(LineKind.LOOPBACK)
            .sampledBy(digitizing(dialect));
    try (EmulatedBench bench = EmulatedBench.open(setup);
        Link link =
            new SocketLinks(clock, new SerialLinks(clock))
                .open(
                    dialect.role(),
                    Objects.requireNonNull(bench.ports().get(dialect.role())),
                    BAUD)) {
      return DialectPlay.play(dialect, link, BAUD, clock);
    } catch (IOException refused) {
      throw new UncheckedIOException(refused);
    }
  }

  private static Digitizing digitizing(Dialect dialect) {
    if (dialect.samples().isEmpty()) {
      return Digitizing.LOGGER; // beside it there is a relay box as well
    }
    Samples.Form form = dialect.samples().get().form();
    return form instanceof Samples.Registers
        ? Digitizing.REGISTERS
        : form instanceof Samples.Block ? Digitizing.SCOPE : Digitizing.LOGGER;
  }
}
