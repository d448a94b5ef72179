package corewright.station.cli;

import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import corewright.station.work.books.Mapping;
import corewright.station.work.books.OldBooks;
import corewright.station.work.books.Proposal;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A shop's old spreadsheet. */
@Command(
    name = "bring",
    mixinStandardHelpOptions = true,
    description = {
      "Brings the units of an old spreadsheet (saved as CSV) into the ledger. First it shows how it"
          + " reads the sheet: every column, every row, and every row that it cannot take, with its"
          + " line and what to do. Nothing is written before --yes.",
      "Units that come this way are marked as from old books; nothing of them is certified. A sheet"
          + " may be brought again: rows that are there are passed over. Columns that no field"
          + " takes stay behind."
    },
    footer = {
      "",
      "Examples:",
      "  corewright bring old-jobs.csv",
      "  corewright bring old-jobs.csv --save how.json      (then mend how.json)",
      "  corewright bring old-jobs.csv --mapping how.json --yes"
    })
final class BringCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "FILE", description = "The sheet, saved as CSV.")
  private Path file = Path.of("");

  @Option(names = "--mapping", paramLabel = "FILE", description = "How it is read.")
  private @Nullable Path mapping;

  @Option(names = "--save", paramLabel = "FILE", description = "Writes how it would be read.")
  private @Nullable Path save;

  @Option(names = "--yes", description = "Brings every row that is shown as one to be brought.")
  private boolean yes;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      OldBooks books = workshop.oldBooks();
      Proposal proposal = books.propose(file, Optional.ofNullable(mapping).map(Mapping::read));
      if (save != null) {
        write(save, proposal.mapping());
      }
      List<String> tags = yes ? books.bring(proposal, step.by) : List.of();
      BooksWords words = new BooksWords(proposal, tags);
      if (step.json) {
        out.println(RecordJson.text(words.json()));
      } else {
        words.lines().forEach(out::println);
      }
      return ExitCodes.DONE;
    }
  }

  private static void write(Path to, Mapping mapping) {
    if (Files.exists(to)) {
      throw new Refused(to + " is there already", "Name a new file with --save.");
    }
    try {
      Files.writeString(to, RecordJson.text(mapping.json()) + "\n");
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write " + to, refused);
    }
  }
}
