package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Removes a person's name. */
@Command(
    name = "forget",
    mixinStandardHelpOptions = true,
    description = {
      "Removes a customer's name from the ledger for good. What happened to their units stays,"
          + " under a code; 'verify' finds the record whole.",
      "Documents that print the name, and photographs and files that came with the units, are"
          + " listed and left to you, and so are older backups."
    },
    footer = {
      "",
      "Example:",
      "  corewright forget 'Orrel Plant Hire' --reason 'asked for it by mail'"
    })
final class ForgetCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "CUSTOMER", description = "Name or code.")
  private String customer;

  @Option(names = "--reason", required = true, description = "Why; without names.")
  private String reason = "";

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      List<String> files =
          workshop.ledger().custody().evidence(Optional.of(customer)).stream()
              .filter(path -> path.startsWith("files/"))
              .toList();
      List<String> documents = workshop.ledger().custody().forget(customer, reason, step.by);
      if (step.json) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        documents.forEach(json.putArray("documents")::add);
        files.forEach(json.putArray("files")::add);
        out.println(RecordJson.text(json));
      } else {
        out.println(
            documents.isEmpty()
                ? "Removed. No document prints the name; older backups still hold it."
                : "Removed. These documents still print the name, and so do older backups:");
        documents.forEach(out::println);
        if (!files.isEmpty()) {
          out.println(
              "These photographs and files came with the units: look whether they name them:");
          files.forEach(out::println);
        }
      }
      return ExitCodes.DONE;
    }
  }
}
