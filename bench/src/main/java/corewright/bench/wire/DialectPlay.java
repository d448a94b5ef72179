package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Query;
import corewright.fixtures.describe.Samples;
import corewright.fixtures.describe.Vocabulary;
import corewright.fixtures.describe.Vocabulary.Verb;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Says everything that a dialect can say, each argument at both ends of its range, and holds every
 * answer against it. For an instrument that may be told anything: with something connected to it,
 * this switches it on.
 */
public final class DialectPlay {
  /** SCPI-1999 volume 2, 21.8.9: -113 is an undefined header; nobody has a command of this name. */
  private static final String NONSENSE = "CW:NONSENSE";

  /** SCPI-1999 volume 2, 21.8.10: -220 to -224 say that a parameter is not taken. */
  private static final String PARAMETER = "-22";

  private static final Duration PATIENCE = Duration.ofMillis(300);

  private final Dialect dialect;
  private final Clock clock;
  private final Link link;
  private final TextLine line;
  private final List<Said> said = new ArrayList<>();

  private DialectPlay(Dialect dialect, Link link, Clock clock) {
    this.dialect = dialect;
    this.link = link;
    this.clock = clock;
    this.line =
        new TextLine(
            dialect.role(), link, clock, dialect.line().send(), dialect.line().receive(), PATIENCE);
  }

  /**
   * Plays a dialect to its end, or to where nothing can be understood any more.
   *
   * @param link to an instrument that answers within 0.3 s; stays open
   * @param baud line rate, bit/s
   */
  public static List<Said> play(Dialect dialect, Link link, int baud, Clock clock) {
    if (dialect.samples().isPresent()
        && dialect.samples().get().form() instanceof Samples.Registers registers) {
      Connection played =
          new Connection(dialect.role(), link.name(), baud, 1, dialect.id(), "not calibrated");
      return new RegisterPlay(dialect, registers, link, played, clock).play();
    }
    return new DialectPlay(dialect, link, clock).play();
  }

  private List<Said> play() {
    if (!identity() || !refusals()) {
      return said;
    }
    List<Verb> verbs = Vocabulary.verbs(dialect.role());
    act("prepare", Map.of(), "", "");
    errors();
    if (dialect.samples().isPresent()) {
      samples(dialect.samples().get());
    } else {
      verbs.stream().filter(v -> !v.name().matches("prepare|off|local")).forEach(this::verb);
    }
    dialect.queries().forEach(this::query);
    act("off", Map.of(), "", "");
    local();
    return said;
  }

  private boolean identity() {
    String answer;
    try {
      answer = line.ask("*IDN?").strip();
    } catch (InstrumentFault silent) {
      said.add(
          Said.wrong(
              "/line",
              "*IDN?",
              silent.found(),
              "Correct what ends a message and an answer by the instrument's manual; nothing else"
                  + " was said."));
      return false;
    }
    said.add(
        dialect.identifies(answer)
            ? Said.good("/identity", "*IDN?", answer)
            : Said.wrong(
                "/identity",
                "*IDN?",
                "'" + Texts.printable(answer) + "' answers, which it is not for",
                "Correct the pattern, or ask the instrument that it is for."));
    return true;
  }

  /** Without an answer to the query of refusals nothing is known of whatever is said. */
  private boolean refusals() {
    try {
      line.ask(dialect.errors().send());
      return true;
    } catch (InstrumentFault silent) {
      said.add(
          Said.wrong(
              "/errors/send",
              dialect.errors().send(),
              silent.found(),
              "Correct the query by the instrument's manual; nothing else was said."));
      return false;
    }
  }

  /** A mistake on purpose must be found in the queue, or no refusal ever is. */
  private void errors() {
    line.send(NONSENSE);
    List<String> found = queue();
    if (found.isEmpty()) {
      said.add(
          Said.wrong(
              "/errors/none",
              NONSENSE,
              "nobody knows that command, and the error queue counts as empty",
              "Let the pattern match only what the instrument answers without an error."));
    } else if (found.size() >= dialect.errors().most()) {
      said.add(
          Said.wrong(
              "/errors",
              dialect.errors().send(),
              "after " + found.size() + " entries it still says '" + found.get(0) + "'",
              "Correct the query of the error queue, and what it answers when it is empty."));
    } else {
      said.add(Said.good("/errors", NONSENSE, "refused: " + String.join(" and ", found)));
    }
  }

