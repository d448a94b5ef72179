package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.reports.ledger.Verification;
import corewright.station.work.Verifying;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether the record is as it was written. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = {
      "Reads every event of a ledger and says whether one was changed, is missing or stands in"
          + " another place. Changes nothing.",
      "Only a key and heads that were kept outside the ledger prove that nobody wrote all of it"
          + " anew or cut off its end."
    },
    footer = {
      "",
      "Examples:",
      "  corewright verify corewright-shop",
      "  corewright verify copy.db --key signing.pub --head bench-1:1042:9f86d081884c7d65"
    })
final class VerifyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "LEDGER", description = "The ledger's file, or the shop's folder.")
  private Path ledger;

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = "A public key of the shop, from elsewhere; may be given again.")
  private List<Path> keys = new ArrayList<>();

  @Option(
      names = "--head",
      paramLabel = "HEAD",
      description =
          "What a document, export or backup names as the record's end; may be given again.")
  private List<String> heads = new ArrayList<>();

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    Verification found = Verifying.verify(ledger, keys, heads);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(RecordJson.text(json(found)));
    } else {
      words(found).forEach(out::println);
    }
    return found.whole() ? ExitCodes.DONE : ExitCodes.BROKEN_RECORD;
  }

  private ObjectNode json(Verification found) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("ledger", ledger.toString());
    json.put("whole", found.whole());
    json.put("events", found.events());
    json.put("signed", found.signed());
    found.keys().forEach(json.putArray("keys")::add);
    json.put("keysFromOutside", !keys.isEmpty());
    found.heads().forEach(head -> json.withArray("heads").add(head.toString()));
    json.put("first", found.broken().stream().findFirst().orElse(null));
    found.broken().forEach(json.putArray("broken")::add);
    return json;
  }

  private List<String> words(Verification found) {
    List<String> lines = new ArrayList<>();
    lines.add(
        found.whole()
            ? "Whole: every event is as it was written."
            : "NOT AS IT WAS WRITTEN, first at: " + found.broken().get(0));
    found.broken().stream().skip(1).forEach(more -> lines.add("  also: " + more));
    lines.add(found.events() + " events, " + found.signed() + " with a good signature.");
    found.keys().forEach(key -> lines.add("Signed with key " + key));
    found.heads().forEach(head -> lines.add("Head " + head));
    if (keys.isEmpty()) {
      lines.add("The keys are those that the ledger names. Give --key to be sure whose they are.");
    }
    if (!found.whole()) {
      lines.add("Keep this file as it is, and compare it with the last backup.");
    }
    return lines;
  }
}
