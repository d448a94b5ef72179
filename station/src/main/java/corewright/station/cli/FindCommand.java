package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.bench.life.Stage;
import corewright.bench.record.Verdict;
import corewright.reports.ledger.Found;
import corewright.reports.ledger.Query;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.time.LocalDate;
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

/** Finds units by anything that people remember of them. */
@Command(
    name = "find",
    mixinStandardHelpOptions = true,
    description = {
      "Finds units by tag, serial or a part of it, lot, person, bench, fixture, dates, stage,"
          + " verdict; everything given must hold.",
      "A mistyped tag is found by its check character, and marked as a guess."
    },
    footer = {
      "",
      "Examples:",
      "  corewright find 0698",
      "  corewright find --lot LOT-7 --stage shipped",
      "  corewright find --bench bench-1 --from 2026-11-23 --until 2026-11-29 --verdict fail"
    })
final class FindCommand implements Callable<Integer> {
  private static final Query NOTHING =
      new Query(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(arity = "0..1", paramLabel = "TEXT", description = "A tag, a serial, or part of one.")
  private @Nullable String text;

  @Option(names = "--lot", paramLabel = "LOT", description = "Fitted from this lot.")
  private @Nullable String lot;

  @Option(names = "--person", paramLabel = "NAME", description = "Received, ran or worked on by.")
  private @Nullable String person;

  @Option(names = "--bench", paramLabel = "ID", description = "Run on this bench.")
  private @Nullable String bench;

  @Option(names = "--fixture", paramLabel = "ID", description = "Run on this fixture.")
  private @Nullable String fixture;

  @Option(names = "--from", paramLabel = "DATE", description = "Received or run on or after.")
  private @Nullable LocalDate from;

  @Option(names = "--until", paramLabel = "DATE", description = "Received or run on or before.")
  private @Nullable LocalDate until;

  @Option(names = "--stage", description = "Where it stands: ${COMPLETION-CANDIDATES}")
  private @Nullable Stage stage;

  @Option(names = "--verdict", description = "What a run came to: ${COMPLETION-CANDIDATES}")
  private @Nullable Verdict verdict;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Query query =
        new Query(
            Optional.ofNullable(text),
            Optional.ofNullable(lot),
            Optional.ofNullable(person),
            Optional.ofNullable(bench),
            Optional.ofNullable(fixture),
            Optional.ofNullable(from).map(LocalDate::toString),
            Optional.ofNullable(until).map(LocalDate::toString),
            Optional.ofNullable(stage).map(Stage::name),
            Optional.ofNullable(verdict).map(Verdict::name));
    if (query.equals(NOTHING)) {
      throw new Refused(
          "Nothing was asked for", "Give a tag, a serial, --lot, --stage or the like.");
    }
    try (Workshop workshop = step.open()) {
      List<Found> found = workshop.ledger().find(query);
      print(out, found, step.json);
      if (found.isEmpty()) {
        spec.commandLine().getErr().println("No unit is like that.");
      }
      return ExitCodes.DONE;
    }
  }

  static void print(PrintWriter out, List<Found> found, boolean json) {
    if (json) {
      out.println(RecordJson.text(json(found)));
    } else {
      found.forEach(f -> out.println(DossierWords.line(f)));
    }
  }

  static ArrayNode json(List<Found> found) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    found.forEach(
        f ->
            list.addObject()
                .put("tag", f.tag())
                .put("serial", f.serial())
                .put("family", f.family())
                .put("label", f.label())
                .put("visits", f.visits())
                .put("why", f.why()));
    return list;
  }
}
