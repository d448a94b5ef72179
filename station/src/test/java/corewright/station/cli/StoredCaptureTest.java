package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.CaptureHeader;
import corewright.bench.capture.RawWriter;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.record.RunEnd;
import corewright.station.work.Refused;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** {@code measure} reads what a run has left, sealed or not; a run's results go to a new folder. */
class StoredCaptureTest {
  private static final int HOLD = 2000; // samples at 1 kHz

  @TempDir private Path folder;

  @Test
  void theRawFileAndTheSealedOneAreReadAlike() throws Exception {
    Path raw = folder.resolve("run" + CaptureFile.RAW);
    Path sealed = folder.resolve("run" + CaptureFile.SEALED);
    write(raw);
    CaptureFile.seal(CaptureFile.read(raw), sealed);
    JsonNode json = measured(raw);
    assertEquals(1000, json.get("sampleRate_Hz").asDouble());
    assertEquals(2, json.get("holds").size(), "the discharge is no hold");
    assertEquals(48.0, json.at("/holds/0/output/value").asDouble(), 1e-9);
    assertEquals(0.5, json.at("/holds/1/droop/value").asDouble(), 1e-9);
    assertEquals(2.0, json.at("/holds/1/load/value").asDouble(), 1e-9);
    assertEquals(json, measured(sealed));
  }

  @Test
  void anOutputFolderIsNeverWrittenOver() throws Exception {
    Path there = Files.createDirectory(folder.resolve("there"));
    assertThrows(Refused.class, () -> NewFolder.of(Optional.of(there), "demo"));
    Path free = folder.resolve("free");
    assertEquals(free, NewFolder.of(Optional.of(free), "demo"));
  }

  private static void write(Path raw) {
    CaptureHeader header =
        new CaptureHeader(
            1000,
            List.of(
                new Channel("input", "V", 0.001, 0),
                new Channel("output", "V", 0.0025, 0),
                new Channel("load", "A", 0.001, 0)),
            List.of("input"),
            new TreeMap<>());
    try (RawWriter writer = RawWriter.create(raw, header)) {
      writer.segment("rest", "HOLD", 1000);
      writer.frame(frame(0, 19_200, 0));
      writer.segment("full", "HOLD", 1000);
      writer.frame(frame(HOLD, 19_000, 2000));
      writer.segment("discharge", "DISCHARGE", 1000);
      writer.frame(frame(2 * HOLD, 0, 0));
      writer.end(RunEnd.completed(6));
    }
  }

  private static Frame frame(int first, int output, int load) {
    short[][] codes = new short[3][HOLD];
    for (int i = 0; i < HOLD; i++) {
      codes[0][i] = 12_000;
      codes[1][i] = (short) output;
      codes[2][i] = (short) load;
    }
    return new Frame(first, new Status(true, true, false, false, false, false), codes, 0);
  }

  private static JsonNode measured(Path file) throws Exception {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    assertEquals(0, line.execute("measure", file.toString(), "--json"), err.toString());
    return new ObjectMapper().readTree(out.toString());
  }
}
