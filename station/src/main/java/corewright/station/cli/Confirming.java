package corewright.station.cli;

import corewright.profiles.Family;
import corewright.station.work.Cautions;
import corewright.station.work.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Optional;

/** Shows the cautions and has a person answer for them by name, before anything is energised. */
final class Confirming {
  private final PrintWriter err;

  Confirming(PrintWriter err) {
    this.err = err;
  }

  /**
   * The name of the person who confirmed.
   *
   * @throws Refused if nobody did
   */
  String ask(Family family, Optional<String> named) {
    err.println("Before " + family.id() + " is energised:");
    Cautions.of(family).forEach(line -> err.println("  - " + line));
    err.flush();
    if (named.isPresent() && !named.get().isBlank()) {
      String name = PersonName.of(named.get(), "--confirmed-by");
      err.println("Confirmed by " + name + ".");
      return name;
    }
    String typed = typed();
    if (typed.isBlank()) {
      throw new Refused(
          "Nobody has confirmed the cautions, so nothing was energised",
          "Type your name when asked, or give it with --confirmed-by.");
    }
    return PersonName.of(typed, "--confirmed-by");
  }

  /** A line from whoever is there; nothing where nobody is. */
  private String typed() {
    err.print("Type your name to confirm, or press Enter to leave: ");
    err.flush();
    try {
      String line =
          new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())).readLine();
      return line == null ? "" : line;
    } catch (IOException nobody) {
      return "";
    }
  }
}
