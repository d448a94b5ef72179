package corewright.station.cli;

import corewright.reports.document.template.Placeholders;
import corewright.reports.document.template.TemplateKind;
import corewright.station.work.Refused;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the template of a document as it ships, to begin with. */
@Command(
    name = "template",
    mixinStandardHelpOptions = true,
    description = {
      "Prints the sections of a document as they ship. Put the text into 'templates' in the shop's"
          + " folder, as letter.txt, and write below a section what the shop says there.",
      "'check' names every mistake with its line: what was measured, limits, what was not tested,"
          + " cautions and what is not claimed are never left out.",
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright template letter > corewright-shop/templates/letter.txt",
      "  corewright check corewright-shop/templates/letter.txt",
    })
final class TemplateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "DOCUMENT",
      description = "letter, test-report, warranty-report, certificate or install-sheet.")
  private String document = "";

  @Override
  public Integer call() {
    TemplateKind kind =
        TemplateKind.of(document)
            .orElseThrow(
                () ->
                    new Refused(
                        "There is no template of '" + document + "'",
                        "There are "
                            + String.join(
                                ", ",
                                Arrays.stream(TemplateKind.values()).map(TemplateKind::id).toList())
                            + "."));
    PrintWriter out = spec.commandLine().getOut();
    out.println("# Lines that begin with # are remarks. An empty line ends a paragraph.");
    out.println("# [text] is a section of the shop's own, [text REPLACE] one for that decision.");
    out.println(
        "# Names that stand for something: {" + String.join("} {", Placeholders.NAMES) + "}");
    out.print(kind.text());
    out.flush();
    return ExitCodes.DONE;
  }
}
