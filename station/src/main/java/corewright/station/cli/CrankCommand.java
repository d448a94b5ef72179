package corewright.station.cli;

import corewright.bench.log.Window;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.Role;
import corewright.profiles.Catalogue;
import corewright.station.work.CrankLog;
import corewright.station.work.CrankLog.Request;
import corewright.station.work.CrankLog.Result;
import corewright.station.work.Home;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a customer's log of a crank. */
@Command(
    name = "crank",
    mixinStandardHelpOptions = true,
    description = {
      "Reads the log of a scan tool, finds the cranks in it, qualifies the supply and says what the"
          + " output did. Any export as text will do, also .gz and .zip; what was taken for what is"
          + " printed, and each guess can be overridden.",
      "A log is evidence and no test: the bench stands above it.",
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright crank log.csv",
      "  corewright crank before.csv after.csv --family sd48",
      "  corewright crank log.csv --column output=5 --unit output=mV --json",
      "  corewright crank frames.txt --rate 4",
      "  corewright crank log.csv --plot log.svg",
    })
final class CrankCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "The log.")
  private Path file;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "AFTER",
      description = "A log of the same vehicle from later, to compare.")
  private @Nullable Path after;

  @Option(names = "--family", paramLabel = "ID", description = "The unit's family.")
  private @Nullable String family;

  @Option(
      names = "--column",
      paramLabel = "ROLE=WHICH",
      description =
          "Which column is what: time, supply, output, speed, fuel or sync, then its number from 1"
              + " or its name, or none. May be given several times.")
  private List<String> columns = new ArrayList<>();

  @Option(
      names = "--unit",
      paramLabel = "ROLE=UNIT",
      description = "Unit of the supply or output: V, mV, or a factor as in \"0.0489 V\".")
  private List<String> units = new ArrayList<>();

  @Option(
      names = "--rate",
      paramLabel = "HZ",
      description = "Rows or frames a second, for a log without usable times.")
  private @Nullable Double rate_Hz;

  @Option(
      names = "--delimiter",
      paramLabel = "SIGN",
      description = "Between the columns: a sign, or tab.")
  private @Nullable String delimiter;

  @Option(names = "--decimal", paramLabel = "SIGN", description = "Decimal mark: . or ,")
  private @Nullable String decimal;

  @Option(
      names = "--window",
      paramLabel = "FROM:TO",
      description = "Seconds on the log's clock to judge, where no crank is found.")
  private @Nullable String window;

  @Option(
      names = "--plot",
      arity = "0..1",
      fallbackValue = "",
      paramLabel = "PICTURE",
      description =
          "Draw the samples as dots into this .svg or .png; without a name, into one named after"
              + " the log in the folder you are in.")
  private @Nullable Path plot;

  @Option(names = "--json", description = "JSON on stdout, and nothing else there.")
  private boolean json;

  @Override
  public Integer call() {
    Request request =
        new Request(
            file,
            Optional.ofNullable(after),
            Optional.ofNullable(family),
            choices(),
            Optional.ofNullable(window).map(this::window));
    Result result = new CrankLog(Catalogue.in(Home.fromSystem().families())).read(request);
    Optional<Path> picture = Optional.ofNullable(plot).map(this::pictureFile);
    picture.ifPresent(p -> CrankLog.draw(result, p));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(new CrankJson(result, picture).text());
    } else {
      new CrankText(result).print(out);
      picture.ifPresent(p -> out.println("Drawn: " + p));
    }
    out.flush();
    return ExitCodes.DONE;
  }

  /** Named after the log, where no name was given. */
  private Path pictureFile(Path given) {
    if (!given.toString().isEmpty()) {
      return given;
    }
    String name = String.valueOf(file.getFileName());
    int dot = name.indexOf('.', 1);
    return Path.of((dot < 0 ? name : name.substring(0, dot)) + ".svg");
  }

  private Choices choices() {
    Map<Role, List<String>> which = new EnumMap<>(Role.class);
    for (String given : columns) {
      which.computeIfAbsent(role(given, "--column"), r -> new ArrayList<>()).add(value(given));
    }
    Map<Role, String> scales = new EnumMap<>(Role.class);
    for (String given : units) {
      scales.put(role(given, "--unit"), value(given));
    }
    if (rate_Hz != null && !(rate_Hz > 0 && rate_Hz <= 1e6)) {
      throw wrong("--rate is " + rate_Hz + ", and must be above 0.");
    }
    return new Choices(
        Optional.ofNullable(delimiter).map(this::sign),
        Optional.ofNullable(decimal).map(this::mark),
        rate_Hz == null ? OptionalDouble.empty() : OptionalDouble.of(rate_Hz),
        which,
        scales);
  }

  private Role role(String given, String option) {
    String name = given.substring(0, Math.max(0, given.indexOf('='))).strip();
    for (Role role :
        List.of(Role.TIME, Role.SUPPLY, Role.OUTPUT, Role.SPEED, Role.FUEL, Role.SYNC)) {
      if (role.name().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
        return role;
      }
    }
    throw wrong(
        option
            + " is '"
            + given
            + "', and must be one of time, supply, output, speed, fuel, sync, then = and a value.");
  }

  private static String value(String given) {
    return given.substring(given.indexOf('=') + 1).strip();
  }

  private char sign(String given) {
    if (given.equals("tab") || given.equals("\\t")) {
      return '\t';
    }
    if (given.length() != 1) {
      throw wrong("--delimiter is '" + given + "', and must be one sign, or tab.");
    }
    return given.charAt(0);
  }

  private char mark(String given) {
    if (!given.equals(".") && !given.equals(",")) {
      throw wrong("--decimal is '" + given + "', and must be . or ,");
    }
    return given.charAt(0);
  }

  private Window window(String given) {
    try {
      int colon = given.indexOf(':');
      Window parsed =
          new Window(
              Double.parseDouble(given.substring(0, Math.max(0, colon))),
              Double.parseDouble(given.substring(colon + 1)));
      if (parsed.length_s() > 0) {
        return parsed;
      }
    } catch (NumberFormatException notANumber) {
      // told below, with what would be right
    }
    throw wrong("--window is '" + given + "', and must be two times in s, as 12.5:17.");
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
