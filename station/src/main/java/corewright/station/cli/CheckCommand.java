package corewright.station.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.run.Clock;
import corewright.bench.wire.Said;
import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.station.training.DialectTrial;
import corewright.station.training.DialectTrial.Trial;
import corewright.station.work.Checking;
import corewright.station.work.Checking.Good;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a file that a person edited. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Says whether a family, a profile, a bench description, a dialect, shop.json or a template of"
          + " a document may be used, and names"
          + " every mistake in it with its line and what to do. Which of them it is, is seen from"
          + " what stands in it.",
      "With --bench it also says whether that bench can run the profile: whether the digitizer's"
          + " line carries its samples, the fixture fits, and the instruments reach its levels; and"
          + " it names each step that the bench cannot do, with what becomes of it.",
      "With --play a dialect is played to the emulated instrument of its role: everything it can"
          + " say, each argument at both ends of its range, an error on purpose, the way back to"
          + " the front panel. What was answered is printed line by line.",
      "Leaves with 0 if the file is good, with 1 if it has mistakes.",
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright check profiles/families/sd48/sd48-arrival.json",
      "  corewright check my-profile.json --bench fixtures/benches/emulated-sd48.json",
      "  corewright check my-bench.json --json",
      "  corewright check my-load.json --play",
    })
final class CheckCommand implements Callable<Integer> {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "What to check.")
  private Path file;

  @Option(
      names = "--bench",
      paramLabel = "FILE",
      description = "The bench that shall run the profile.")
  private @Nullable Path bench;

  @Option(
      names = "--play",
      description = "Play the dialect to the emulated instrument of its role.")
  private boolean play;

  @Option(names = "--json", description = "JSON on stdout, and nothing else there.")
  private boolean json;

  @Override
  public Integer call() {
    Checking checking = new Checking(Home.fromSystem());
    try {
      Good good = bench == null ? checking.check(file) : checking.check(file, bench);
      return play ? played(good) : good(good, List.of());
    } catch (BadFile bad) {
      return bad(bad, List.of());
    }
  }

  private int played(Good good) {
    if (!good.kind().equals(Checking.DIALECT)) {
      throw new Refused(
          file + " is a " + good.kind() + ", and only a dialect is played",
          "Leave --play out, or name a dialect.");
    }
    Trial trial = DialectTrial.of(file, Clock.system());
    if (!json) {
      trial.said().forEach(said -> print(PlayedWords.line(said)));
    }
    return trial.mistakes().isEmpty()
        ? good(good, trial.said())
        : bad(new BadFile(trial.mistakes()), trial.said());
  }

  private int good(Good good, List<Said> said) {
    print(json ? text(good, said) : words(good));
    return ExitCodes.DONE;
  }

  private int bad(BadFile bad, List<Said> said) {
    if (json) {
      print(text(bad, said));
    } else {
      PrintWriter err = spec.commandLine().getErr();
      bad.mistakes().forEach(err::println);
      int count = bad.mistakes().size();
      err.println(
          (count == 1 ? "1 mistake" : count + " mistakes")
              + (said.isEmpty()
                  ? "; nothing was run."
                  : ", as the emulated instrument has it: whether this fits another, only that can"
                      + " tell."));
    }
    return ExitCodes.REFUSED;
  }

  private void print(String text) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(text);
    out.flush();
  }

  private static String words(Good good) {
    StringBuilder words =
        new StringBuilder()
            .append(good.file())
            .append(" is good: ")
            .append(good.kind())
            .append(' ')
            .append(good.id())
            .append(", revision ")
            .append(good.revision())
            .append(", \"")
            .append(good.title())
            .append('"');
    good.facts().forEach(fact -> words.append(System.lineSeparator()).append("  ").append(fact));
    good.cautions()
        .forEach(c -> words.append(System.lineSeparator()).append("  caution: ").append(c));
    return words.toString();
  }

  private static String text(Good good, List<Said> said) {
    ObjectNode json = NODES.objectNode();
    json.put("good", true);
    json.put("file", good.file().toString());
    json.put("kind", good.kind());
    json.put("id", good.id());
    json.put("revision", good.revision());
    json.put("title", good.title());
    ArrayNode facts = json.putArray("facts");
    good.facts().forEach(facts::add);
    json.set("cautions", list(good.cautions()));
    PlayedWords.put(json, said);
    return text(json);
  }

  private static String text(BadFile bad, List<Said> said) {
    ObjectNode json = NODES.objectNode();
    json.put("good", false);
    json.set("mistakes", list(bad.mistakes()));
    PlayedWords.put(json, said);
    return text(json);
  }

  private static ArrayNode list(List<Mistake> mistakes) {
    ArrayNode list = NODES.arrayNode();
    for (Mistake mistake : mistakes) {
      list.addObject()
          .put("file", mistake.file())
          .put("line", mistake.line())
          .put("where", mistake.where())
          .put("message", mistake.message())
          .put("suggestion", mistake.suggestion());
    }
    return list;
  }

  private static String text(ObjectNode json) {
    try {
      return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(json);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree of texts can always be written", impossible);
    }
  }
}
