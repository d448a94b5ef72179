package corewright.reports.document.template;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and checks a template: a first line that names the document, sections, paragraphs. */
public final class TemplateReader {
  private static final Pattern FIRST = Pattern.compile("template\\s+(\\S+)");
  private static final Pattern HEADING = Pattern.compile("\\[([a-z]+)(?:\\s+([A-Z]+))?]");
  private static final Set<String> WHEN =
      Set.of(
          "PASS",
          "MARGINAL",
          "FAIL",
          "UNSAFE",
          "VOID",
          "INCOMPLETE",
          "REBUILD",
          "REPLACE",
          "RETURN",
          "PENDING");

  /** What no document of a shop may say. Common practice, no source. */
  private static final Map<String, String> NEVER =
      Map.of(
          "accredited", "Nobody but the accrediting body may say so",
          "lifetime", "Say for how many months",
          "defective", "Say what was measured",
          "abused", "Say what was seen",
          "misused", "Say what was seen",
          "no problem found", "Say what was tested and that it met its limits",
          "tested good", "Say what was tested",
          "guaranteed", "Say what is covered and until when",
          "as good as new", "Say what was replaced",
          "oem specification", "The shop does not have it: say which limits were met");

  private final String file;
  private final List<Mistake> mistakes = new ArrayList<>();
  private final List<Template.Section> sections = new ArrayList<>();

  private TemplateReader(String file) {
    this.file = file;
  }

  /** Whether a text begins as a template does. */
  public static boolean isOne(String text) {
    return said(text.lines().toList()).filter(l -> FIRST.matcher(l).matches()).isPresent();
  }

  /**
   * @param file as mistakes name it
   * @throws BadFile with every mistake in it
   */
  public static Template read(String file, String text) {
    return new TemplateReader(file).all(text.lines().toList());
  }

  private static Optional<String> said(List<String> lines) {
    return lines.stream()
        .map(String::strip)
        .filter(l -> !l.isEmpty() && !l.startsWith("#"))
        .findFirst();
  }

  private Template all(List<String> lines) {
    Matcher first = FIRST.matcher(said(lines).orElse(""));
    Optional<TemplateKind> kind =
        first.matches() ? TemplateKind.of(first.group(1)) : Optional.empty();
    if (kind.isEmpty()) {
      mistake(
          1,
          "template",
          "the first line does not name a document",
          "Write: template " + String.join(", or template ", TemplateKind.ids()));
      throw new BadFile(mistakes);
    }
    sections(lines);
    sections.forEach(section -> check(kind.get(), section));
    order(kind.get());
    room(kind.get());
    if (!mistakes.isEmpty()) {
      throw new BadFile(mistakes);
    }
    return new Template(kind.get(), sections);
  }

