package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Dossier;
import corewright.bench.run.Clock;
import corewright.reports.ledger.Amendment;
import corewright.reports.ledger.Found;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what the record knows of a unit. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description = "Shows a unit: what arrived, what was measured, what was decided.",
    footer = {
      "",
      "Examples:",
      "  corewright show U-00003X         by the shop's tag",
      "  corewright show 4417-2208        by the maker's serial, or a part of it"
    })
final class ShowCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;

  @Parameters(paramLabel = "TAG|SERIAL", description = "The tag, or the maker's serial.")
  private String wanted;

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = shop.open("show", Clock.system())) {
      List<Found> found = workshop.ledger().find(wanted);
      if (found.isEmpty()) {
        throw new Refused(
            "Nothing in " + shop.folder + " has the tag or serial " + wanted,
            "Try a part of the serial, or name the shop's folder with --shop.");
      }
      if (found.stream().allMatch(Found::isGuess)) {
        throw new Refused(
            wanted + " is not a tag: its check character is wrong",
            "Read it again. One slip away are: "
                + found.stream()
                    .map(f -> f.tag() + " (serial " + f.serial() + ")")
                    .collect(Collectors.joining(", "))
                + ".");
      }
      if (found.size() > 1) {
        FindCommand.print(out, found, json);
        return ExitCodes.DONE;
      }
      Dossier dossier = workshop.ledger().dossier(found.get(0).tag());
      List<Amendment> amendments = workshop.ledger().runs().amendments(found.get(0).tag());
      Map<String, String> suspect = workshop.shiftCheck().suspect(dossier);
      if (json) {
        ObjectNode told = RecordJson.dossier(dossier, amendments);
        suspect.forEach(told.putObject("suspect")::put);
        out.println(RecordJson.text(told));
      } else {
        WallTime time = new WallTime(workshop.zone());
        DossierWords.of(dossier, amendments, time).forEach(out::println);
        suspect.forEach((run, why) -> out.println("SUSPECT     run " + run + ": " + why));
        InspectText.brief(workshop.inspecting().of(dossier.core().tag())).forEach(out::println);
      }
      return ExitCodes.DONE;
    }
  }
}
