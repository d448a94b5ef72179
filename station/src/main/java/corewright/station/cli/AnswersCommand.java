package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import java.io.PrintWriter;
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
    err.println("Leave out a cue that was not looked at.");
    err.flush();
    spec.commandLine().getOut().println(RecordJson.text(template(of)));
    return ExitCodes.DONE;
  }

  private static ObjectNode template(Family family) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("who", "your name");
    ObjectNode received = json.putObject("received");
    received.put("family", family.id());
    received.put("serial", "");
    received.put("label", "");
    received.put("customer", "");
    received.put("mode", "repair");
    received.put("complaint", "");
    json.putObject("cues");
    ObjectNode checklist = json.putObject("checklist");
    family.checklist().stream()
        .filter(c -> c.askedIf().isEmpty())
        .forEach(c -> checklist.put(c.id(), c.unremarkable()));
    json.putObject("agreed").put("approval", "not asked");
    return json;
  }
}
