package corewright.station.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line: one subcommand per use case of {@code corewright.station.work}. */
@Command(
    name = "corewright",
    version = "corewright 1.0.0-SNAPSHOT",
    mixinStandardHelpOptions = true,
    description = "Tests used modules on a bench, decides rebuild, replace or return, keeps the record.")
public final class Main implements Runnable {
  @Spec private CommandSpec spec;

  /** Runs one command and leaves with its exit code. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
