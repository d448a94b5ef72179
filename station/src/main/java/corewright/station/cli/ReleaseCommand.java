package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.station.work.Releasing;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a unit leave. */
@Command(
    name = "release",
    mixinStandardHelpOptions = true,
    description = {
      "Lets a unit leave: writes the warranty report of a rebuilt one, packs it, ships it, and"
          + " notes until when it is covered (months and terms stand in shop.json).",
      "A rebuilt unit leaves sealed. What was not rebuilt leaves without a warranty."
    },
    footer = {"", "Example:", "  corewright release U-00004V --carrier post --tracking 00340434"})
final class ReleaseCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(
      names = "--carrier",
      paramLabel = "NAME",
      defaultValue = "counter",
      description = "Who takes it (${DEFAULT-VALUE}).")
  private String carrier = "";

  @Option(names = "--tracking", paramLabel = "NUMBER", description = "Number of the parcel.")
  private String tracking = "";

  @Option(
      names = "--serial",
      paramLabel = "TEXT",
      description = "As it stands on the unit that leaves; another unit's is refused.")
  private String serial = "";

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      Releasing.Released released =
          workshop
              .releasing()
              .release(new Releasing.Request(tag, carrier, tracking, serial, step.by));
      if (step.json) {
        ObjectNode json = StepOptions.json(released.standing());
        json.put("warrantyFrom", released.shipping().warrantyFrom());
        json.put("warrantyUntil", released.shipping().warrantyUntil());
        json.put("document", released.report().map(Object::toString).orElse(null));
        out.println(RecordJson.text(json));
      } else {
        out.println(StepOptions.line(released.standing()));
        out.println(
            released.shipping().warrantyUntil().isEmpty()
                ? "Without a warranty: it was not rebuilt and sealed."
                : "Covered until " + released.shipping().warrantyUntil());
        released.report().ifPresent(out::println);
      }
      return ExitCodes.DONE;
    }
  }
}
