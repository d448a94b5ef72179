package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.bench.life.ClaimClass.Outcome;
import corewright.bench.life.ClaimFacts;
import corewright.reports.document.ClaimCase;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.station.work.Claiming;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Claims under warranty. */
@Command(
    name = "claim",
    mixinStandardHelpOptions = true,
    description = {
      "Opens a claim (--symptom), classes it (--close), writes its report (--report), or lists a"
          + " unit's claims.",
      "Whether it is in term, and the test as returned, come from the record. A class is refused"
          + " while something that it rests on is unknown."
    },
    footer = {
      "",
      "Examples:",
      "  corewright claim U-00004V --symptom 'dies when hot' --asked hours=120 --asked"
          + " installer=yes",
      "  corewright claim U-00004V --close --identity ours --seal intact --cause none --group same"
          + " --evidence 'photo 3f2a…: seal'",
      "  corewright claim U-00004V --report"
    })
final class ClaimCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(names = "--symptom", paramLabel = "TEXT", description = "The customer's words; opens it.")
  private @Nullable String symptom;

  @Option(names = "--asked", paramLabel = "QUESTION=ANSWER", description = "Asked at intake.")
  private Map<String, String> asked = new HashMap<>();

  @Option(names = "--close", description = "Class it by the table, and close it.")
  private boolean close;

  @Option(names = "--identity", description = "Serial and hidden mark: ${COMPLETION-CANDIDATES}")
  private ClaimFacts.Identity identity = ClaimFacts.Identity.UNKNOWN;

  @Option(names = "--seal", description = "${COMPLETION-CANDIDATES}")
  private ClaimFacts.Seal seal = ClaimFacts.Seal.UNKNOWN;

  @Option(names = "--cause", description = "From outside: ${COMPLETION-CANDIDATES}")
  private ClaimFacts.Cause cause = ClaimFacts.Cause.UNKNOWN;

  @Option(names = "--coverage", description = "Tested at: ${COMPLETION-CANDIDATES}")
  private ClaimFacts.Coverage coverage = ClaimFacts.Coverage.UNKNOWN;

  @Option(names = "--group", description = "Against what was rebuilt: ${COMPLETION-CANDIDATES}")
  private ClaimFacts.Group group = ClaimFacts.Group.UNKNOWN;

  @Option(
      names = "--evidence",
      paramLabel = "TEXT",
      description = "What it rests on; again for more.")
  private List<String> evidence = new ArrayList<>();

  @Option(names = "--outcome", description = "If not the usual one: ${COMPLETION-CANDIDATES}")
  private @Nullable Outcome outcome;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why it is not the usual one.")
  private String reason = "";

  @Option(
      names = "--report",
      description =
          "Write the report of the latest claim: came, left and came back on one picture.")
  private boolean report;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      if (symptom != null) {
        workshop.ledger().claims().open(tag, symptom, asked, step.by);
      } else if (close) {
        workshop
            .claiming()
            .close(
                tag,
                new Claiming.Found(identity, seal, cause, coverage, group),
                new Claiming.Ending(evidence, Optional.ofNullable(outcome), reason),
                step.by);
      }
      List<Claim> claims = workshop.ledger().claims().of(tag);
      Optional<Path> paper =
          report
              ? Optional.of(report(workshop, workshop.claiming().latest(tag)))
              : Optional.empty();
      if (step.json) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        claims.forEach(
            c ->
                list.addObject()
                    .put("tag", c.tag())
                    .put("number", c.ordinal())
                    .put("opened", c.opened())
                    .put("symptom", c.symptom())
                    .put("warrantyUntil", c.warrantyUntil())
                    .put("class", c.claimClass())
                    .put("outcome", c.outcome())
                    .put("closed", c.closed()));
        out.println(RecordJson.text(list));
      } else {
        claims.forEach(c -> out.println(line(c)));
        paper.ifPresent(out::println);
      }
      return ExitCodes.DONE;
    }
  }

  private static String line(Claim c) {
    return c.tag()
        + "  claim "
        + c.ordinal()
        + " of "
        + c.opened().substring(0, 10)
        + "  "
        + c.symptom()
        + (c.closed().isEmpty() ? "  open" : "  " + c.claimClass() + " " + c.outcome());
  }

  private Path report(Workshop workshop, ClaimCase claim) {
    PrintWriter err = spec.commandLine().getErr();
    workshop.publishing().cautions(claim.now()).forEach(c -> err.println("caution: " + c));
    err.flush();
    return workshop.publishing().claimReport(claim, step.by);
  }
}
