package corewright.station.cli;

import corewright.reports.chart.FigurePictures;
import corewright.reports.ledger.Csv;
import corewright.station.work.Refused;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A new folder for pictures, and for their data as CSV beside them. */
record FigureFolder(Path folder, Kind kind) {

  /** Of pictures; the names are those of the files. */
  enum Kind {
    svg,
    png,
    pdf
  }

  /**
   * Makes the folder.
   *
   * @throws Refused if it is there already
   */
  void make() {
    if (Files.exists(folder)) {
      throw new Refused(folder + " is there already", "Name a new folder with --charts.");
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot make " + folder, refused);
    }
  }

  void picture(String name, FigurePictures picture) {
    picture.write(folder.resolve(name + "." + kind.name()));
  }

  void csv(String name, List<String> header, List<List<String>> rows) throws IOException {
    try (BufferedWriter to = Files.newBufferedWriter(folder.resolve(name + ".csv"))) {
      Csv.row(to, header);
      for (List<String> row : rows) {
        Csv.row(to, row);
      }
    }
  }
}
