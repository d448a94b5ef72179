package corewright.station.cli;

import corewright.station.work.Paperwork;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes the certificate of a unit's last test. */
@Command(
    name = "certificate",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the test certificate of a unit: a page for the customer, pages for the expert, the"
          + " record and the curves inside, signed over every byte.",
      "Refused for a VOID or unfinished run, for a rebuilt unit without a test before shipping, for"
          + " a run of another place, and where a calibration was overdue. An emulated run makes a"
          + " specimen, which is not signed."
    },
    footer = {"", "Example:", "  corewright certificate U-00004V"})
final class CertificateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private PaperOptions options;

  @Override
  public Integer call() throws Exception {
    return options.write(spec.commandLine(), Paperwork.CERTIFICATE);
  }
}
