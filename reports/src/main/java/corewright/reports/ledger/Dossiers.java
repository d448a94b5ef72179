package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Decision;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.Past;
import corewright.bench.record.RunRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What is known about a unit on one visit, told from its events in the order they happened. */
final class Dossiers {
  private final Handle handle;
  private int visit;
  private Optional<Core> core = Optional.empty();
  private final Map<String, CueAnswer> answers = new LinkedHashMap<>();
  private Optional<Identification> identification = Optional.empty();
  private final Map<String, RunRecord> runs = new LinkedHashMap<>();
  private Optional<Decision> decision = Optional.empty();
  private final List<String> rebuild = new ArrayList<>();
  private final List<Past.Relabelled> relabelled = new ArrayList<>();
  private int opened;

  private Dossiers(Handle handle) {
    this.handle = handle;
  }

  /**
   * @param upTo the visit wanted, or any larger number for the latest
   * @return empty if there is no such unit
   */
  static Optional<Dossier> tell(Handle handle, String tag, int upTo) {
    return tell(handle, Events.of(handle, tag), upTo);
  }

  /**
   * The same from the events of one unit, or from the first of them.
   *
   * @param upTo the visit wanted, or any larger number for the latest
   */
  static Optional<Dossier> tell(Handle handle, List<Event> events, int upTo) {
    Dossiers told = new Dossiers(handle);
    for (Event event : events) {
      if (EventKind.beginsAVisit(event.kind()) && told.visit == upTo) {
        break;
      }
      told.add(event);
    }
    return told.soFar();
  }

  /** Every visit, from the events of one unit, the first first. */
  static List<Dossier> visits(Handle handle, List<Event> events) {
    Dossiers told = new Dossiers(handle);
    List<Dossier> visits = new ArrayList<>();
    for (Event event : events) {
      if (EventKind.beginsAVisit(event.kind())) {
        told.soFar().ifPresent(visits::add);
      }
      told.add(event);
    }
    told.soFar().ifPresent(visits::add);
    return visits;
  }

  private Optional<Dossier> soFar() {
    return core.map(
        c ->
            new Dossier(
                c,
                visit,
                List.copyOf(answers.values()),
                identification,
                List.copyOf(runs.values()),
                decision,
                rebuild,
                new Past(opened, relabelled)));
  }

  private void add(Event event) {
    JsonNode body = Json.read(event.body());
    switch (EventKind.of(event.kind())) {
      case RECEIVED, BROUGHT -> begin(body);
      case ANSWERED -> body.get("answers").forEach(this::answer);
      case IDENTIFIED -> identification = Optional.of(Json.record(body, Identification.class));
      case RUN_ENDED -> {
        Contents.restore(handle, body);
        RunRecord run = Json.record(body, RunRecord.class);
        runs.put(run.id(), run);
      }
      case DECIDED -> decision = Optional.of(Json.record(body, Decision.class));
      case REBUILT -> {
        opened++;
        body.get("lines").forEach(line -> rebuild.add(line.asText()));
      }
      case OPENED -> opened++;
      case RELABELLED -> relabel(event, body);
      case WORKED -> {
        body.get("did").forEach(line -> rebuild.add(line.asText()));
        body.get("fitted").forEach(part -> rebuild.add(fitted(part)));
      }
      case SEALED -> rebuild.add("Seal " + body.get("number").asText() + " fitted");
      default -> {
        // the run's end tells all of it; documents are made from dossiers, not told in them;
        // an amendment stands beside its run and never in its place
      }
    }
  }

  private static String fitted(JsonNode part) {
    return part.get("place").asText()
        + ": "
        + part.get("part").asText()
        + ", lot "
        + part.get("lot").asText();
  }

  private void begin(JsonNode body) {
    ObjectNode named = body.deepCopy();
    named.remove("books"); // what was written down elsewhere is not what is known here
    named.put("customer", Customers.name(handle, body.get("customer").asText()));
    core = Optional.of(Json.record(named, Core.class));
    visit++;
    answers.clear();
    identification = Optional.empty();
    runs.clear();
    decision = Optional.empty();
    rebuild.clear();
  }

  private void relabel(Event event, JsonNode body) {
    Relabelling to = Json.record(body, Relabelling.class);
    core = core.map(to::on);
    relabelled.add(to.told(event));
  }

  private void answer(JsonNode node) {
    CueAnswer answer = Json.record(node, CueAnswer.class);
    answers.put(answer.cue(), answer);
  }
}
