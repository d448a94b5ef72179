package corewright.station.cli;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.run.Clock;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Decides anew what shall become of a unit, from what the record knows now. */
@Command(
    name = "decide",
    mixinStandardHelpOptions = true,
    description =
        "Puts a unit before the decision table: the row that decides, the sums, the readings behind"
            + " it, which group of parts they are consistent with, and what the customer can be"
            + " told. The decision is kept.",
    footer = {
      "",
      "Examples:",
      "  corewright decide U-00003X",
      "  corewright decide U-00003X --override REPLACE --to exchange --by 'R. Acker' \\",
      "      --why 'The boat sails on Friday.'",
      "",
      "An override is kept beside the row that it overrules. What safety, law or the unit's owner",
      "forbid is refused."
    })
final class DecideCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag = "";

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  @ArgGroup(exclusive = false)
  private @Nullable Otherwise otherwise;

  /** A person decides otherwise. */
  static final class Otherwise {
    @Option(
        names = "--override",
        required = true,
        paramLabel = "DISPOSITION",
        description = "REBUILD, REPLACE or RETURN, whatever the table says.")
    private Disposition to = Disposition.PENDING;

    @Option(
        names = "--to",
        required = true,
        paramLabel = "PLACE",
        description = "Where it goes: queue, exchange, stock, harvest, scrap or customer.")
    private String destination = "";

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who decides so.")
    private String who = "";

    @Option(names = "--why", required = true, paramLabel = "REASON", description = "Why.")
    private String why = "";
  }

  /** Whoever received the core; in a shop with accounts, whoever sits here. */
  private static String somebody(Workshop workshop, Dossier dossier) {
    return workshop.ledger().accounts().all().isEmpty()
        ? dossier.core().receivedBy()
        : Objects.requireNonNullElse(
            System.getenv("COREWRIGHT_BY"), System.getProperty("user.name", ""));
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = shop.open("decide", Clock.system())) {
      Dossier dossier = workshop.ledger().dossier(tag);
      String who = otherwise == null ? somebody(workshop, dossier) : otherwise.who;
      shop.signIn(workshop, who);
      Decision decision =
          otherwise == null
              ? workshop.decide(tag, who)
              : workshop.overrule(
                  tag, otherwise.to, otherwise.destination, otherwise.who, otherwise.why);
      if (json) {
        out.println(RecordJson.text(RecordJson.decided(dossier.core(), decision)));
      } else {
        DecisionWords.of(dossier.core(), decision).forEach(out::println);
      }
      return ExitCodes.DONE;
    }
  }
}
