package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.station.work.Refused;
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

  /**
   * Lets somebody in under their name; everybody where the shop has no accounts.
   *
   * @throws Refused if the shop has, and no password was given: that is not counted as a wrong one
   */
  void signIn(Workshop workshop, String who) {
    char[] password = Password.given(Optional.ofNullable(passwordFile));
    if (password.length == 0 && !workshop.ledger().accounts().all().isEmpty()) {
      throw new Refused(
          "This shop has accounts, and no password was given for " + who,
          "Give --password-file FILE, and --by NAME where it is not yours; or set"
              + " COREWRIGHT_PASSWORD and COREWRIGHT_BY.");
    }
    workshop.proving().prove(who, password, "the command line");
  }

  Workshop open(String chain, Clock clock) {
    return Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), chain, clock);
  }
}
