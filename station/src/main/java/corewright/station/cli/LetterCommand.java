package corewright.station.cli;

import corewright.station.work.Paperwork;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the letter about a decision or an open question. */
@Command(
    name = "letter",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the letter to a unit's owner: what came, what it did, what becomes of it.",
      "Refused while nothing has been decided."
    },
    footer = {"", "Example:", "  corewright letter U-00003X"})
final class LetterCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private PaperOptions options;

  @Override
  public Integer call() throws Exception {
    return options.write(spec.commandLine(), Paperwork.LETTER);
  }
}
