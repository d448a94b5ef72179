package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option that says where the shop's record lies, the same for every command that needs it. */
final class ShopFolder {
  @Option(
      names = "--shop",
      paramLabel = "FOLDER",
      defaultValue = "${env:COREWRIGHT_SHOP:-corewright-shop}",
      description =
          "Folder of the shop's record: ledger, captures, charts, documents (${DEFAULT-VALUE}; or"
              + " set COREWRIGHT_SHOP). Made if it is not there.")
  Path folder = Path.of("corewright-shop");

  Workshop open(String chain, Clock clock) {
    return Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), chain, clock);
  }
}
