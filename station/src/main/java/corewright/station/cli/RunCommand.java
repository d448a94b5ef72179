package corewright.station.cli;

import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.record.HandReading;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.profiles.Family;
import corewright.profiles.Profile;
import corewright.station.work.Dialects;
import corewright.station.work.Home;
import corewright.station.work.KeptWire;
import corewright.station.work.Outcome;
import corewright.station.work.PortList;
import corewright.station.work.RunIds;
import corewright.station.work.SecondPerson;
import corewright.station.work.ShiftCheck;
import corewright.station.work.Testing;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tests a unit on a real bench, the whole way to verdict, disposition, record and document. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    description =
        "Runs a load-hold profile on a bench: shows the cautions, takes the unit through the"
            + " profile, then judges, decides, keeps the record and writes the document.",
    footer = {
      "",
      "Examples:",
      "  corewright run --bench bench-1.json --profile sd48-arrival --answers core.json",
      "  corewright run --bench bench-1.json --profile sd48-ship --tag U-000012",
      "  corewright run --bench bench-2.json --profile ie110-ship --tag U-000013 --second 'T."
          + " Okafor' --second-password-file okafor.txt",
      "",
      "Ctrl-C ends the run in the safe state. It is no emergency stop: that one is on the bench."
    })
final class RunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;
  @Mixin private UnitOptions unit;

  @Option(names = "--bench", required = true, paramLabel = "FILE", description = "The bench.")
  private Path bench = Path.of("");

  @Option(names = "--profile", required = true, paramLabel = "ID", description = "What to run.")
  private String profile = "";

  @Option(
      names = "--confirmed-by",
      paramLabel = "NAME",
      description =
          "Who has read the cautions and answers for the run. Without it they are shown and asked"
              + " for.")
  private @Nullable String confirmedBy;

  @Option(
      names = "--second",
      paramLabel = "NAME",
      description =
          "Who else is there. Demanded above 60 V DC; in a shop with accounts with the password of"
              + " their own.")
  private @Nullable String second;

  @Option(
      names = "--second-password-file",
      paramLabel = "FILE",
      description = "First line: the second person's password. Or set COREWRIGHT_SECOND_PASSWORD.")
  private @Nullable Path secondPasswordFile;

  @Option(
      names = "--hand",
      paramLabel = "STEP=VALUE±U,INSTRUMENT",
      description =
          "What this bench cannot do and you have read elsewhere, as"
              + " key-off=0.0012±0.0001,multimeter 4. U is of k = 2, the unit that of the step."
              + " Again for each step.")
  private List<String> hand = List.of();

  @Option(
      names = "--wire-log",
      description =
          "Keep every byte on every wire with its time, beside the capture: for whoever has to find"
              + " out what went wrong.")
  private boolean wireLog;

  @Option(names = "--json", description = "Report as JSON on stdout.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Clock clock = Clock.system();
    BenchDescription description = Descriptions.bench(bench);
    try (StopKeys keys = new StopKeys();
        Workshop workshop = shop.open(description.id(), clock);
        KeptWire wire =
            KeptWire.begin(
                wireLog,
                workshop.folders(),
                clock,
                begun -> err.println("Wire log    " + begun + ", though no run came of it."))) {
      Profile chosen = workshop.catalogue().profile(profile);
      Family family = workshop.catalogue().family(unit.family(workshop));
      workshop.testing().mustFit(chosen, family.id());
      HandOption.read(hand, chosen, ""); // a slip is no reason to receive a core
      String operator = new Confirming(err).ask(family, Optional.ofNullable(confirmedBy));
      shop.signIn(workshop, operator);
      String tag = unit.tag(workshop);
      Optional<SecondPerson> other =
          family.needsSecondPerson()
              ? second(workshop, tag + " on " + description.id())
              : Optional.empty();
      Map<String, HandReading> byHand = HandOption.read(hand, chosen, operator);
      BenchOpener opener =
          new BenchOpener(
              wire.over(new SocketLinks(clock, new SerialLinks(clock))),
              new Dialects(Home.fromSystem(), bench),
              wire.clock(),
              Optional.of(new AskedAtTerminal(operator, err)));
      RunRecord run;
      try (BenchInstruments instruments = opener.open(new PortList(clock).bind(description))) {
        left(workshop.recovery().settle(instruments, description.id()), err);
        run =
            workshop
                .testing(wire.clock())
                .run(
                    new Testing.Request(tag, profile, description, operator, true, other, byHand),
                    instruments,
                    new RunIds(description.id(), new SecureRandom()),
                    new RunProgress(err, Terminal.here(), tag),
                    keys.stop());
      }
      wire.keepFor(run).ifPresent(kept -> err.println("Wire log    " + kept));
      wire.flaw().ifPresent(err::println);
      Integer code = report(workshop.conclude(run, operator));
      ShiftCheck shift = workshop.shiftCheck(run.source() == Source.EMULATED);
      if (description.reference(tag).isPresent()) {
        ProvedWords.of(shift.state(description, workshop.today(), workshop.zone()), run)
            .ifPresent(err::println);
      }
      return code;
    }
  }

  /** Asked before anything is opened: a wrong password is no reason to touch a bench. */
  private Optional<SecondPerson> second(Workshop workshop, String of) {
    return Optional.ofNullable(second)
        .filter(name -> !name.isBlank())
        .map(
            name ->
                workshop
                    .proving()
                    .second(
                        PersonName.of(name, "--second"),
                        Password.given(
                            Optional.ofNullable(secondPasswordFile), "COREWRIGHT_SECOND_PASSWORD"),
                        of));
  }

  private Integer report(Outcome outcome) {
    OutcomeReport.print(outcome, json, spec.commandLine().getOut());
    return switch (outcome.run().end().kind()) {
      case BENCH_FAULT -> ExitCodes.BENCH_FAULT;
      case STOPPED -> ExitCodes.REFUSED;
      default -> ExitCodes.DONE;
    };
  }

  private static void left(List<RunRecord> closed, PrintWriter err) {
    closed.forEach(
        run ->
            err.println(
                "Run "
                    + run.id()
                    + " of "
                    + run.tag()
                    + " had been left open. The safe state was commanded first. "
                    + run.end().saw()));
  }
}
