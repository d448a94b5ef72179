package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.judge.BenchEvent;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.station.work.BenchCharts;
import corewright.station.work.ShiftCheck;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says which reference units are due on a bench, and whether the bench is in order. */
@Command(
    name = "shift",
    mixinStandardHelpOptions = true,
    description = {
      "Says which reference units a bench must be proved with before the shift's first core,"
          + " whether it is locked and why, and which results are suspect.",
      "Each is tested with 'run' like any other unit; what it shows is judged at once. A bench on"
          + " which one reads otherwise is locked for all but its reference units."
    },
    footer = {
      "",
      "Examples:",
      "  corewright shift --bench bench-1.json",
      "  corewright shift --bench bench-1.json --charts charts",
      "  corewright shift --bench bench-1.json --study",
      "  corewright shift --bench bench-1.json --lock 'sense lead found loose' --by 'M. Reyes'",
      "  corewright shift --bench bench-1.json --unlock 'the unit was dropped' --results-stand"
          + " --by 'H. Oduya'"
    })
final class ShiftCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--bench", required = true, paramLabel = "FILE", description = "The bench.")
  private Path bench = Path.of("");

  @Option(
      names = "--charts",
      paramLabel = "FOLDER",
      description = "Draw the charts of every reference unit there, as SVG.")
  private @Nullable Path charts;

  @Option(
      names = "--study",
      description =
          "Say how much of what the bench reads is the measuring: needs two reference units that"
              + " two people have each run twice.")
  private boolean study;

  @Option(names = "--lock", paramLabel = "WHY", description = "Lock the bench, for this reason.")
  private @Nullable String lock;

  @Option(
      names = "--unlock",
      paramLabel = "WHY",
      description = "Owners only: take the lock off without a good check, for this reason.")
  private @Nullable String unlock;

  @Option(
      names = "--results-stand",
      description = "With --unlock: what the lock had put in doubt counts again.")
  private boolean resultsStand;

  @Option(
      names = "--emulated",
      description =
          "Say what the runs on an emulated bench of this id showed: they never count for a real"
              + " one.")
  private boolean emulated;

  @Override
  public Integer call() {
    BenchDescription described = Descriptions.bench(bench);
    try (Workshop workshop = step.open(described.id())) {
      if (lock != null) {
        workshop.ledger().benches().lock(described.id(), lock, step.by);
      }
      if (unlock != null) {
        workshop.ledger().benches().unlock(described.id(), unlock, resultsStand, step.by);
      }
      ShiftCheck shift = workshop.shiftCheck(emulated);
      ShiftCheck.State state = shift.state(described, workshop.today(), workshop.zone());
      List<String> condition =
          Stream.concat(
                  workshop.benchCondition(emulated).noiseAgainst(described).stream(),
                  workshop.benchCondition(emulated).contactsAgainst(described).stream())
              .toList();
      PrintWriter out = spec.commandLine().getOut();
      if (step.json) {
        ObjectNode json = json(described, state, condition);
        if (study) {
          json.set("studies", StudyWords.json(shift.studies(described)));
        }
        out.println(RecordJson.text(json));
      } else {
        print(described, state, condition, new WallTime(workshop.zone()), out);
        if (!emulated
            && workshop.ledger().benches().events(described.id(), true).stream()
                .anyMatch(e -> !e.run().isEmpty())) {
          out.println(
              "Runs on an emulated bench of this id do not count here; --emulated says what they"
                  + " showed.");
        }
      }
      if (study && !step.json) {
        StudyWords.print(shift.studies(described), out);
      }
      Optional.ofNullable(charts)
          .ifPresent(
              folder ->
                  BenchCharts.draw(shift, described, folder)
                      .forEach(file -> spec.commandLine().getErr().println("Chart  " + file)));
      return state.locked().isEmpty() && condition.isEmpty()
          ? ExitCodes.DONE
          : ExitCodes.BENCH_FAULT;
    }
  }

  private void print(
      BenchDescription described,
      ShiftCheck.State state,
      List<String> condition,
      WallTime time,
      PrintWriter out) {
    if (emulated) {
      out.println("EMULATED: nothing of this bench is real, and it certifies nothing.");
    }
    out.println(
        "Bench "
            + described.id()
            + (state.locked().isEmpty()
                ? " is not locked."
                : " is LOCKED. Nothing but its reference units may be run on it."));
    state.locked().forEach(why -> out.println("  " + why));
    if (state.units().isEmpty()) {
      out.println("It is proved with no reference unit: name some in its file, referenceUnits.");
    }
    for (ShiftCheck.Unit unit : state.units()) {
      out.println(
          unit.unit().tag()
              + "  "
              + unit.unit().kind().words()
              + ", "
              + unit.last().map(e -> last(unit, e, time)).orElse("never tested on this bench")
              + (unit.due() ? "; DUE" : ""));
      if (unit.due()) {
        out.println(
            "  corewright run --bench "
                + bench
                + " --profile "
                + unit.profile()
                + " --tag "
                + unit.unit().tag());
      }
    }
    condition.forEach(against -> out.println("STOPPED  " + against));
    described
        .contacts()
        .ifPresent(c -> out.println("Contacts of the fixture: " + c.checked() + "."));
    state
        .suspects()
        .forEach(s -> out.println("SUSPECT  " + s.tag() + "  run " + s.run() + ": " + s.why()));
  }

  private static String last(ShiftCheck.Unit unit, BenchEvent event, WallTime time) {
    return (unit.good() ? "in order " : "NOT in order ") + time.words(Instant.parse(event.when()));
  }

  private ObjectNode json(
      BenchDescription described, ShiftCheck.State state, List<String> condition) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("bench", described.id());
    json.put("emulated", emulated);
    json.put("locked", !state.locked().isEmpty());
    state.locked().forEach(json.putArray("because")::add);
    condition.forEach(json.putArray("stopped")::add);
    var units = json.putArray("referenceUnits");
    for (ShiftCheck.Unit unit : state.units()) {
      units
          .addObject()
          .put("tag", unit.unit().tag())
          .put("kind", unit.unit().kind().words())
          .put("profile", unit.profile())
          .put("due", unit.due())
          .put("inOrder", unit.good())
          .put("last", unit.last().map(BenchEvent::when).orElse(null));
    }
    var suspects = json.putArray("suspect");
    state
        .suspects()
        .forEach(
            s -> suspects.addObject().put("tag", s.tag()).put("run", s.run()).put("why", s.why()));
    return json;
  }
}
