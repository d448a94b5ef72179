package corewright.station.cli;

import corewright.bench.life.Act;
import corewright.reports.ledger.Standing;
import corewright.reports.ledger.Step;
import corewright.station.work.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Steps in a unit's life that need no more than their name and perhaps a reason. */
@Command(
    name = "move",
    mixinStandardHelpOptions = true,
    description = {
      "Moves units: to quarantine or out of it (free), into stock, packed, harvested, scrapped, or"
          + " one step back.",
      "Scrapping takes --reason, and --second or --photo. A step back takes --reason."
    },
    footer = {
      "",
      "Examples:",
      "  corewright move stock U-00004V U-00005W",
      "  corewright move scrap U-00004V --reason 'board burnt' --second 'H. Oduya'"
    })
final class MoveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(index = "0", paramLabel = "WHERE", description = "${COMPLETION-CANDIDATES}")
  private Where where;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "TAG", description = "One tag or more.")
  private List<String> tags;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why; kept in the ledger.")
  private String reason = "";

  @Option(names = "--second", paramLabel = "WHO", description = "Who else saw it, for scrapping.")
  private String second = "";

  @Option(names = "--photo", paramLabel = "SHA256", description = "An attached photograph of it.")
  private String photo = "";

  /** Where to. */
  enum Where {
    quarantine,
    free,
    stock,
    pack,
    harvest,
    scrap,
    back
  }

  @Override
  public Integer call() {
    List<Standing> moved = new ArrayList<>();
    try (Workshop workshop = step.open()) {
      tags.forEach(tag -> moved.add(workshop.ledger().lives().take(tag, of(where), step.by)));
    } finally {
      step.print(spec.commandLine().getOut(), moved); // those before the one that was refused
    }
    return ExitCodes.DONE;
  }

  private Step of(Where to) {
    return switch (to) {
      case quarantine -> new Step.Plain(Act.QUARANTINE, reason);
      case free -> new Step.Plain(Act.FREE, reason);
      case stock -> new Step.Plain(Act.STOCK, reason);
      case pack -> new Step.Plain(Act.PACK, reason);
      case harvest -> new Step.Plain(Act.HARVEST, reason);
      case scrap -> new Step.Scrapping(reason, second, photo);
      case back -> new Step.Back(reason);
    };
  }
}
