package corewright.station.cli;

import corewright.bench.identify.Rekey;
import corewright.bench.record.Identification;
import corewright.bench.run.Clock;
import corewright.measures.Chance;
import corewright.station.work.Looking.Standing;
import corewright.station.work.Rekeying;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says which build a unit is, and asks for what would settle it. */
@Command(
    name = "identify",
    mixinStandardHelpOptions = true,
    description = {
      "Asks one question at a time, the one that tells most for its cost first, until nothing would"
          + " change what is done with the unit; then says which build it is, how sure that is and"
          + " what does not fit. Each answer is in the record before the next question comes.",
      "Questions go to stderr and are answered with one digit and Enter, or with lines from a pipe;"
          + " the result goes to stdout. With --answers or --json nothing is asked.",
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright identify U-00003X                  asks and answers",
      "  corewright identify                           receives a new core first",
      "  corewright identify U-00003X --answers core.json --json",
      "  corewright identify --rekey sd48              which units would be another build by the"
          + " key of today",
    })
final class IdentifyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;
  @Mixin private PersonAtUnit person;

  @Option(
      names = "--rekey",
      paramLabel = "FAMILY",
      description =
          "Runs every unit of the family through its key as it is now, and lists those whose build"
              + " changes. Writes nothing without --keep.")
  private @Nullable String rekey;

  @Option(
      names = "--keep",
      description = "With --rekey: writes the changed builds into the record.")
  private boolean keep;

  @Option(names = "--json", description = "JSON on stdout, and nothing else there.")
  private boolean json;

  @Override
  public Integer call() {
    Clock clock = Clock.system();
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (keep && (rekey == null || person.who == null)) {
      throw new ParameterException(
          spec.commandLine(), "--keep goes with --rekey FAMILY and --by WHO.");
    }
    try (Workshop workshop = shop.open("identify", clock)) {
      if (rekey != null) {
        rekey(workshop, rekey, out);
        return ExitCodes.DONE;
      }
      Asking asking = new Asking(err);
      String tag = person.unit(workshop, asking, json);
      if (!json && person.asks()) {
        person
            .somebody(asking)
            .ifPresent(
                who -> {
                  shop.signIn(workshop, who);
                  new IdentifyTalk(workshop.looking(), asking, err, clock::wall).about(tag, who);
                });
      }
      Standing standing = workshop.looking().standing(tag);
      if (json) {
        out.println(RecordJson.text(IdentifyJson.of(standing)));
      } else {
        err.println();
        err.flush();
        IdentifyText.of(standing, new WallTime(workshop.zone())).forEach(out::println);
      }
      out.flush();
      return ExitCodes.DONE;
    }
  }

  private void rekey(Workshop workshop, String family, PrintWriter out) {
    Rekeying rekeying = workshop.rekeying();
    int revision = workshop.catalogue().family(family).revision();
    List<Rekeying.Result> all = rekeying.of(family);
    List<Rekeying.Result> changed = all.stream().filter(r -> r.rekey().variantChanges()).toList();
    if (keep && person.who != null) {
      shop.signIn(workshop, person.who);
      for (Rekeying.Result result : changed) {
        rekeying.keep(result, PersonName.of(person.who, "--by"));
      }
    }
    if (json) {
      out.println(RecordJson.text(IdentifyJson.rekeyed(family, revision, all)));
      out.flush();
      return;
    }
    changed.forEach(r -> out.println(line(r)));
    all.stream()
        .filter(r -> !r.rekey().dropped().isEmpty())
        .forEach(
            r ->
                out.println(
                    r.tag()
                        + "  the key does not know any more: "
                        + String.join(", ", r.rekey().dropped())));
    out.println(
        "Key revision "
            + revision
            + " of "
            + family
            + ": "
            + all.size()
            + (all.size() == 1 ? " unit, " : " units, ")
            + changed.size()
            + " of another build than the record says"
            + (changed.isEmpty()
                ? "."
                : keep ? "; the record says so now." : "; nothing was written."));
    out.flush();
  }

  private static String line(Rekeying.Result result) {
    Rekey rekey = result.rekey();
    return result.tag()
        + "  serial "
        + result.serial()
        + "  "
        + rekey
            .before()
            .map(b -> b.variant() + " (key revision " + b.keyRevision() + ")")
            .orElse("never identified")
        + " → "
        + rekey.now().variant()
        + ", probability "
        + Chance.words(rekey.now().posterior())
        + (rekey.now().band() == Identification.Band.IDENTIFIED ? "" : ", not yet sure");
  }
}
