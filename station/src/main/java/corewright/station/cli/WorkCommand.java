package corewright.station.cli;

import corewright.bench.life.Act;
import corewright.reports.ledger.Fitted;
import corewright.reports.ledger.Lives;
import corewright.reports.ledger.Step;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The rebuild: opened, parts by position and lot, closed. */
@Command(
    name = "work",
    mixinStandardHelpOptions = true,
    description = {
      "Notes what was done to a unit: opened, parts fitted by position and lot, closed.",
      "Opening makes its final test and its seal worthless. Options are taken in this order:"
          + " --open, --did and --part, --close."
    },
    footer = {
      "",
      "Examples:",
      "  corewright work U-00004V --open",
      "  corewright work U-00004V --part 'C1=2200 uF 63 V@LOT-7:1180 uF, 61 mohm' --did 'Joints of"
          + " the inductor reflowed' --close"
    })
final class WorkCommand implements Callable<Integer> {
  private static final Pattern PART =
      Pattern.compile("(?<place>[^=]+)=(?<part>[^@]+)@(?<lot>[^:]+)(:(?<removed>.*))?");

  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(names = "--open", description = "Its cover comes off.")
  private boolean open;

  @Option(
      names = "--part",
      paramLabel = "PLACE=PART@LOT[:REMOVED]",
      description =
          "A part that was fitted, and what the removed one measured; may be given again.")
  private List<String> parts = new ArrayList<>();

  @Option(
      names = "--did",
      paramLabel = "TEXT",
      description = "What else was done; may be given again.")
  private List<String> did = new ArrayList<>();

  @Option(names = "--close", description = "It is closed again, and waits for its final test.")
  private boolean close;

  @Override
  public Integer call() {
    List<Fitted> fitted = parts.stream().map(WorkCommand::part).toList();
    List<Step> steps = new ArrayList<>();
    if (open) {
      steps.add(new Step.Plain(Act.OPEN, ""));
    }
    if (!did.isEmpty() || !fitted.isEmpty()) {
      steps.add(new Step.Work(did, fitted));
    }
    if (close) {
      steps.add(new Step.Plain(Act.CLOSE, ""));
    }
    if (steps.isEmpty()) {
      throw new Refused("Nothing was done to " + tag, "Give --open, --part, --did or --close.");
    }
    try (Workshop workshop = step.open()) {
      Lives lives = workshop.ledger().lives();
      steps.forEach(s -> lives.take(tag, s, step.by));
      step.print(spec.commandLine().getOut(), lives.standing(tag));
      return ExitCodes.DONE;
    }
  }

  private static Fitted part(String text) {
    Matcher m = PART.matcher(text);
    if (!m.matches()) {
      throw new Refused(
          "'" + text + "' does not say which part was fitted",
          "Write PLACE=PART@LOT, as 'C1=2200 uF 63 V@LOT-7', and ':' with what the old one"
              + " measured.");
    }
    String removed = m.group("removed");
    return new Fitted(
        m.group("place").strip(),
        m.group("part").strip(),
        m.group("lot").strip(),
        removed == null ? "" : removed.strip());
  }
}
