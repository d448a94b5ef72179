package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.bench.run.Clock;
import corewright.fixtures.emulate.EmulatedBenchMain;
import corewright.station.demo.SampleCore;
import corewright.station.web.Visit;
import corewright.station.work.Workshop;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The console is killed while it drives a bench that outlives it; the next one must see to it. */
class KilledConsoleTest {
  private final Clock clock = Clock.system();

  @TempDir private Path folder;

  @Test
  @Timeout(120)
  void theNextStartTakesTheBenchToItsSafeStateClosesTheRunAndSaysSo() throws Exception {
    assumeTrue(Files.isDirectory(Path.of("/dev/pts")), "no pseudo-terminals on this system");
    Process bench = java(EmulatedBenchMain.class.getName(), "sd48", "21");
    Process console = null;
    try (BufferedReader said = read(bench)) {
      describe(said);
      String tag;
      try (Workshop workshop = Visit.workshop(shop())) {
        tag = SampleCore.receive(workshop, "sd48");
      }
      Visit.owned(shop());
      console =
          java("corewright.station.cli.Main", "serve", "--port", "0", "--shop", shop().toString());
      try (BufferedReader told = read(console)) {
        Visit visit = Visit.elsewhere(told.readLine().replaceAll(".*(http[^ ]*)/$", "$1"));
        visit.signIn(Visit.OWNER, Visit.PASSWORD);
        visit.get("/bench/bench-7?tag=" + tag);
        visit.post("/bench/bench-7/prepare", Map.of("tag", tag, "cautions", "yes"));
        assertEquals(
            "/bench/bench-7", Visit.location(visit.post("/bench/bench-7/start", Map.of())));
        waitForVolts(bench, said);
        console.destroyForcibly().waitFor();
      }
      try (Visit next = Visit.to(shop())) {
        next.signIn(Visit.OWNER, Visit.PASSWORD);
        String left = "had been left open. The safe state was commanded first.";
        while (!next.get("/").body().contains(left)) {
          clock.pause(Duration.ofMillis(50));
        }
        assertTrue(next.get("/bench/bench-7").body().contains(left));
        assertTrue(next.get("/bench/glance").body().contains("\"form\":\"unknown\""));
        String state = ask(bench, said, "state");
        assertTrue(state.contains("sourceOn=false") && state.contains("relayClosed=false"), state);
        assertTrue(state.contains("discharging=true") && state.contains("loadOn=false"), state);
      }
      try (Workshop workshop = Visit.workshop(shop())) {
        RunRecord died = workshop.ledger().dossier(tag).runs().get(0);
        assertEquals(RunEnd.Kind.ABANDONED, died.end().kind());
        assertEquals(Verdict.INCOMPLETE, died.judgement().verdict().orElseThrow());
        assertEquals("bench-7", died.bench());
      }
    } finally {
      bench.destroyForcibly();
      if (console != null) {
        console.destroyForcibly();
      }
    }
  }

  private Path shop() {
    return folder.resolve("shop");
  }

  /** The shipped description, under a name of its own and with the ports that the bench told. */
  private void describe(BufferedReader said) throws IOException {
    Path shipped = Path.of(System.getProperty("corewright.home"), "fixtures", "benches");
    String text = Files.readString(shipped.resolve("emulated-sd48.json"));
    String line = said.readLine();
    while (!line.equals("ready")) {
      String[] words = line.split(" ");
      text = text.replace("emulated:" + words[1], words[2]);
      line = said.readLine();
    }
    Files.createDirectories(shop().resolve("benches"));
    Files.writeString(
        shop().resolve("benches/bench-7.json"),
        text.replace("\"id\": \"emulated-sd48\"", "\"id\": \"bench-7\""));
  }

  private void waitForVolts(Process bench, BufferedReader said) throws IOException {
    while (true) {
      String state = ask(bench, said, "state");
      if (Double.parseDouble(state.replaceAll(".*output_V=([0-9.-]+).*", "$1")) > 20) {
        return;
      }
      clock.pause(Duration.ofMillis(20));
    }
  }

  private static String ask(Process bench, BufferedReader said, String line) throws IOException {
    bench.getOutputStream().write((line + "\n").getBytes(StandardCharsets.UTF_8));
    bench.getOutputStream().flush();
    return said.readLine();
  }

  private static BufferedReader read(Process process) {
    return new BufferedReader(
        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  private Process java(String main, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dcorewright.home=" + System.getProperty("corewright.home"));
    command.add("-Djava.awt.headless=true");
    command.add(
        "-Dfazecast.jSerialComm.appid=test-" + folder.getFileName() + "-" + main.hashCode());
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }
}
