package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.capture.CaptureFile;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.bench.run.Clock;
import corewright.fixtures.emulate.EmulatedBenchMain;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.Ledger;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The station is killed in the middle of a run; bench and record must not mind. */
class KilledStationTest {
  private static final long ENOUGH_BYTES = 2_000_000;

  @TempDir private Path folder;

  @Test
  @Timeout(120)
  void theNextStartCommandsTheSafeStateAndFindsTheRunUpToItsLastFrame() throws Exception {
    assumeTrue(Files.isDirectory(Path.of("/dev/pts")), "no pseudo-terminals on this system");
    Process bench = java(EmulatedBenchMain.class.getName(), "sd48", "11");
    try (BufferedReader said =
        new BufferedReader(new InputStreamReader(bench.getInputStream(), StandardCharsets.UTF_8))) {
      Path description = description(said);
      Process station = station(description, "--answers", answers().toString());
      Path raw = waitForSamples();
      station.destroyForcibly().waitFor();
      assertTrue(raw.toString().endsWith(CaptureFile.RAW));
      waitForWatchdog(bench, said);

      Process next = station(description, "--tag", "U-00001");
      String told = new String(next.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, next.waitFor(), told);
      assertTrue(told.contains("The safe state was commanded first."), told);
      String state = ask(bench, said, "state");
      assertTrue(state.contains("sourceOn=false") && state.contains("relayClosed=false"), state);
    } finally {
      bench.destroyForcibly();
    }
    try (Ledger ledger =
        Ledger.open(
            shop().resolve("ledger.db"),
            "reader",
            new WallClock(Clock.system(), java.time.ZoneOffset.UTC))) {
      assertTrue(ledger.verify().whole());
      Dossier dossier = ledger.dossier("U-00001");
      RunRecord died = dossier.runs().get(0);
      assertEquals(RunEnd.Kind.ABANDONED, died.end().kind());
      assertEquals(Verdict.INCOMPLETE, died.judgement().verdict().orElseThrow());
      assertTrue(
          CaptureFile.read(shop().resolve(died.capture())).segments().stream()
                  .mapToLong(s -> s.samples())
                  .sum()
              > 100_000);
      RunRecord again = dossier.runs().get(1);
      assertEquals(2, again.number());
      assertEquals(Verdict.PASS, again.judgement().verdict().orElseThrow());
      assertFalse(ledger.runs().unfinished().iterator().hasNext());
    }
  }

  @Test
  @Timeout(120)
  void aPoliteEndTakesTheBenchToItsSafeStateFirst() throws Exception {
    assumeTrue(Files.isDirectory(Path.of("/dev/pts")), "no pseudo-terminals on this system");
    Process bench = java(EmulatedBenchMain.class.getName(), "sd48", "12");
    try (BufferedReader said =
        new BufferedReader(new InputStreamReader(bench.getInputStream(), StandardCharsets.UTF_8))) {
      Process station = station(description(said), "--answers", answers().toString());
      waitForSamples();
      station.toHandle().destroy(); // SIGTERM, which is answered as Ctrl-C is
      String told = new String(station.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(1, station.waitFor(), told);
      String state = ask(bench, said, "state");
      assertTrue(state.contains("sourceOn=false") && state.contains("relayClosed=false"), state);
      assertTrue(state.contains("discharging=true") && state.contains("loadOn=false"), state);
      double left = Double.parseDouble(state.replaceAll(".*capacitor_V=([0-9.-]+).*", "$1"));
      assertTrue(left < 5, state);
    } finally {
      bench.destroyForcibly();
    }
    try (Ledger ledger =
        Ledger.open(shop().resolve("ledger.db"), "reader", WallClock.here(Clock.system()))) {
      RunRecord stopped = ledger.dossier("U-00001").runs().get(0);
      assertEquals(RunEnd.Kind.STOPPED, stopped.end().kind());
      assertEquals(Verdict.INCOMPLETE, stopped.judgement().verdict().orElseThrow());
      assertEquals(List.of(), stopped.troubles());
    }
  }

  private Path shop() {
    return folder.resolve("shop");
  }

  /** The shipped description, with the ports that the bench has said it has. */
  private Path description(BufferedReader said) throws IOException {
    Path shipped = Path.of(System.getProperty("corewright.home"), "fixtures", "benches");
    String text = Files.readString(shipped.resolve("emulated-sd48.json"));
    String line = said.readLine();
    while (!line.equals("ready")) {
      String[] words = line.split(" ");
      text = text.replace("emulated:" + words[1], words[2]);
      line = said.readLine();
    }
    return Files.writeString(folder.resolve("bench.json"), text);
  }

  private Path answers() throws IOException {
    try (var in = Catalogue.class.getResourceAsStream("/corewright/station/demo/1-healthy.json")) {
      return Files.write(folder.resolve("answers.json"), in.readAllBytes());
    }
  }

  private Process station(Path bench, String... more) throws IOException {
    List<String> arguments = new ArrayList<>();
    arguments.addAll(List.of("run", "--bench", bench.toString(), "--profile", "sd48-arrival"));
    arguments.addAll(List.of("--shop", shop().toString(), "--confirmed-by", "A. Tester"));
    arguments.addAll(List.of(more));
    return java("corewright.station.cli.Main", arguments.toArray(String[]::new));
  }

  private Process java(String main, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dcorewright.home=" + System.getProperty("corewright.home"));
    command.add(
        "-Dfazecast.jSerialComm.appid=test-" + folder.getFileName() + "-" + command.hashCode());
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    if (main.endsWith("EmulatedBenchMain")) {
      builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    } else {
      builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    }
    return builder.start();
  }

  private Path waitForSamples() throws Exception {
    while (true) {
      if (Files.isDirectory(shop().resolve("captures"))) {
        try (Stream<Path> files = Files.list(shop().resolve("captures"))) {
          for (Path file : files.filter(f -> f.toString().endsWith(CaptureFile.RAW)).toList()) {
            if (Files.size(file) > ENOUGH_BYTES) {
              return file;
            }
          }
        }
      }
      TimeUnit.MILLISECONDS.sleep(5);
    }
  }

  /** Within half a second of the last word from the station the relay opens and discharge is on. */
  private static void waitForWatchdog(Process bench, BufferedReader said) throws Exception {
    TimeUnit.MILLISECONDS.sleep(700);
    String state = ask(bench, said, "state");
    assertTrue(state.contains("relayClosed=false") && state.contains("discharging=true"), state);
    ask(bench, said, "pass 10");
    String later = ask(bench, said, "state");
    double left = Double.parseDouble(later.replaceAll(".*capacitor_V=([0-9.-]+).*", "$1"));
    assertTrue(left < 5, later);
  }

  private static String ask(Process bench, BufferedReader said, String line) throws IOException {
    bench.getOutputStream().write((line + "\n").getBytes(StandardCharsets.UTF_8));
    bench.getOutputStream().flush();
    return said.readLine();
  }
}
