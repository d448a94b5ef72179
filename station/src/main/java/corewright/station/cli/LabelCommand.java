package corewright.station.cli;

import corewright.reports.document.Label;
import corewright.station.work.Paperwork;
import java.util.Iterator;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes what is tied to a core, or stuck on a unit that leaves. */
@Command(
    name = "label",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the tag of a core, or with --leaving the label of a rebuilt unit.",
      "Each has a QR code, and from 62x29 mm on a bar code, of the tag with its check character."
    },
    footer = {
      "",
      "Examples:",
      "  corewright label U-00004V                          the tag of a core, 100x150 mm",
      "  corewright label U-00004V --leaving --size 62x29   the label of a unit that leaves"
    })
final class LabelCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private PaperOptions options;

  @Option(
      names = "--size",
      paramLabel = "MM",
      completionCandidates = Sizes.class,
      description =
          "Width and height in mm: ${COMPLETION-CANDIDATES}. Without it 100x150, with"
              + " --leaving 100x50.")
  private String size = "";

  @Option(
      names = "--leaving",
      description = "The label of a unit that leaves; refused unless the record supports it.")
  private boolean leaving;

  /** What {@code --size} takes. */
  private static final class Sizes implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Label.sizes().iterator();
    }
  }

  @Override
  public Integer call() throws Exception {
    Label usual = leaving ? Label.WIDE : Label.TALL;
    Label label = size.isEmpty() ? usual : Label.of(size);
    return options.write(
        spec.commandLine(), leaving ? Paperwork.unitLabel(label) : Paperwork.coreTag(label));
  }
}
