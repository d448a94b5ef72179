package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.profiles.Profile.Purpose;
import corewright.reports.Dossiers;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import corewright.reports.document.genuine.TestKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A certificate in the hands of programs that others wrote: Debian's {@code qpdf} and {@code
 * poppler-utils}.
 */
class SecondReaderTest {
  @TempDir Path folder;
  private Path certificate = Path.of("");

  @BeforeEach
  void aCertificate() throws Exception {
    for (String program : List.of("qpdf", "pdftotext", "pdfdetach")) {
      if (!Files.isExecutable(Path.of("/usr/bin", program))) {
        if ("true".equals(System.getenv("CI"))) {
          fail(program + " is missing: .ci/run installs it");
        }
        assumeTrue(false, program + " is not installed (Debian: qpdf, poppler-utils)");
      }
    }
    SampleRuns runs = new SampleRuns();
    RunRecord run = runs.run("a", "U-00418Q", Waves.good(), Purpose.ARRIVAL, Source.BENCH);
    Dossier dossier = Dossiers.of(List.of(run), Dossiers.giveBack(), List.of());
    certificate =
        new Documents(
                TestReportTest.SHOP,
                runs,
                Clock.fixed(Samples.MORNING, ZoneOffset.UTC),
                new TestRecord(""),
                Optional.of(new TestKey()))
            .certificate(dossier, folder);
  }

  @Test
  void itsStructureIsSoundAndItsTextCanBeCopied() throws Exception {
    assertEquals(0, run("qpdf", "--check", certificate.toString()));
    Path text = folder.resolve("text.txt");
    assertEquals(0, run("pdftotext", certificate.toString(), text.toString()));
    String said = Files.readString(text).replaceAll("[\\s\u00A0]+", " ");
    assertTrue(said.contains("the output stayed at 47.59 ± 0.09 V"), said);
  }

  @Test
  void itsAttachmentsComeOutAsTheyWereSigned() throws Exception {
    Path out = Files.createDirectory(folder.resolve("out"));
    assertEquals(0, run("pdfdetach", "-saveall", "-o", out.toString(), certificate.toString()));
    String seal = Files.readString(out.resolve("seal.txt"));
    List<String> signed = seal.lines().filter(line -> !line.startsWith("ed25519 ")).toList();
    assertEquals(3, signed.size(), seal);
    for (String line : signed) {
      byte[] bytes = Files.readAllBytes(out.resolve(line.substring(66)));
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      assertEquals(line.substring(0, 64), HexFormat.of().formatHex(hash), line);
    }
    assertTrue(Files.readString(out.resolve("curves.csv")).startsWith("time_s,output_min_V"));
  }

  private int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said.txt").toFile())
        .start()
        .waitFor();
  }
}