  private void sections(List<String> lines) {
    boolean begun = false;
    int at = 0;
    Matcher heading = HEADING.matcher("");
    List<String> paragraphs = new ArrayList<>();
    boolean open = false;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.startsWith("#")) {
        continue;
      }
      if (!begun) {
        begun = !line.isEmpty();
      } else if (line.startsWith("[")) {
        end(at, heading, paragraphs);
        paragraphs = new ArrayList<>();
        at = i + 1;
        heading = HEADING.matcher(line);
        open = false;
        if (!heading.matches()) {
          mistake(at, line, "this is no section", "Write it as [cautions] or [text REPLACE]");
          at = 0;
        }
      } else if (line.isEmpty()) {
        open = false;
      } else if (at == 0 && mistakes.isEmpty()) {
        mistake(i + 1, "template", "this stands in no section", "Put it under one, as [text]");
      } else {
        int last = paragraphs.size() - 1;
        if (open) {
          paragraphs.set(last, paragraphs.get(last) + " " + line);
        } else {
          paragraphs.add(line);
        }
        open = true;
        words(i + 1, line);
      }
    }
    end(at, heading, paragraphs);
  }

  private void end(int line, Matcher heading, List<String> paragraphs) {
    if (line > 0) {
      String when = heading.group(2) == null ? "" : heading.group(2);
      sections.add(new Template.Section(line, heading.group(1), when, paragraphs));
    }
  }

  /** Placeholders that there are, and nothing that no document may say. */
  private void words(int line, String text) {
    Matcher name = Placeholders.NAME.matcher(text);
    while (name.find()) {
      if (!Placeholders.NAMES.contains(name.group(1))) {
        mistake(
            line,
            name.group(),
            "there is no such placeholder",
            "There are " + String.join(", ", Placeholders.NAMES));
      }
    }
    if (Placeholders.NAME.matcher(text).replaceAll("").matches(".*[{}].*")) {
      mistake(line, "{", "a brace stands alone", "Braces hold a name, as {customer}");
    }
    String plain = text.toLowerCase(Locale.ROOT);
    NEVER.forEach(
        (words, instead) -> {
          if (plain.contains(words)) {
            mistake(line, words, "no document of a shop may say this", instead);
          }
        });
  }

  private void check(TemplateKind kind, Template.Section section) {
    boolean own = section.name().equals(TemplateKind.TEXT);
    String where = "[" + section.name() + "]";
    Optional<Own> may = Optional.ofNullable(kind.sections().get(section.name()));
    if (!own && may.isEmpty()) {
      mistake(
          section.line(),
          where,
          "a " + kind.id() + " has no such section",
          "It has text, " + String.join(", ", kind.sections().keySet()));
    } else if (own && section.paragraphs().isEmpty()) {
      mistake(section.line(), where, "it says nothing", "Write below it what it shall say");
    } else if (!own && may.get() == Own.NOTHING && !section.paragraphs().isEmpty()) {
      mistake(
          section.line(),
          where,
          "nothing may be written here: it holds what was measured",
          "Put it under [text]");
    }
    if (!section.when().isEmpty() && !(own && WHEN.contains(section.when()))) {
      mistake(
          section.line(),
          where,
          own ? section.when() + " is neither a verdict nor a disposition" : "it is always there",
          own
              ? "There are " + String.join(", ", WHEN.stream().sorted().toList())
              : "Write " + where);
    }
  }

  /** Nothing required is missing, twice or in another place; nothing stands outside. */
  private void order(TemplateKind kind) {
    List<String> names = sections.stream().map(Template.Section::name).toList();
    int before = -1;
    for (String name : kind.sections().keySet()) {
      int at = names.indexOf(name);
      if (at < 0) {
        if (kind.required().contains(name)) {
          mistake(
              1,
              "[" + name + "]",
              "this section is missing and may never be left out",
              "Write it back");
        }
        continue;
      }
      if (names.lastIndexOf(name) != at) {
        mistake(
            line(names.lastIndexOf(name)),
            "[" + name + "]",
            "it stands here twice",
            "Take one out");
      }
      if (at < before) {
        mistake(
            line(at),
            "[" + name + "]",
            "it stands too early",
            "Their order is " + String.join(", ", kind.sections().keySet()));
      }
      before = Math.max(before, at);
    }
    int foot = names.indexOf("foot");
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equals(TemplateKind.TEXT) && (i < 2 || (foot >= 0 && i > foot))) {
        mistake(
            line(i), "[text]", "it stands outside the page", "Put it between [unit] and [foot]");
      }
    }
  }

  private int line(int section) {
    return sections.get(section).line();
  }

  private void room(TemplateKind kind) {
    int used =
        sections.stream().flatMap(s -> s.paragraphs().stream()).mapToInt(String::length).sum();
    if (used > kind.room()) {
      mistake(
          1,
          "template",
          "the shop's own words have " + used + " characters, and there is room for " + kind.room(),
          "Shorten them");
    }
  }

  private void mistake(int line, String where, String message, String remedy) {
    mistakes.add(new Mistake(file, line, where, message, remedy));
  }
}
