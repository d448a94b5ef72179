package corewright.station.cli;

import corewright.bench.identify.Identifier;
import corewright.bench.inspect.Checklist;
import corewright.bench.inspect.Symptom.Kind;
import corewright.bench.inspect.Symptoms;
import corewright.profiles.CheckItem;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.station.cli.Asking.Question;
import corewright.station.cli.Asking.Reply;
import corewright.station.work.Given;
import corewright.station.work.Looking;
import corewright.station.work.Looking.Standing;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Leads a person through the checklist: from outside to inside, only what is worth asking. */
final class InspectTalk {
  private final Looking looking;
  private final Asking asking;
  private final PrintWriter out;
  private final Set<String> asked = new HashSet<>();
  private final Deque<Line> before = new ArrayDeque<>();
  private Optional<Path> photo = Optional.empty();

  InspectTalk(Looking looking, Asking asking, PrintWriter out) {
    this.looking = looking;
    this.asking = asking;
    this.out = out;
  }

  /** One thing to ask; {@code cue} where it is a number or a date. */
  private record Line(String id, Question question, Optional<Cue> cue) {}

  /** Asks until everything was asked, or until it is stopped. */
  void about(String tag, String who) {
    Optional<Line> line = next(looking.standing(tag));
    while (line.isPresent()) {
      Line now = line.get();
      Reply reply = asking.ask(now.question());
      switch (reply.kind()) {
        case STOP -> {
          return;
        }
        case BACK -> {
          if (before.isEmpty()) {
            out.println("     This is the first question.");
          } else {
            line = Optional.of(before.pop());
          }
        }
        case PHOTO -> take(Path.of(reply.text()));
        case NOT_SEEN, ANSWER -> {
          String said = reply.kind() == Asking.Kind.ANSWER ? reply.text() : Identifier.NOT_SEEN;
          looking.save(tag, now.id(), Given.of(now.cue(), said, photo), who);
          photo = Optional.empty();
          asked.add(now.id());
          before.push(now);
          line = next(looking.standing(tag));
        }
      }
    }
  }

  private Optional<Line> next(Standing standing) {
    return lines(standing).stream().filter(l -> !asked.contains(l.id())).findFirst();
  }

  /** What is not answered yet, in the order in which it is looked at. */
  private static List<Line> lines(Standing standing) {
    Family family = standing.family();
    Map<String, String> answers = new HashMap<>();
    standing.dossier().answers().forEach(a -> answers.put(a.cue(), a.words()));
    List<Line> outside = new ArrayList<>();
    boolean codes = answers.keySet().stream().anyMatch(id -> id.startsWith(Symptoms.CODE));
    for (Kind kind : Kind.values()) {
      if (!answers.containsKey(kind.id()) && !(codes && kind == Kind.CODES)) {
        outside.add(line(kind));
      }
    }
    List<Line> inside = new ArrayList<>();
    for (CheckItem item : Checklist.asked(family, Checklist.worst(family, answers))) {
      List<Line> where = item.group().equals("inside") ? inside : outside;
      String answer = answers.getOrDefault(item.id(), "");
      if (!item.answers().contains(answer)) {
        where.add(line(item));
      } else if (item.perPin() && !answer.equals(item.unremarkable())) {
        family.pins().stream()
            .filter(p -> !answers.containsKey(item.id() + Checklist.PIN + p.pin()))
            .map(p -> pin(item, p))
            .forEach(where::add);
      }
    }
    family.cues().stream()
        .filter(c -> c.scale().isPresent() && c.travelsWith() == Cue.TravelsWith.BOARD)
        .filter(c -> !answers.containsKey(c.id()))
        .forEach(
            c -> {
              boolean date = c.scale().orElseThrow().isDate();
              if (!date) {
                outside.add(line(c));
              } else if ("opened".equals(answers.get("inside"))) {
                inside.add(line(c));
              }
            });
    outside.addAll(inside);
    return outside;
  }

  private static Line line(Kind kind) {
    return new Line(
        kind.id(),
        new Question(
            List.of("complaint: " + kind.question()),
            kind.answers(),
            List.of(
                "It points at what to look at first. The bench stands above it.",
                "Codes one by one go into an answers file, under symptoms.")),
        Optional.empty());
  }

  private static Line line(CheckItem item) {
    return new Line(
        item.id(),
        new Question(List.of(item.group() + ": " + item.question()), item.answers(), why(item)),
        Optional.empty());
  }

  private static Line pin(CheckItem item, Family.Pin pin) {
    return new Line(
        item.id() + Checklist.PIN + pin.pin(),
        new Question(
            List.of("Pin " + pin.pin() + ", " + pin.carries() + "?"), item.answers(), why(item)),
        Optional.empty());
  }

  private static Line line(Cue cue) {
    String what =
        cue.scale().orElseThrow().isDate()
            ? "Type the code as it stands."
            : "Type the number in " + cue.scale().orElseThrow().unit() + ".";
    return new Line(
        cue.id(),
        new Question(
            List.of(cue.question(), "     " + cue.look() + " " + what),
            List.of(),
            List.of("It is held against what a complete unit of the build weighs, or was made.")),
        Optional.of(cue));
  }

  private static List<String> why(CheckItem item) {
    List<String> lines = new ArrayList<>();
    lines.add(item.meaning());
    item.answers().stream()
        .filter(item.grades()::containsKey)
        .forEach(a -> lines.add("'" + a + "' makes it grade " + item.grades().get(a) + "."));
    item.blocks().forEach(answer -> lines.add("With '" + answer + "' nothing is energised."));
    lines.add("A photo for this answer: p, a blank, and the name of the file.");
    return lines;
  }

  private void take(Path file) {
    boolean there = Files.isRegularFile(file);
    photo = there ? Optional.of(file) : photo;
    out.println(
        there ? "     It goes with the next answer." : "     There is no file " + file + ".");
  }
}
