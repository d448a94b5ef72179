package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.commission.NoiseFloor;
import corewright.bench.commission.Plug;
import corewright.bench.hand.Hands;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.station.work.BenchCondition;
import corewright.station.work.BenchRevision;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import corewright.station.work.commission.Conditioning;
import corewright.station.work.commission.Conditioning.Found;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Measures the noise of a bench, and what its fixture's contacts have become. */
@Command(
    name = "condition",
    mixinStandardHelpOptions = true,
    description = {
      "Measures the noise of a bench with everything off: more than its file states counts as"
          + " uncertainty from then on, three times as much stops the bench.",
      "With --link also what the fixture's contacts put between supply and output: a thick wire in"
          + " the place of a unit, and a known current through it. Above the limit in the bench's"
          + " file nothing is run; once they are overdue no certificate is written."
    },
    footer = {
      "",
      "Examples:",
      "  corewright condition --bench bench-1.json --by 'M. Reyes'",
      "  corewright condition --bench bench-1.json --link 0.001±0.001 --amperes 5 --due 2027-02-28"
          + " --confirmed-by 'M. Reyes'"
    })
final class ConditionCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--bench", required = true, paramLabel = "FILE", description = "The bench.")
  private Path bench = Path.of("");

  @Option(
      names = "--link",
      paramLabel = "Ω±U",
      description = "A link is in the place of a unit, of this resistance (k = 2), 20 mΩ at most.")
  private @Nullable String link;

  @Option(
      names = "--amperes",
      defaultValue = "5",
      description = "What is sent through the contacts, A (${DEFAULT-VALUE}).")
  private double amperes;

  @Option(
      names = "--due",
      paramLabel = "DAY",
      description = "With --link: when the contacts are due again.")
  private @Nullable LocalDate due;

  @Option(
      names = "--confirmed-by",
      paramLabel = "NAME",
      description =
          "With --link: who has read the cautions, signs in and is kept. Without it they are asked"
              + " for.")
  private @Nullable String confirmedBy;

  @Override
  public Integer call() {
    BenchDescription described = Descriptions.bench(bench);
    Optional<Plug> plug = Optional.ofNullable(link).map(this::plug);
    LocalDate again = due(plug.isPresent());
    PrintWriter err = spec.commandLine().getErr();
    Clock clock = Clock.system();
    SerialLinks serial = new SerialLinks(clock);
    String who = plug.map(p -> confirmed(p, err)).orElse(step.by);
    try (StopKeys keys = new StopKeys();
        Workshop workshop = step.open(described.id(), who)) { // nothing is energised before
      FutureDay.require(again, workshop.today());
      Optional<Hands> hands = Optional.of(new AskedAtTerminal(who, err));
      Found found =
          new Conditioning(Home.fromSystem(), new SocketLinks(clock, serial), serial::list, clock)
              .look(described, bench, plug, hands, keys.stop());
      BenchCondition condition = workshop.benchCondition(found.emulated());
      condition.noise(described.id(), found.noise(), who);
      found.contacts().ifPresent(c -> keep(condition, described, c, again, found.emulated(), who));
      List<String> against = new ArrayList<>(condition.noiseAgainst(described));
      found.contacts().flatMap(c -> BenchCondition.against(c, described)).ifPresent(against::add);
      report(found, described, against);
      return against.isEmpty() ? ExitCodes.DONE : ExitCodes.BENCH_FAULT;
    }
  }

  private void keep(
      BenchCondition condition,
      BenchDescription described,
      Measurement found,
      LocalDate again,
      boolean emulated,
      String who) {
    condition.contacts(described.id(), found, again, who);
    described
        .contacts()
        .flatMap(before -> ContactsText.of(before, found, again, emulated))
        .ifPresent(
            text ->
                BenchRevision.write(
                    bench, described, tree -> tree.withObject("/contacts").put("checked", text)));
  }

  private LocalDate due(boolean contacts) {
    if (due == null && contacts) {
      throw new Refused(
          "When the contacts are due again is not said", "Give --due, as --due 2027-02-28.");
    }
    if (!contacts && (due != null || confirmedBy != null)) {
      throw new Refused(
          (due == null ? "--confirmed-by" : "--due") + " goes with --link: noise alone has neither",
          "Put a link in the place of a unit and give --link, or leave it out.");
    }
    return due == null ? LocalDate.MAX : due;
  }

  private Plug plug(String typed) {
    try {
      return Plug.link(OhmText.read(typed), amperes);
    } catch (IllegalArgumentException unfit) {
      throw new Refused(
          "'" + typed + "' with " + amperes + " A will not do: " + unfit.getMessage(),
          "Take a short thick wire, and 5 A.");
    }
  }

  private String confirmed(Plug plug, PrintWriter err) {
    err.println("Before anything is energised:");
    List.of(
            "Take every unit off the fixture first. What comes off may still be charged: it burns"
                + " and startles until its discharge has been measured.",
            "Put a thick wire from supply + to output + where the unit would be, and supply −"
                + " straight to output −. "
                + Figures.number(plug.load_A(), 1)
                + " A go through it and into the load, from 5 V.",
            "A worn contact gets hot. Keep the cover closed, and the emergency stop in reach.",
            "Only trained people may work on energised equipment, under the codes that hold where"
                + " you are; they govern.")
        .forEach(line -> err.println("  - " + line));
    Optional<String> name = Optional.ofNullable(confirmedBy);
    return PersonName.of(
        name.orElseGet(
            () -> new Asking(err).typed("Type your name to confirm, or press Enter to leave:")),
        "--confirmed-by");
  }

  private void report(Found found, BenchDescription described, List<String> against) {
    PrintWriter out = spec.commandLine().getOut();
    if (step.json) {
      out.println(RecordJson.text(json(found, described, against)));
      return;
    }
    if (found.emulated()) {
      out.println("EMULATED: nothing of this bench is real.");
    }
    out.println("Noise of bench " + described.id() + " with everything off, rms (k = 2):");
    for (NoiseFloor floor : found.noise()) {
      out.println("  " + floor.channel() + "  " + floor.words() + ", " + stated(floor, described));
    }
    found
        .contacts()
        .ifPresent(
            c ->
                out.println(
                    "Contacts from the input's sense leads to the output's: "
                        + Figures.withU(c)
                        + " (k = 2)"
                        + described
                            .contacts()
                            .map(l -> ", limit " + Figures.like(l.limit_ohm(), c))
                            .orElse("; no limit is stated: add contacts with limit_ohm to the file")
                        + "."));
    against.forEach(a -> out.println("STOPPED  " + a));
    if (!against.isEmpty()) {
      out.println("No unit is run on it until it is measured again and found good.");
    }
  }

  private static String stated(NoiseFloor floor, BenchDescription described) {
    return described.channels().stream()
        .filter(c -> c.channel().equals(floor.channel()))
        .flatMap(c -> c.noise().stream())
        .findFirst()
        .map(
            n ->
                Figures.number(1000 * n, 2)
                    + " m"
                    + floor.unit()
                    + " stated"
                    + (floor.rms() - 2 * floor.u() > n ? "; the rest counts as uncertainty" : ""))
        .orElse("none stated: add \"noise\" to the channel in the file");
  }

  private static ObjectNode json(Found found, BenchDescription described, List<String> against) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("bench", described.id());
    json.put("emulated", found.emulated());
    for (NoiseFloor floor : found.noise()) {
      json.withArray("noise")
          .addObject()
          .put("channel", floor.channel())
          .put("unit", floor.unit())
          .put("rms", floor.rms())
          .put("u", floor.u());
    }
    found
        .contacts()
        .ifPresent(c -> json.putObject("contacts").put("ohm", c.value()).put("u", c.u()));
    against.forEach(json.withArray("stopped")::add);
    return json;
  }
}
