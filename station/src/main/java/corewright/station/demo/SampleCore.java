package corewright.station.demo;

import corewright.station.work.AnswersFile;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** A core of an invented customer, received with the answers of the demonstration. */
public final class SampleCore {
  private static final Map<String, String> ANSWERS =
      Map.of("sd48", "1-healthy.json", "pv65", "4-dry-capacitors.json", "ie110", "5-hiccup.json");

  private SampleCore() {}

  /**
   * Receives one.
   *
   * @param family {@code sd48}, {@code ie110} or {@code pv65}
   * @return its tag
   */
  public static String receive(Workshop workshop, String family) {
    String resource = ANSWERS.get(family);
    if (resource == null) {
      throw new Refused("There is no sample core of family " + family, "Choose another family.");
    }
    Path file = workshop.folders().root().resolve("sample-answers.json");
    try (InputStream in = SampleCore.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its resource " + resource);
      }
      Files.write(file, in.readAllBytes());
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write " + file, refused);
    }
    return workshop
        .reception()
        .receive(AnswersFile.read(file, workshop.catalogue()::family), Optional.empty());
  }
}
