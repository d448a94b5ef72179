package corewright.station.web.live;

import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.reports.document.Shop;
import corewright.station.demo.Demo;
import corewright.station.work.AnswersFile;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A shop with one healthy sd48 at its counter and a profile that takes little time. */
final class SmallShop implements AutoCloseable {
  private static final String SHORT =
      """
      "steps": [
        { "id": "dead", "kind": "deadCheck", "title": "Dead check" },
        { "id": "first-power", "kind": "firstPower", "title": "First power", "input_V": 12.5, "inputLimit_A": 0.5, "hold_s": 1.5 },
        { "id": "rest", "kind": "hold", "title": "At rest", "input_V": 12.5, "inputLimit_A": 20, "load_A": 0, "hold_s": 0.3 },
        { "id": "full", "kind": "hold", "title": "Full load", "input_V": 12.5, "inputLimit_A": 20, "load_A": 2.0, "hold_s": 0.4 },
        { "id": "discharge", "kind": "discharge", "title": "Discharge and prove" }
      ],
      "limits": [
        { "id": "output-full", "quantity": "output", "unit": "V", "side": "atLeast", "pass": 46.5, "fail": 45.0, "from_A": 1.9, "headline": true, "why": "as the shipped one" }
      ]
      """;

  private final Workshop workshop;
  private final String tag;

  private SmallShop(Workshop workshop, String tag) {
    this.workshop = workshop;
    this.tag = tag;
  }

  static SmallShop in(Path folder, Clock clock) {
    try {
      Path families = families(folder);
      Workshop workshop =
          Workshop.open(
              Catalogue.in(families),
              folder.resolve("shop"),
              new Shop("Mill Yard Rebuild", "4 Mill Yard", "", "").asInvented(),
              "console",
              clock);
      Path answers = folder.resolve("answers.json");
      try (InputStream in = Demo.class.getResourceAsStream("1-healthy.json")) {
        Files.write(answers, in.readAllBytes());
      }
      String tag =
          workshop
              .reception()
              .receive(AnswersFile.read(answers, workshop.catalogue()::family), Optional.empty());
      return new SmallShop(workshop, tag);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The shipped families, sd48's arrival profile made short and its rate low. */
  private static Path families(Path folder) throws IOException {
    Path home = Path.of(System.getProperty("corewright.home"), "profiles");
    for (String part : new String[] {"families", "schemas"}) {
      try (Stream<Path> all = Files.walk(home.resolve(part))) {
        for (Path from : all.toList()) {
          Path to = folder.resolve(home.relativize(from).toString());
          if (Files.isDirectory(from)) {
            Files.createDirectories(to);
          } else {
            Files.copy(from, to);
          }
        }
      }
    }
    Path profile = folder.resolve("families/sd48/sd48-arrival.json");
    String text = Files.readString(profile);
    String shorter =
        Pattern.compile("\"steps\": \\[.*\\]\\s*(?=\\}\\s*$)", Pattern.DOTALL)
            .matcher(text)
            .replaceFirst(SHORT)
            .replaceFirst("\"sampleRate_Hz\": *[0-9]+", "\"sampleRate_Hz\": 10000");
    Files.writeString(profile, shorter);
    return folder.resolve("families");
  }

  Workshop workshop() {
    return workshop;
  }

  String tag() {
    return tag;
  }

  Start start(String driver) {
    return new Start(tag, "sd48-arrival", driver, Optional.empty());
  }

  @Override
  public void close() {
    workshop.close();
  }
}
