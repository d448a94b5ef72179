package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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

  @Option(
      names = "--password-file",
      paramLabel = "FILE",
      description =
          "First line: the password of whoever does it. Or set COREWRIGHT_PASSWORD. Asked for only"
              + " in a shop with accounts.")
  private @Nullable Path passwordFile;

  /** Lets somebody in under their name; everybody where the shop has no accounts. */
  void signIn(Workshop workshop, String who) {
    workshop
        .proving()
        .prove(who, Password.given(Optional.ofNullable(passwordFile)), "the command line");
  }

  Workshop open(String chain, Clock clock) {
    return Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), chain, clock);
  }
}
