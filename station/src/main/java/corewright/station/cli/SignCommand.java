package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.SignOffs.SignOff;
import corewright.station.work.SignedLimits;
import corewright.station.work.SignedLimits.Held;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Signs limits, or says who signed which. */
@Command(
    name = "sign",
    mixinStandardHelpOptions = true,
    description = {
      "Says who answers for the limits in use, and signs a family or profile whose file was"
          + " changed.",
      "What came with the program counts as delivered; a certificate is refused under a changed"
          + " file until owner or inspector sign it. A change counts the revision in the file up."
    },
    footer = {
      "",
      "Examples:",
      "  corewright sign",
      "  corewright sign sd48-ship --by 'H. Oduya'",
      "  corewright sign --family sd48 --by 'H. Oduya'"
    })
final class SignCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(
      paramLabel = "PROFILE",
      arity = "0..1",
      defaultValue = "",
      description = "The profile to sign; none: only says what is signed.")
  private String profile = "";

  @Option(
      names = "--family",
      paramLabel = "FAMILY",
      defaultValue = "",
      description = "Sign this family's own file instead.")
  private String family = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      SignedLimits limits = workshop.limits();
      List<Held> held =
          profile.isEmpty() && family.isEmpty()
              ? workshop.catalogue().families().stream()
                  .flatMap(f -> limits.of(f).stream())
                  .toList()
              : List.of(
                  limits.sign(
                      family.isEmpty() ? "profile " + profile : "family " + family, "", step.by));
      PrintWriter out = spec.commandLine().getOut();
      if (step.json) {
        out.println(RecordJson.text(json(held)));
      } else {
        WallTime zone = new WallTime(workshop.zone());
        held.forEach(h -> out.println(line(h, zone)));
      }
      return ExitCodes.DONE;
    }
  }

  private static ArrayNode json(List<Held> held) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (Held h : held) {
      all.addObject()
          .put("what", h.what())
          .put("revision", h.revision())
          .put("sha256", h.sha256())
          .put("delivered", h.standing().delivered())
          .put("signedBy", h.standing().signed().map(SignOff::who).orElse(null));
    }
    return all;
  }

  private static String line(Held h, WallTime zone) {
    return h.what()
        + ", revision "
        + h.revision()
        + ": "
        + h.standing()
            .signed()
            .map(s -> "signed by " + s.who() + ", " + zone.words(s.at()))
            .orElse(h.standing().delivered() ? "as delivered" : "NOT SIGNED");
  }
}
