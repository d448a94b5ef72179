package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.reports.document.genuine.Genuine;
import corewright.reports.ledger.Verification;
import corewright.station.work.CheckingPaper;
import corewright.station.work.Folders;
import corewright.station.work.ShopFile;
import corewright.station.work.Verifying;
import corewright.station.work.Verifying.OnDisk;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether the record, or a document made from it, is as it was written. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = {
      "Reads every event of a ledger and says whether one was changed, is missing or stands in"
          + " another place. Changes nothing.",
      "Only a key and heads that were kept outside the ledger prove that nobody wrote all of it"
          + " anew or cut off its end.",
      "Of a certificate it says whether every byte is as it was signed, without network and without"
          + " the shop's record; with --shop also whether the ledger still says the same."
    },
    footer = {
      "",
      "Examples:",
      "  corewright verify corewright-shop",
      "  corewright verify corewright-shop --files",
      "  corewright verify certificate.pdf --key signing.pub",
      "  corewright verify copy.db --key signing.pub --head bench-1:1042:9f86d081884c7d65"
    })
final class VerifyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "LEDGER|PDF",
      description =
          "The ledger's file, the shop's folder, or the URL of a shared ledger; or a certificate.")
  private String ledger = "";

  @Option(
      names = "--shop",
      paramLabel = "FOLDER",
      description = "For a certificate: the shop's record, to compare it with.")
  @Nullable
  private Path shop;

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = "A public key of the shop, from elsewhere; may be given again.")
  private List<Path> keys = new ArrayList<>();

  @Option(
      names = "--head",
      paramLabel = "HEAD",
      description =
          "What a document, export or backup names as the record's end; may be given again.")
  private List<String> heads = new ArrayList<>();

  @Option(
      names = "--files",
      description =
          "Of a shop's folder: also whether every capture, photograph, file and document there is"
              + " the one that the record names. Reads all of them.")
  private boolean files;

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    if (ledger.toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      return document();
    }
    Verification found = Verifying.verify(ledger, keys, heads);
    Optional<OnDisk> disk = files ? Optional.of(Verifying.files(ledger)) : Optional.empty();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      ObjectNode report = json(found);
      disk.ifPresent(d -> FilesWords.json(d, report.putObject("files")));
      out.println(RecordJson.text(report));
    } else {
      words(found).forEach(out::println);
      disk.ifPresent(d -> FilesWords.lines(d).forEach(out::println));
    }
    return found.whole() && disk.map(OnDisk::whole).orElse(true)
        ? ExitCodes.DONE
        : ExitCodes.BROKEN_RECORD;
  }

  private int document() {
    Optional<Folders> at = Optional.ofNullable(shop).map(Folders::at);
    Optional<Path> key = keys.stream().findFirst().or(() -> at.map(CheckingPaper::keyOf));
    Genuine found = CheckingPaper.check(Path.of(ledger), key);
    List<String> differences = List.of();
    if (at.isPresent() && found.record().isPresent()) {
      try (Workshop workshop =
          Workshop.open(
              Catalogue.ofHome(),
              at.get().root(),
              ShopFile.in(at.get().root()),
              "verify",
              Clock.system())) {
        differences = CheckingPaper.against(workshop, found.record().get());
      }
    }
    GenuineWords words = new GenuineWords(Path.of(ledger), found, key.isPresent(), differences);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(RecordJson.text(words.json()));
    } else {
      words.lines().forEach(out::println);
    }
    return words.good() ? ExitCodes.DONE : ExitCodes.BROKEN_RECORD;
  }

  private ObjectNode json(Verification found) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("ledger", ledger);
    json.put("whole", found.whole());
    json.put("events", found.events());
    json.put("signed", found.signed());
    found.keys().forEach(json.putArray("keys")::add);
    json.put("keysFromOutside", !keys.isEmpty());
    found.heads().forEach(head -> json.withArray("heads").add(head.toString()));
    json.put("first", found.broken().stream().findFirst().orElse(null));
    found.broken().forEach(json.putArray("broken")::add);
    return json;
  }

  private List<String> words(Verification found) {
    List<String> lines = new ArrayList<>();
    lines.add(
        found.whole()
            ? "Whole: every event is as it was written."
            : "NOT AS IT WAS WRITTEN, first at: " + found.broken().get(0));
    found.broken().stream().skip(1).forEach(more -> lines.add("  also: " + more));
    lines.add(found.events() + " events, " + found.signed() + " with a good signature.");
    found.keys().forEach(key -> lines.add("Signed with key " + key));
    found.heads().forEach(head -> lines.add("Head " + head));
    if (keys.isEmpty()) {
      lines.add("The keys are those that the ledger names. Give --key to be sure whose they are.");
    }
    if (!found.whole()) {
      lines.add("Keep this file as it is, and compare it with the last backup.");
    }
    return lines;
  }
}
