package corewright.station.cli;

import corewright.bench.port.PortInfo;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.station.cli.Asking.Kind;
import corewright.station.cli.Asking.Question;
import corewright.station.cli.Asking.Reply;
import corewright.station.work.Refused;
import corewright.station.work.commission.Answering;
import corewright.station.work.commission.Answering.Candidate;
import corewright.station.work.commission.Survey;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds out which port is what: from what answered, and else from a person, port by port. */
final class BenchTalk {
  /** What each part of a bench is called when somebody is asked. */
  private static final Map<String, String> PARTS = new LinkedHashMap<>();

  static {
    PARTS.put("load", "the load");
    PARTS.put("source", "the DC source");
    PARTS.put("digitizer", "what samples: the fixture's board, a logger or a scope");
    PARTS.put("switch", "the discharge switch");
    PARTS.put("interlock", "the reader of cover switch and stop button");
    PARTS.put("relay", "the box with the feed relay");
    PARTS.put("thermometer", "the thermometer on the unit's case");
    PARTS.put("meter", "the meter");
  }

  private static final String NONE = "none";
  private static final String NOTHING = "nothing of this bench";

  private final Asking asking;
  private final PrintWriter err;
  private final Survey survey;
  private final Map<String, Connection> found = new LinkedHashMap<>();

  BenchTalk(Asking asking, PrintWriter err, Survey survey) {
    this.asking = asking;
    this.err = err;
    this.survey = survey;
  }

  /**
   * The instruments of the bench.
   *
   * @param heard every port
   * @param said what somebody said beforehand: role by path, as {@code load}, or {@code none}
   * @param byPath whether ports are called by their path, as those that are emulated
   * @param line_Bps what the digitizer's line carries; 0: as its rate says
   * @param byHand the load is set by hand
   * @throws Refused if a part that no bench goes without is missing
   */
  List<Connection> instruments(
      List<Answering> heard,
      Map<String, Candidate> said,
      boolean byPath,
      double line_Bps,
      boolean byHand) {
    for (Answering port : heard) {
      part(port, said).ifPresent(p -> take(p, port, byPath, line_Bps));
    }
    boolean plain =
        Optional.ofNullable(found.get("digitizer")).filter(c -> !c.dialect().isEmpty()).isPresent();
    List<String> needed = new ArrayList<>(List.of("source", "digitizer", "switch", "interlock"));
    if (plain) {
      needed.add("relay");
    }
    require(needed);
    if (byHand || (!found.containsKey("load") && isSetByHand())) {
      found.put(
          "load",
          new Connection("load", "set by hand", 115_200, 1, Connection.BY_HAND, "not calibrated"));
    }
    require(List.of("load"));
    return List.copyOf(found.values());
  }

  /**
   * A part that somebody has named, or {@code none}.
   *
   * @throws Refused if no bench has such a part
   */
  static String part(String named) {
    if (!PARTS.containsKey(named) && !named.equals(NONE)) {
      throw new Refused(
          "'" + named + "' is no part of a bench",
          "There are: " + String.join(", ", PARTS.keySet()) + "; none leaves the port out.");
    }
    return named;
  }

  private void require(List<String> roles) {
    List<String> missing = roles.stream().filter(r -> !found.containsKey(r)).toList();
    if (!missing.isEmpty()) {
      throw new Refused(
          "No port answers as " + String.join(", ", missing.stream().map(PARTS::get).toList()),
          "Switch it on, look at its cable and line rate (--baud), and write its dialect where"
              + " nobody has described it yet; then begin again. What knows no *IDN?, as a module"
              + " of registers, is named: --port PATH=ROLE,DIALECT.");
    }
  }

  private Optional<Candidate> part(Answering port, Map<String, Candidate> said) {
    PortInfo info = port.heard().port();
    Optional<Candidate> named = Optional.ofNullable(said.get(info.path()));
    if (named.isPresent()) {
      Optional<Candidate> taken = named.filter(c -> !c.role().equals(NONE));
      taken.ifPresent(
          c -> err.println("  " + port.words() + ". Named as " + PARTS.get(c.role()) + "."));
      return taken.map(c -> withDialect(c, port));
    }
    if (port.heard().identity().isEmpty()) {
      err.println("  " + port.words() + ". It is left out.");
      return Optional.empty();
    }
    List<Candidate> may = port.may().stream().filter(c -> !found.containsKey(c.role())).toList();
    if (may.size() == 1 && port.may().size() == 1) {
      err.println("  " + port.words() + ". It is " + PARTS.get(may.get(0).role()) + ".");
      return Optional.of(may.get(0));
    }
    return asked(port);
  }

