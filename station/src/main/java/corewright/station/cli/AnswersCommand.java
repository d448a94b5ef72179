package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.inspect.Symptom.Kind;
import corewright.bench.inspect.Symptoms;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.station.work.AnswersFile;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints an answers file to fill in; the questions and possible answers go to stderr. */
@Command(
    name = "answers",
    mixinStandardHelpOptions = true,
    description = "Prints an answers file to fill in for one core of a family.",
    footer = {"", "Example:", "  corewright answers sd48 > core.json"})
final class AnswersCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FAMILY", description = "Family id, as sd48.")
  private String family;

  @Override
  public Integer call() {
    Family of = Catalogue.ofHome().family(family);
    PrintWriter err = spec.commandLine().getErr();
    of.cues().forEach(c -> err.println(c.id() + ": " + c.question() + "  " + c.answers()));
    of.checklist().forEach(c -> err.println(c.id() + ": " + c.question() + "  " + c.answers()));
    err.println(
        "symptoms: \"codes\" [{\"code\": as given, \"where\": an output's number or one of "
            + Symptoms.PLACES
            + "}]");
    for (Kind kind : List.of(Kind.WHEN, Kind.AFTER)) {
      err.println("symptoms: \"" + kind.name().toLowerCase(Locale.ROOT) + "\"  " + kind.answers());
    }
    err.println("A number or a date may be given as it was read, as 437 or \"1431\".");
    err.println("Leave out what was not looked at: it counts as not answered, not as fine.");
    err.flush();
    spec.commandLine().getOut().println(RecordJson.text(template(of)));
    return ExitCodes.DONE;
  }

  private static ObjectNode template(Family family) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("who", AnswersFile.NOBODY_YET);
    ObjectNode received = json.putObject("received");
    received.put("family", family.id());
    received.put("serial", "");
    received.put("label", "");
    received.put("customer", "");
    received.put("mode", "repair");
    received.put("complaint", "");
    json.putObject("cues");
    json.putObject("checklist");
    json.putObject("symptoms");
    json.putObject("agreed").put("approval", "not asked");
    return json;
  }
}
