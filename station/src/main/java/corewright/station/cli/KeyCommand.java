package corewright.station.cli;

import corewright.reports.ledger.KeyFolder;
import corewright.reports.ledger.PublicKeys;
import corewright.reports.ledger.SigningKey;
import corewright.station.work.Refused;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Hands out the public half of the shop's key. */
@Command(
    name = "key",
    mixinStandardHelpOptions = true,
    description = {
      "Prints the public key with which anybody can check what this shop has signed; makes the pair"
          + " if there is none.",
      "Keep a copy of it outside the shop. The private half stays in keys/ and is never printed."
    },
    footer = {"", "Example:", "  corewright key --out signing.pub"})
final class KeyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;

  @Option(names = "--out", paramLabel = "FILE", description = "Write it there; a new file.")
  private @Nullable Path out;

  @Override
  public Integer call() {
    SigningKey key = new KeyFolder(shop.folder).key();
    PrintWriter to = spec.commandLine().getOut();
    String pem = PublicKeys.pem(key.publicKey());
    if (out == null) {
      to.print(pem);
      to.flush();
      return ExitCodes.DONE;
    }
    if (Files.exists(out)) {
      throw new Refused(out + " is there already", "Name a new file.");
    }
    try {
      Files.writeString(out, pem);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write " + out, refused);
    }
    to.println("Key " + key.id() + " written to " + out);
    return ExitCodes.DONE;
  }
}
