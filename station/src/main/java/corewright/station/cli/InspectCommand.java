package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.station.work.Inspecting.Result;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says in which condition a core came. */
@Command(
    name = "inspect",
    mixinStandardHelpOptions = true,
    description = {
      "Goes through the checklist of the unit's family: arrival, outside, connector by pin,"
          + " contamination, seals, tamper marks, mass, and inside once it was opened. Asks only"
          + " what earlier answers make worth asking; then says what was seen, the grade, what"
          + " forbids power, and what was not answered.",
      "Questions go to stderr and are answered with one digit and Enter, or with lines from a pipe;"
          + " the result goes to stdout. With --answers or --json nothing is asked.",
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright inspect U-00003X                   asks and answers",
      "  corewright inspect U-00003X --answers core.json --json",
    })
final class InspectCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;
  @Mixin private PersonAtUnit person;

  @Option(names = "--json", description = "JSON on stdout, and nothing else there.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    try (Workshop workshop = shop.open("inspect", Clock.system())) {
      Asking asking = new Asking(err);
      String tag = person.unit(workshop, asking, json);
      if (!json && person.asks()) {
        person
            .somebody(asking)
            .ifPresent(
                who -> {
                  shop.signIn(workshop, who);
                  new InspectTalk(workshop.looking(), asking, err).about(tag, who);
                });
      }
      Result result = workshop.inspecting().of(tag);
      if (json) {
        out.println(RecordJson.text(InspectJson.of(result)));
      } else {
        err.println();
        err.flush();
        InspectText.of(result).forEach(out::println);
      }
      out.flush();
      return ExitCodes.DONE;
    }
  }
}
