package corewright.station.cli;

import corewright.bench.commission.Plug;
import corewright.bench.hand.Hands;
import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.Clock;
import corewright.files.BadFile;
import corewright.files.Origin;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.BenchDescription.FixtureDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.station.demo.CommissioningBench;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import corewright.station.work.commission.Answering;
import corewright.station.work.commission.Answering.Candidate;
import corewright.station.work.commission.Commissioned;
import corewright.station.work.commission.Commissioning;
import corewright.station.work.commission.Survey;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Commissions a bench: who answers, is it wired well, how fast is it off; writes its file. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    description = {
      "Commissions a new bench: asks every port who is there, asks you what it cannot know, puts 10"
          + " V through a resistor of yours in the place of a unit, says which leads are reversed"
          + " and which divider or shunt is another, measures the worst time from a fault to"
          + " everything off, and writes the bench's file.",
      "Without options it asks, one question at a time; what is given as an option is not asked."
    },
    footer = {
      "",
      "Examples:",
      "  corewright bench --out bench-1.json",
      "  corewright bench --emulate sd48 --out practice.json       to practise, without hardware",
      "  corewright bench --out bench-1.json --id bench-1 --family sd48 --discharge 470 --ceiling"
          + " 60 --resistor '10±0.1' --confirmed-by 'M. Reyes'"
    })