  private void verb(Verb verb) {
    for (DialectValues.Variant v : DialectValues.of(dialect, verb)) {
      act(verb.name(), v.values(), v.argument(), v.at());
    }
  }

  /**
   * @param argument that stands at an end of its range; empty if that says nothing
   */
  private void act(String action, Map<String, ?> values, String argument, String at) {
    List<String> messages = dialect.messages(action, values);
    for (int i = 0; i < messages.size(); i++) {
      String pointer = "/actions/" + action + "/" + i;
      said.add(command(pointer, messages.get(i), argument, at));
    }
  }

  private Said command(String pointer, String message, String argument, String at) {
    String answer = "";
    String silence = "";
    try {
      answer = line.ask(message + dialect.confirmation().append()).strip();
    } catch (InstrumentFault silent) {
      silence = silent.found();
      line.settle();
    }
    List<String> refusals = queue();
    if (!refusals.isEmpty()) {
      boolean range = refusals.get(0).startsWith(PARAMETER) && !argument.isEmpty();
      return Said.wrong(
          range ? "/arguments/" + argument + "/" + at : pointer,
          message,
          "refused with " + String.join(" and ", refusals),
          range ? "Write what the instrument takes." : "Correct it by the instrument's manual.");
    }
    if (!silence.isEmpty()) {
      return Said.wrong(
          "/confirmation/append",
          message + dialect.confirmation().append(),
          silence,
          "Add what makes the instrument answer when it is done, as ;*OPC?.");
    }
    return dialect.confirmation().confirms(answer)
        ? Said.good(pointer, message, "done")
        : Said.wrong(
            "/confirmation/answer",
            message + dialect.confirmation().append(),
            "'" + Texts.printable(answer) + "' confirms nothing",
            "Correct the pattern, or what is appended.");
  }

  private void query(String name, Query query) {
    String pointer = "/queries/" + name;
    String answer;
    try {
      answer = line.ask(query.send()).strip();
    } catch (InstrumentFault silent) {
      line.settle();
      List<String> refusals = queue();
      said.add(
          Said.wrong(
              pointer + "/send",
              query.send(),
              refusals.isEmpty()
                  ? silent.found()
                  : "refused with " + String.join(" and ", refusals),
              "Correct it by the instrument's manual."));
      return;
    }
    boolean word = !query.words().isEmpty();
    boolean read =
        word
            ? query.state(answer).isPresent()
            : query.number(answer).isPresent() || query.beyond(answer);
    said.add(
        read
            ? Said.good(pointer, query.send(), answer)
            : Said.wrong(
                pointer + (word ? "/words" : "/answer"),
                query.send(),
                "'" + Texts.printable(answer) + "' cannot be read",
                "Correct the pattern" + (word ? " and the words." : ".")));
  }

  private void samples(Samples samples) {
    ScpiSession session = new ScpiSession(dialect.role(), link, dialect, clock);
    String pointer = samples.form() instanceof Samples.Block ? "/samples/block" : "/samples/lines";
    String doing = "samples";
    try {
      Scans scans =
          samples.form() instanceof Samples.Block block
              ? new BlockScans(session, samples, block)
              : new LineScans(session, samples, (Samples.Lines) samples.form(), clock);
      for (int rate_Hz : List.of((int) Math.ceil(samples.most_Hz() / 2), (int) samples.most_Hz())) {
        doing = "samples at " + rate_Hz + " Hz";
        scans.start(rate_Hz, 1);
        said.add(Said.good(pointer, doing, Samplings.words(scans)));
        scans.stop();
      }
    } catch (InstrumentFault fault) {
      line.settle();
      said.add(Said.wrong(pointer, doing, fault.found(), fault.remedy()));
    }
  }

  private void local() {
    if (dialect.can("local")) {
      act("local", Map.of(), "", "");
    } else {
      said.add(Said.good("/actions", "", "no way back to the front panel is said"));
    }
  }

  private List<String> queue() {
    List<String> found = new ArrayList<>();
    try {
      while (found.size() < dialect.errors().most()) {
        String answer = line.ask(dialect.errors().send()).strip();
        if (dialect.errors().isNone(answer)) {
          break;
        }
        found.add(Texts.printable(answer));
      }
    } catch (InstrumentFault silent) {
      line.settle();
      found.add("no answer to " + dialect.errors().send());
    }
    return found;
  }
}