  private Optional<Candidate> asked(Answering port) {
    List<String> free =
        PARTS.entrySet().stream()
            .filter(p -> !found.containsKey(p.getKey()))
            .map(Map.Entry::getValue)
            .toList();
    List<String> choices = new ArrayList<>(free);
    choices.add(NOTHING);
    String chosen =
        answer(
            List.of(port.words() + ".", "What is it?"),
            choices,
            "The bench's file must say which instrument does what. 0 leaves the port out.",
            "--port " + port.heard().port().path() + "=ROLE",
            "leave it out");
    return PARTS.entrySet().stream()
        .filter(p -> p.getValue().equals(chosen))
        .findFirst()
        .map(p -> withDialect(new Candidate(p.getKey(), ""), port));
  }

  /** The dialect in which it is spoken to: of those that know its answer, else of its role. */
  private Candidate withDialect(Candidate of, Answering port) {
    if (!of.dialect().isEmpty() || port.heard().board()) {
      return of;
    }
    List<String> known =
        port.may().stream()
            .filter(c -> c.role().equals(of.role()))
            .map(Candidate::dialect)
            .toList();
    List<String> all = known.isEmpty() ? survey.dialects(of.role()) : known;
    if (all.isEmpty()) {
      throw new Refused(
          "No dialect is there for " + PARTS.getOrDefault(of.role(), of.role()),
          "Write one from its manual and lay it beside the bench's file; fixtures/README.md says"
              + " how.");
    }
    String chosen =
        all.size() == 1
            ? all.get(0)
            : answer(
                List.of(port.words() + ".", "In which of these dialects is it spoken to?"),
                all,
                "A dialect is a file that says which messages an instrument understands.",
                "--port " + port.heard().port().path() + "=" + of.role() + ",DIALECT");
    return new Candidate(of.role(), chosen);
  }

  private void take(Candidate part, Answering port, boolean byPath, double line_Bps) {
    if (found.containsKey(part.role())) {
      throw new Refused(
          "Two ports are named as " + PARTS.getOrDefault(part.role(), part.role()),
          "Leave one of them out: --port " + port.heard().port().path() + "=none.");
    }
    boolean samples = part.role().equals("digitizer");
    String path = port.heard().port().path();
    String name = byPath ? path : port.name();
    if (!byPath && port.isOnlyAPath()) {
      err.println("    Nothing but its port tells it from the others: leave it in its socket.");
    }
    double carries = samples && line_Bps > 0 ? line_Bps : port.baud() / 10.0; // 8N1: ten bits
    found.put(
        part.role(),
        new Connection(part.role(), name, port.baud(), carries, part.dialect(), "not calibrated"));
  }

  private boolean isSetByHand() {
    String yes = "yes, somebody sets it";
    return answer(
            List.of("No load answers. Is it set by hand, as a rheostat or lamps?"),
            List.of(yes, "no, it should answer"),
            "The station then asks for each current and waits until it is measured.",
            "--load-by-hand")
        .equals(yes);
  }

  private String answer(List<String> lines, List<String> choices, String why, String option) {
    return answer(lines, choices, why, option, "");
  }

  /**
   * What somebody chose or typed; empty where the question was passed over.
   *
   * @param zero what passing it over comes to; empty: then it is asked until it is answered
   * @throws Refused if nobody answers
   */
  private String answer(
      List<String> lines, List<String> choices, String why, String option, String zero) {
    while (true) {
      Reply reply = asking.ask(new Question(lines, choices, List.of(why), zero));
      if (reply.kind() == Kind.STOP) {
        throw new Refused(
            "It was stopped at a question; nothing was energised and nothing written",
            "Answer it, or give " + option + ".");
      }
      if (reply.kind() == Kind.ANSWER) {
        return reply.text();
      }
      if (reply.kind() == Kind.NOT_SEEN && !zero.isEmpty()) {
        return "";
      }
      err.println(
          "     This must be known. To change what was answered before, stop and begin again.");
    }
  }

  /**
   * Something typed: what was given beforehand, else what a person types, until it can be read.
   *
   * @param read refuses what it cannot read
   * @throws Refused if nobody answers, or what was given cannot be read
   */
  <T> T typed(
      Optional<String> given,
      String question,
      String why,
      String option,
      Function<String, T> read) {
    if (given.isPresent()) {
      return read.apply(given.get());
    }
    while (true) {
      String typed = answer(List.of(question), List.of(), why, option);
      try {
        return read.apply(typed);
      } catch (Refused unread) {
        err.println("     " + unread.getMessage() + ". " + unread.remedy());
      }
    }
  }
}
