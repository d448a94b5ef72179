package corewright.station.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line: one subcommand per use case of {@code corewright.station.work}. */
@Command(
    name = "corewright",
    versionProvider = Main.Version.class,
    mixinStandardHelpOptions = true,
    description = "Tests a used module on the bench, decides its way, keeps the record.")
public final class Main implements Runnable {
  private static final List<Class<?>> COMMANDS =
      List.of(
          AccountCommand.class,
          AmendCommand.class,
          AnswersCommand.class,
          AttachCommand.class,
          BackupCommand.class,
          BenchCommand.class,
          BoardCommand.class,
          BringCommand.class,
          CalibrateCommand.class,
          CertificateCommand.class,
          CheckCommand.class,
          ClaimCommand.class,
          ConditionCommand.class,
          ConfirmCommand.class,
          CrankCommand.class,
          DecideCommand.class,
          DemoCommand.class,
          DepositCommand.class,
          ExportCommand.class,
          FiguresCommand.class,
          FindCommand.class,
          ForgetCommand.class,
          HistoryCommand.class,
          HoldCommand.class,
          IdentifyCommand.class,
          InspectCommand.class,
          KeyCommand.class,
          LabelCommand.class,
          LetterCommand.class,
          LotCommand.class,
          MeasureCommand.class,
          MoveCommand.class,
          PortsCommand.class,
          PlaybackCommand.class,
          PracticeCommand.class,
          PromiseCommand.class,
          QuoteCommand.class,
          ReceiveCommand.class,
          RelabelCommand.class,
          ReleaseCommand.class,
          RestoreCommand.class,
          RunCommand.class,
          SafeCommand.class,
          SealCommand.class,
          ServeCommand.class,
          ShareCommand.class,
          SheetCommand.class,
          ShiftCommand.class,
          ShowCommand.class,
          SiblingsCommand.class,
          SignCommand.class,
          TemplateCommand.class,
          VerifyCommand.class,
          WarrantyCommand.class,
          WorkCommand.class,
          CommandLine.HelpCommand.class);

  @Spec private CommandSpec spec;

  /** Runs one command and leaves with its exit code. */
  public static void main(String[] args) {
    Logger.getLogger("").setLevel(Level.SEVERE); // libraries warn of each attribute they read
    System.exit(commandLine(args).execute(args));
  }

  /** The whole command line, ready to execute; tests use the same one. */
  static CommandLine commandLine() {
    return of(COMMANDS);
  }

  /**
   * The command line for these words: of the command that the first one names, or the whole. To
   * read what all of them take costs a tenth of a second.
   */
  static CommandLine commandLine(String... words) {
    List<Class<?>> named =
        COMMANDS.stream()
            .filter(
                c -> words.length > 0 && c.getSimpleName().equalsIgnoreCase(words[0] + "Command"))
            .filter(c -> c != CommandLine.HelpCommand.class)
            .toList();
    return of(named.isEmpty() ? COMMANDS : named);
  }

  private static CommandLine of(List<Class<?>> commands) {
    CommandLine line = new CommandLine(new Main());
    commands.forEach(line::addSubcommand);
    line.registerConverter(LocalDate.class, Main::day);
    line.registerConverter(Double.class, Main::number);
    line.registerConverter(double.class, Main::number);
    line.setExecutionExceptionHandler(new FaultWords()).setCaseInsensitiveEnumValuesAllowed(true);
    line.getSubcommands().values().forEach(Main::listExitCodes);
    listExitCodes(line);
    return line;
  }

  private static LocalDate day(String typed) {
    try {
      return LocalDate.parse(typed.strip());
    } catch (DateTimeParseException none) {
      throw new CommandLine.TypeConversionException(
          "'" + typed + "' is no day; write year, month, day, as 2027-11-29");
    }
  }

  private static double number(String typed) {
    try {
      return Double.parseDouble(typed.strip());
    } catch (NumberFormatException none) {
      throw new CommandLine.TypeConversionException(
          "'" + typed + "' is no number; write it with a point and without its unit, as 12.5");
    }
  }

  private static void listExitCodes(CommandLine command) {
    command
        .getCommandSpec()
        .usageMessage()
        .exitCodeListHeading("%nExit codes:%n")
        .exitCodeList(ExitCodes.list());
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  /** Reads the version that the build wrote into the jar. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String built = Main.class.getPackage().getImplementationVersion();
      return new String[] {"corewright " + Objects.requireNonNullElse(built, "(not packaged)")};
    }
  }
}
