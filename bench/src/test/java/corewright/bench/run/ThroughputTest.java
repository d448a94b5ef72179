package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.capture.RawScan;
import corewright.bench.port.serial.SerialLinks;
import corewright.fixtures.emulate.line.PtyLine;
import corewright.measures.code.HoldCodes;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code .ci/soak/throughput} stands on, without its times. */
class ThroughputTest {
  private static final int RATE_HZ = 200_000;

  @TempDir Path folder;
  private FastBoard board;
  private Thread thread;

  @BeforeEach
  void onlyWherePseudoTerminalsAre() {
    assumeTrue(PtyLine.isPossible(), "pseudo-terminals are made on Linux only");
  }

  private FastStation station(FastBoard.Manner manner) throws IOException {
    board = new FastBoard(manner);
    thread = new Thread(board, "board");
    thread.start();
    return new FastStation(
        new SerialLinks(Clock.system()).open("digitizer", board.path(), 115_200), RATE_HZ, folder);
  }

  private void end() throws InterruptedException {
    board.end();
    thread.join();
  }

  @Test
  void whatTheBoardSendsIsWhatIsMeasured() throws IOException, InterruptedException {
    try (FastStation station = station(new FastBoard.Manner(true, 5, 30, -1))) {
      station.start().watch(0.5);
      station.stop();
      RawScan.Result measured = station.measured();
      assertEquals(0.5 * RATE_HZ, measured.samples());
      assertEquals(0, measured.missing());
      // 100 frames of 5 ms, and the load changes after every 30
      assertEquals(4, measured.holds().size());
      for (HoldCodes hold : measured.holds()) {
        assertEquals(FastBoard.OUTPUT, hold.window().orElseThrow().mean(), 0.001);
        assertEquals(2, hold.window().orElseThrow().peakToPeak());
      }
    }
    end();
    assertEquals(0, board.lost());
  }

  @Test
  void whatTheBoardLosesIsMissedAndNothingElse() throws IOException, InterruptedException {
    try (FastStation station = station(new FastBoard.Manner(true, 0.006, 1000, -1))) {
      Sampler sampler = station.start();
      try {
        sampler.watch(0.05);
        Clock.system().pause(Duration.ofMillis(40)); // a line of 4 kB holds less than that
        sampler.watch(0.1);
      } catch (EndOfRun blind) {
        assertTrue(blind.end().saw().contains("blind"), blind.end().saw());
      }
      station.stop();
    }
    end();
    assertTrue(board.lost() > 0);
  }

  @Test
  void everyTripIsCommandedAndItsFrameIsNotTakenForMore() throws IOException, InterruptedException {
    try (FastStation station = station(new FastBoard.Manner(true, 5, 1000, 4))) {
      for (int i = 0; i < 5; i++) {
        assertEquals("OUTPUT_OVER", station.untilItTrips());
      }
      station.stop();
    }
    end();
    assertEquals(5, board.reactions_ns().size());
  }
}
