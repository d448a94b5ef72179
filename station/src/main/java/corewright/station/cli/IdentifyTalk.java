package corewright.station.cli;

import corewright.bench.identify.Consequence;
import corewright.bench.identify.Identifier;
import corewright.measures.Chance;
import corewright.measures.Figures;
import corewright.profiles.Cue;
import corewright.profiles.Variant.Serviceable;
import corewright.station.cli.Asking.Kind;
import corewright.station.cli.Asking.Question;
import corewright.station.cli.Asking.Reply;
import corewright.station.work.Given;
import corewright.station.work.Looking;
import corewright.station.work.Looking.Standing;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Leads a person through the identification of one unit, the question that tells most first. */
final class IdentifyTalk {
  private final Looking looking;
  private final Asking asking;
  private final PrintWriter out;
  private final Supplier<Instant> now;
  private final Deque<Cue> asked = new ArrayDeque<>();
  private Optional<Path> photo = Optional.empty();

  IdentifyTalk(Looking looking, Asking asking, PrintWriter out, Supplier<Instant> now) {
    this.looking = looking;
    this.asking = asking;
    this.out = out;
    this.now = now;
  }

  /** Asks until nothing would change what is done with the unit, or until it is stopped. */
  void about(String tag, String who) {
    Optional<Cue> cue = looking.standing(tag).next();
    while (cue.isPresent()) {
      Standing standing = looking.standing(tag);
      Reply reply = asking.ask(question(standing, cue.get()));
      switch (reply.kind()) {
        case STOP -> {
          return;
        }
        case BACK -> {
          if (asked.isEmpty()) {
            out.println("     This is the first question.");
          } else {
            cue = Optional.of(asked.pop());
          }
        }
        case PHOTO -> take(Path.of(reply.text()));
        case NOT_SEEN -> cue = answered(tag, cue.get(), Identifier.NOT_SEEN, who);
        case ANSWER -> {
          if (agreed(cue.get(), reply.text())) {
            cue = answered(tag, cue.get(), reply.text(), who);
          }
        }
      }
    }
  }

  private Optional<Cue> answered(String tag, Cue cue, String said, String who) {
    looking.save(tag, cue.id(), Given.of(Optional.of(cue), said, photo), who);
    photo = Optional.empty();
    asked.push(cue);
    return looking.standing(tag).next();
  }

  /** A date or number that cannot be is a finding or a slip: only the person can say which. */
  private boolean agreed(Cue cue, String said) {
    if (!isTyped(cue)) {
      return true;
    }
    String doubt = Identifier.doubt(cue, said, now.get());
    if (doubt.isEmpty()) {
      return true;
    }
    out.println("     " + said + " would count for nothing: " + doubt + ".");
    Reply sure =
        asking.ask(
            new Question(
                List.of("Is " + said + " what stands there?"),
                List.of("yes, keep it as it was read", "no, ask me again"),
                List.of("A date that cannot be says something about the label: it is kept.")));
    return sure.kind() == Kind.ANSWER && sure.text().startsWith("yes");
  }

  private void take(Path file) {
    boolean there = Files.isRegularFile(file);
    photo = there ? Optional.of(file) : photo;
    out.println(
        there ? "     It goes with the next answer." : "     There is no file " + file + ".");
  }

  private static Question question(Standing standing, Cue cue) {
    List<String> lines = new ArrayList<>();
    lines.add(IdentifyText.line(standing.identification()));
    lines.add(cue.question());
    lines.add("     " + cue.look());
    if (isTyped(cue)) {
      lines.add(
          "     Type "
              + (cue.scale().orElseThrow().isDate()
                  ? "the code as it stands."
                  : "the number in " + cue.scale().orElseThrow().unit() + "."));
    }
    return new Question(lines, isTyped(cue) ? List.of() : cue.answers(), why(standing, cue));
  }

  /** What the bench reads is chosen: nobody types what an instrument knows better. */
  private static boolean isTyped(Cue cue) {
    return cue.scale().isPresent() && cue.travelsWith() != Cue.TravelsWith.BENCH;
  }

  private static List<String> why(Standing standing, Cue cue) {
    List<String> lines = new ArrayList<>();
    for (Consequence c : standing.consequences(cue)) {
      lines.add(
          String.format(
              "%s (chance %s): most probable is then %s, %s, with %s.",
              c.answer(),
              Chance.words(c.chance()),
              c.variant(),
              words(c.serviceable()),
              Chance.words(c.posterior())));
    }
    lines.add(
        String.format(
            "It tells about the %s, is right %s times in 100, and takes about %s s.",
            cue.travelsWith().name().toLowerCase(Locale.ROOT),
            Figures.number(100 * cue.reliability(), 0),
            Figures.number(cue.cost_s(), 0)));
    lines.add("A photo for this answer: p, a blank, and the name of the file.");
    return lines;
  }

  static String words(Serviceable serviceable) {
    return switch (serviceable) {
      case YES -> "which can be rebuilt";
      case CONDITIONAL -> "which can be rebuilt in part";
      case NO -> "which cannot be rebuilt";
    };
  }
}