final class BenchCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      defaultValue = "bench-1.json",
      description = "The bench's file, to be written (${DEFAULT-VALUE}).")
  private Path out = Path.of("bench-1.json");

  @Option(names = "--replace", description = "A file that is there already is kept beside it.")
  private boolean replace;

  @Option(names = "--id", description = "What the bench is called, as bench-1.")
  private @Nullable String id;

  @Option(
      names = "--family",
      paramLabel = "ID",
      description = "A family that the fixture fits; again for each.")
  private List<String> families = List.of();

  @Option(
      names = "--discharge",
      paramLabel = "Ω",
      description = "The fixture's discharge resistor.")
  private @Nullable String discharge;

  @Option(names = "--ceiling", paramLabel = "V", description = "The most that the fixture may see.")
  private @Nullable String ceiling;

  @Option(
      names = "--resistor",
      paramLabel = "Ω±U",
      description = "The resistor in the place of a unit, 2 to 50 Ω, as 10±0.1 or 10±1%% (k = 2).")
  private @Nullable String resistor;

  @Option(
      names = "--port",
      paramLabel = "PATH=ROLE[,DIALECT]",
      description =
          "What hangs on a port: load, source, digitizer, switch, interlock, relay, thermometer,"
              + " meter, or none. Where it cannot be told from the answer, or where no list has"
              + " the port, as tcp:ADDRESS:PORT.")
  private Map<String, String> named = new LinkedHashMap<>();

  @Option(names = "--load-by-hand", description = "No load answers: somebody sets it when asked.")
  private boolean byHand;

  @Option(
      names = "--baud",
      paramLabel = "RATE",
      split = ",",
      defaultValue = "115200",
      description = "Line rates to try, the likely one first, bit/s (${DEFAULT-VALUE}).")
  private List<Integer> rates = List.of(115_200);

  @Option(
      names = "--line-bytes",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "What the digitizer's line really carries, bytes a second; else a tenth of its"
              + " line rate.")
  private double line_Bps;

  @Option(
      names = "--trials",
      defaultValue = "10",
      description = "How often the time to off is measured (${DEFAULT-VALUE}).")
  private int trials;

  @Option(
      names = "--confirmed-by",
      paramLabel = "NAME",
      description = "Who has read the cautions and answers for it. Without it they are asked for.")
  private @Nullable String confirmedBy;

  @Option(
      names = "--emulate",
      paramLabel = "FAMILY",
      description = "An emulated bench with an emulated resistor of 10 Ω, to practise on.")
  private @Nullable String emulate;

  @Option(
      names = "--miswired",
      paramLabel = "HOW",
      defaultValue = "",
      description = "With --emulate: what is wired wrongly, as OUTPUT_REVERSED; ? lists them.")
  private String miswired = "";

  @Option(
      names = "--silent",
      paramLabel = "ROLE",
      defaultValue = "",
      description = "With --emulate: an instrument that does not answer.")
  private String silent = "";

  @Override
  public Integer call() {
    Clock clock = Clock.system();
    SerialLinks serial = new SerialLinks(clock);
    if (trials < 1) {
      throw new Refused(
          "--trials " + trials + " measures no time from a fault to everything off",
          "Give 1 or more; the usual is 10.");
    }
    if (Files.exists(out) && !replace) {
      throw new Refused(
          out + " is there already", "Name another file with --out, or give --replace.");
    }
    Path lies = beside();
    if (!Files.isDirectory(lies)) {
      throw new Refused("There is no folder " + lies, "Make it, or name another file with --out.");
    }
    if (emulate == null) {
      return commission(clock, new SocketLinks(clock, serial), serial::list);
    }
    try (CommissioningBench bench = CommissioningBench.open(emulate, miswired, silent, 1)) {
      return commission(clock, new SocketLinks(clock, serial), bench::ports);
    }
  }

  private Path beside() {
    return out.toAbsolutePath().resolveSibling("");
  }

  private int commission(Clock clock, Links links, Supplier<List<PortInfo>> ports) {
    PrintWriter err = spec.commandLine().getErr();
    Home home = Home.fromSystem();
    Survey survey = new Survey(home, beside(), links, clock);
    Asking asking = new Asking(err);
    BenchTalk talk = new BenchTalk(asking, err, survey);
    Map<String, Candidate> said = said();
    err.println("Asking every port who is there. What is no instrument gets these bytes too.");
    err.flush();
    List<Answering> heard = survey.of(ports.get(), said.keySet(), rates);
    List<Connection> instruments =
        talk.instruments(heard, said, emulate != null, lineBytes(), byHand);
    Catalogue catalogue = Catalogue.ofHome();
    BenchQuestions ask = new BenchQuestions(talk);
    BenchDescription draft = draft(ask, instruments, catalogue, home);
    Plug plug =
        ask.plug(
            Optional.ofNullable(resistor)
                .or(() -> Optional.ofNullable(emulate).map(e -> CommissioningBench.OHM + "±1%")));
    String who = confirmed(ask, plug, err);
    try (StopKeys keys = new StopKeys();
        Workshop workshop = step.open(draft.id(), who)) { // nothing is energised before
      Optional<Hands> hands = Optional.of(new AskedAtTerminal(who, err));
      Commissioning commissioning = new Commissioning(home, links, ports, clock);
      Commissioned result = commissioning.look(draft, out, plug, trials, hands, keys.stop());
      Optional<Path> old = Optional.empty();
      if (result.stands()) {
        workshop
            .ledger()
            .benches()
            .measured(draft.id(), result.emulated(), "commissioned", result, who);
        old = commissioning.write(result.bench(), out, replace);
      }
      report(result, old, catalogue);
      return result.stands() ? ExitCodes.DONE : ExitCodes.BENCH_FAULT;
    }
  }

  private void report(Commissioned result, Optional<Path> old, Catalogue catalogue) {
    PrintWriter print = spec.commandLine().getOut();
    if (step.json) {
      print.println(
          RecordJson.text(
              BenchWords.json(result, result.stands() ? Optional.of(out) : Optional.empty())));
      return;
    }
    List<Family> fits =
        result.bench().fixture().families().stream().map(catalogue::family).toList();
    BenchWords.print(result, fits, print);
    old.ifPresent(o -> print.println("What stood in " + out + " before is now " + o + "."));
    print.println(
        result.stands()
            ? "Written: " + out + ". Calibrate its channels next: corewright calibrate --help."
            : "Nothing was written. Mend what is WRONG, then begin again.");
  }

  private Map<String, Candidate> said() {
    Map<String, Candidate> said = new LinkedHashMap<>();
    named.forEach(
        (port, words) -> {
          String[] of = words.split(",", 2);
          String role = BenchTalk.part(of[0].strip());
          said.put(port, new Candidate(role, of.length > 1 ? of[1].strip() : ""));
        });
    return said;
  }

  /** An emulated line carries whatever is asked of it. */
  private double lineBytes() {
    return emulate != null && line_Bps <= 0 ? 4e7 : line_Bps;
  }

  private BenchDescription draft(
      BenchQuestions ask, List<Connection> instruments, Catalogue catalogue, Home home) {
    Optional<FixtureDescription> like =
        Optional.ofNullable(emulate)
            .map(f -> Descriptions.bench(home.benches().resolve("emulated-" + f + ".json")))
            .map(BenchDescription::fixture);
    String called =
        ask.called(Optional.ofNullable(id).or(() -> like.map(l -> "practice-" + emulate)));
    List<String> fits =
        ask.families(
            families.isEmpty()
                ? Optional.ofNullable(emulate)
                : Optional.of(String.join(",", families)),
            catalogue);
    return new BenchDescription(
        called,
        revision(called),
        "Bench " + called,
        instruments,
        List.of(),
        new FixtureDescription(
            "fixture of " + called,
            fits,
            ask.discharge_ohm(
                Optional.ofNullable(discharge).or(() -> like.map(l -> "" + l.discharge_ohm()))),
            ask.ceiling_V(
                Optional.ofNullable(ceiling).or(() -> like.map(l -> "" + l.ceiling_V())))),
        10,
        new Origin(out.toString(), "", ""));
  }

  /** One more than that of the file in whose place it is written: no two texts of one revision. */
  private int revision(String called) {
    if (!Files.exists(out)) {
      return 1;
    }
    try {
      BenchDescription before = Descriptions.bench(out);
      return before.id().equals(called) ? before.revision() + 1 : 1;
    } catch (BadFile none) {
      return 1; // what stood there is no bench
    }
  }

  private String confirmed(BenchQuestions ask, Plug plug, PrintWriter err) {
    err.println();
    err.println("Before anything is energised:");
    BenchWords.cautions(plug.usual_W(), plug.most_W(), plug.supply_V(), plug.resistance().value())
        .forEach(line -> err.println("  - " + line));
    return ask.name(Optional.ofNullable(confirmedBy));
  }
}
