package corewright.station.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Locale;

/**
 * Asks one question at a time. Everything can be answered with one digit and Enter, on a number pad
 * and in gloves; a pipe may hand in the same lines. The end of the input means stop.
 */
final class Asking {
  /** More choices than this are shown on several pages, so that one digit is always enough. */
  private static final int PAGE = 8;

  private final BufferedReader in;
  private final PrintWriter out;
  private boolean ended;

  Asking(PrintWriter out) {
    this(new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())), out);
  }

  Asking(BufferedReader in, PrintWriter out) {
    this.in = in;
    this.out = out;
  }

  /**
   * A question.
   *
   * @param lines what stands above the choices
   * @param choices to pick from; empty where something is typed
   * @param more what {@code ?} shows
   * @param zero what passing it over comes to; empty where it cannot be, nor gone back from
   */
  record Question(List<String> lines, List<String> choices, List<String> more, String zero) {
    Question(List<String> lines, List<String> choices, List<String> more) {
      this(lines, choices, more, "not seen     -  back");
    }
  }

  /** What was answered; {@code text} is the choice or what was typed. */
  record Reply(Kind kind, String text) {}

  /** How a question was met. */
  enum Kind {
    ANSWER,
    NOT_SEEN,
    BACK,
    STOP,
    PHOTO
  }

  /** Asks until there is a reply. */
  Reply ask(Question question) {
    out.println();
    question.lines().forEach(out::println);
    int page = 0;
    while (true) {
      show(question, page);
      String line = line();
      Reply command = command(line);
      if (command.kind() != Kind.ANSWER) {
        return command;
      }
      if (line.equals("?")) {
        question.more().forEach(m -> out.println("     " + m));
      } else if (line.isEmpty()) {
        out.println("     Nothing was typed.");
      } else if (question.choices().isEmpty()) {
        return new Reply(Kind.ANSWER, line);
      } else if (line.equals("9") && question.choices().size() > PAGE) {
        page = (page + 1) % pages(question);
      } else {
        String chosen = chosen(question.choices(), page, line);
        if (!chosen.isEmpty()) {
          return new Reply(Kind.ANSWER, chosen);
        }
        out.println("     '" + line + "' is not among the choices.");
      }
    }
  }

  /** Something that is typed, once; empty where nothing is. */
  String typed(String prompt) {
    out.print(prompt + " ");
    out.flush();
    return line();
  }

  private void show(Question question, int page) {
    List<String> choices = question.choices();
    for (int i = page * PAGE; i < Math.min(choices.size(), (page + 1) * PAGE); i++) {
      out.println("  " + (i - page * PAGE + 1) + "  " + choices.get(i));
    }
    if (choices.size() > PAGE) {
      out.println("  9  more");
    }
    String zero = question.zero().isEmpty() ? "  " : "  0  " + question.zero() + "     ";
    out.println(zero + ".  stop     ?  why");
    out.print("> ");
    out.flush();
  }

  private static Reply command(String line) {
    String word = line.toLowerCase(Locale.ROOT);
    if (word.startsWith("p ") && word.length() > 2) {
      return new Reply(Kind.PHOTO, line.substring(2).strip());
    }
    return switch (word) {
      case "0", "skip" -> new Reply(Kind.NOT_SEEN, "");
      case "-", "back" -> new Reply(Kind.BACK, "");
      case ".", "stop" -> new Reply(Kind.STOP, "");
      default -> new Reply(Kind.ANSWER, line);
    };
  }

  /** The choice that a digit of this page, or its own words, stand for; empty if none. */
  private static String chosen(List<String> choices, int page, String line) {
    for (String choice : choices) {
      if (choice.equalsIgnoreCase(line) && !line.matches("[0-9]")) {
        return choice;
      }
    }
    int digit = line.matches("[1-8]") ? Integer.parseInt(line) : 0;
    int index = page * PAGE + digit - 1;
    return digit > 0 && index < choices.size() ? choices.get(index) : "";
  }

  private static int pages(Question question) {
    return (question.choices().size() + PAGE - 1) / PAGE;
  }

  /** Whether whoever answers has gone: the input is at its end. */
  boolean ended() {
    return ended;
  }

  private String line() {
    try {
      String line = in.readLine();
      if (line == null) {
        ended = true;
        out.println();
        return ".";
      }
      return line.strip();
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }
}
