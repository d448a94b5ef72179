package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Query;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One instrument that speaks program messages in a dialect. Every command is confirmed by an answer
 * and followed by the error queue, so that none is refused or lost in silence. Not thread-safe.
 *
 * @see "IEEE 488.2-1992, 10.19 *OPC?, and SCPI-1999 volume 2, 21.8 :SYSTem:ERRor"
 */
final class ScpiSession {
  /** More lines than this on the way mean that an instrument does not stop. */
  private static final int MOST_LINES = 1000;

  private final TextLine line;
  private final Dialect dialect;
  private boolean outOfStep;

  ScpiSession(String role, Link link, Dialect dialect, Clock clock) {
    this.line =
        new TextLine(
            role,
            link,
            clock,
            dialect.line().send(),
            dialect.line().receive(),
            Duration.ofNanos((long) (dialect.line().patience_s() * 1e9)));
    this.dialect = dialect;
  }

  /**
   * The whole {@code *IDN?} answer.
   *
   * @throws InstrumentFault if none comes, or it is another instrument's
   */
  String identity() {
    String answer = ask("*IDN?").strip();
    if (!dialect.identifies(answer)) {
      throw line.fault(
          "*IDN?",
          "'"
              + Texts.printable(answer)
              + "' answers, which dialect "
              + dialect.id()
              + " is not for",
          "Plug in the right instrument, or name its dialect in the bench description.");
    }
    return answer;
  }

  /** Carries out an action of the dialect. */
  void act(String action, Map<String, ?> values) {
    for (String message : messages(action, values)) {
      getInStep();
      command(message);
    }
  }

  /**
   * Carries out {@code off}, whatever state the conversation is in. The first attempt may meet what
   * an earlier fault left behind; the second must be clean, and says all of it: what one message
   * could not, the next may.
   */
  void off() {
    List<String> messages = messages("off", Map.of());
    try {
      messages.forEach(this::command);
    } catch (InstrumentFault first) {
      attempt(line::settle, Optional.empty());
      Optional<InstrumentFault> failed = Optional.empty();
      for (String message : messages) {
        failed = attempt(() -> command(message), failed);
      }
      failed.ifPresent(
          told -> {
            told.addSuppressed(first);
            throw told;
          });
    }
  }

  /** What failed before, else what fails now; empty where nothing does. */
  private static Optional<InstrumentFault> attempt(
      Runnable action, Optional<InstrumentFault> before) {
    try {
      action.run();
      return before;
    } catch (InstrumentFault now) {
      return before.or(() -> Optional.of(now));
    }
  }

  /** A number that the instrument measures. */
  Measurement number(String query, Unit unit) {
    Query question = dialect.query(query);
    return measurement(question, ask(question.send()), unit);
  }

  /** A number that the instrument measures; empty if it says that it is beyond its range. */
  Optional<Measurement> numberInRange(String query, Unit unit) {
    Query question = dialect.query(query);
    String answer = ask(question.send());
    return question.beyond(answer)
        ? Optional.empty()
        : Optional.of(measurement(question, answer, unit));
  }

  private Measurement measurement(Query question, String answer, Unit unit) {
    double value =
        question
            .number(answer)
            .orElseThrow(() -> unreadable(question.send(), answer, "a number in " + unit.symbol()));
    return new Measurement(value, question.uncertainty(value), unit);
  }

  /** The line that answers a query, whatever it says. */
  String text(String message) {
    return ask(message);
  }

  /** The next line that comes unasked; empty if none does within {@code within}. */
  Optional<String> unasked(Duration within) {
    return line.next("waiting for a line", within);
  }

  /** The block of at most so many bytes that answers a query. */
  byte[] block(String message, int most) {
    getInStep();
    outOfStep = true; // until the whole block is there
    byte[] block = line.askBlock(message, most);
    outOfStep = false;
    return block;
  }

  /**
   * Begins what is followed by lines that nobody asks for: after its confirmation nothing may be
   * asked, or they would be dropped.
   */
  void begin(String action, Map<String, ?> values) {
    List<String> messages = messages(action, values);
    getInStep();
    for (String message : messages.subList(0, messages.size() - 1)) {
      command(message);
    }
    confirmed(messages.get(messages.size() - 1));
  }

  /** Carries out an action though lines come in between, which are dropped. */
  void actAmidLines(String action) {
    for (String message : messages(action, Map.of())) {
      outOfStep = true;
      line.send(message + dialect.confirmation().append());
      for (int i = 0; !dialect.confirmation().confirms(line.receive(message)); i++) {
        if (i == MOST_LINES) {
          throw line.fault(message, "lines go on and on", "Switch the instrument off and on.");
        }
      }
      getInStep();
    }
  }

  /** Everything that the instrument has refused, oldest first. */
  List<String> refusals() {
    return errors();
  }

  InstrumentFault fault(String message, String found, String remedy) {
    return line.fault(message, found, remedy);
  }

  Dialect dialect() {
    return dialect;
  }

  /** A state that the instrument reports. */
  boolean state(String query) {
    Query question = dialect.query(query);
    String answer = ask(question.send());
    return question
        .state(answer)
        .orElseThrow(
            () -> unreadable(question.send(), answer, "one of " + question.words().keySet()));
  }

  boolean canAsk(String query) {
    return dialect.canAsk(query);
  }

  /** Hands the front panel back if there is a command for it, then the port. Never throws. */
  void close() {
    try {
      if (dialect.can("local")) {
        act("local", Map.of());
      }
    } catch (InstrumentFault alreadyGone) {
      // whatever mattered was confirmed before
    } finally {
      line.close();
    }
  }

  private String ask(String message) {
    getInStep();
    outOfStep = true; // until the answer is there
    String answer = line.ask(message);
    outOfStep = false;
    return answer;
  }

  private void confirmed(String message) {
    String whole = message + dialect.confirmation().append();
    outOfStep = true;
    String answer = line.ask(whole);
    if (!dialect.confirmation().confirms(answer)) {
      throw unreadable(whole, answer, "the confirmation");
    }
  }

  private void command(String message) {
    confirmed(message);
    List<String> errors = errors();
    outOfStep = false;
    if (!errors.isEmpty()) {
      throw line.fault(
          message,
          "refused with " + Texts.printable(String.join(" and ", errors)),
          "Compare the profile's levels with the instrument's range, and the dialect with its"
              + " manual.");
    }
  }

  /** Everything in the error queue, oldest first. */
  private List<String> errors() {
    List<String> errors = new ArrayList<>();
    while (errors.size() < dialect.errors().most()) {
      String answer = line.ask(dialect.errors().send());
      if (dialect.errors().isNone(answer)) {
        break;
      }
      errors.add(answer.strip());
    }
    return errors;
  }

  /** After a fault: a late answer must not be taken for the next one, nor an old error for new. */
  private void getInStep() {
    if (outOfStep) {
      line.settle();
      errors();
      outOfStep = false;
    }
  }

  private List<String> messages(String action, Map<String, ?> values) {
    try {
      return dialect.messages(action, values);
    } catch (IllegalArgumentException outside) {
      throw line.fault(
          action,
          String.valueOf(outside.getMessage()),
          "Change the level in the profile, or use an instrument that reaches it.");
    }
  }

  private InstrumentFault unreadable(String message, String answer, String wanted) {
    outOfStep = true;
    return line.fault(
        message,
        "the answer '" + Texts.printable(answer) + "' is not " + wanted,
        "Check the line rate, and the dialect against the instrument's manual.");
  }
}
