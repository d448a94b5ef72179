package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.judge.BenchEvent;
import corewright.bench.judge.BenchEvent.What;
import corewright.bench.judge.BenchStanding;
import corewright.bench.record.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jdbi.v3.core.Handle;

/**
 * What was written down about the benches: checks with reference units, locks, calibrations, and
 * what they were measured to be. Whether a bench is locked, and which results are in doubt, is told
 * from these events alone. What was seen on an emulated bench says nothing of a real one that has
 * the same id, nor the other way round; what a person says, a lock or a calibration, holds of both.
 */
public final class Benches {
  private static final String EMULATED = "emulated";

  private final Database database;
  private final Appender appender;

  Benches(Database database, Appender appender) {
    this.database = database;
    this.appender = appender;
  }

  /**
   * What the run of a reference unit said of its bench.
   *
   * @param kind of the unit, as {@code known good}
   * @param against what speaks against the bench, each a sentence; empty: it is in order
   */
  public record Check(String tag, String kind, String run, List<String> against) {
    public Check {
      against = List.copyOf(against);
    }
  }

  /** A result that is in doubt. */
  public record Suspect(String run, String tag, String why) {}

  /** Keeps a check; one that speaks against a bench that is not locked locks it with that. */
  public void checked(String bench, Check check, String who) {
    database.write(
        handle -> {
          boolean emulated = emulatedRuns(handle).contains(check.run());
          boolean free = standing(handle, bench, emulated).locked().isEmpty();
          Event kept = append(handle, who, EventKind.BENCH_CHECKED, bench, Json.tree(check));
          return check.against().isEmpty() || !free
              ? kept
              : append(
                  handle,
                  who,
                  EventKind.BENCH_LOCKED,
                  bench,
                  Json.tree(Map.of("tag", check.tag(), "because", check.against())));
        });
  }

  /** Locks a bench by hand. */
  public void lock(String bench, String why, String who) {
    database.write(
        handle ->
            append(
                handle,
                who,
                EventKind.BENCH_LOCKED,
                bench,
                Json.tree(Map.of("tag", "", "because", List.of(said(why, "locked"))))));
  }

  /**
   * Takes the lock off without a good check. Owners only.
   *
   * @param stand whether the results that this lock has put in doubt count again
   * @throws LedgerFault if there is no reason, or nothing is locked, or who is no owner
   */
  public void unlock(String bench, String why, boolean stand, String who) {
    database.write(
        handle -> {
          if (standing(handle, bench, false).locked().isEmpty()
              && standing(handle, bench, true).locked().isEmpty()) {
            throw new LedgerFault("Bench " + bench + " is not locked", "Nothing is to be done");
          }
          return append(
              handle,
              who,
              EventKind.BENCH_UNLOCKED,
              bench,
              Json.tree(Map.of("because", said(why, "unlocked"), "resultsStand", stand)));
        });
  }

  /**
   * Keeps a calibration.
   *
   * @param calibration everything that is known of it, kept as it is
   * @param out empty: the channel read as the bench stated; else one sentence
   */
  public void calibrated(
      String bench, String channel, Object calibration, Optional<String> out, String who) {
    database.write(
        handle -> {
          ObjectNode body = (ObjectNode) Json.tree(Map.of("channel", channel));
          body.set("calibration", Json.tree(calibration));
          body.put("out", out.orElse(""));
          return append(handle, who, EventKind.CALIBRATED, bench, body);
        });
  }

  /**
   * What a bench was measured to be.
   *
   * @param what as {@code commissioned}, {@code noise}
   * @param found as it was kept
   */
  public record Measured(String what, JsonNode found, String who, String when) {}

  /**
   * Keeps what a bench was measured to be; it locks nothing.
   *
   * @param emulated whether the bench was; it is never told of a real one
   * @param found everything that is known of it, kept as it is
   */
  public void measured(String bench, boolean emulated, String what, Object found, String who) {
    database.write(
        handle -> {
          ObjectNode body = (ObjectNode) Json.tree(Map.of("what", what));
          body.put(EMULATED, emulated);
          body.set("found", Json.tree(found));
          return append(handle, who, EventKind.BENCH_MEASURED, bench, body);
        });
  }

  /**
   * What a bench was measured to be, by what was measured: the last that says of which it is, and
   * any later one that does not, from before the event carried the word. What is not known may
   * speak against either bench, and puts neither's own last measurement out of force.
   */
  public Map<String, List<Measured>> measured(String bench, boolean emulated) {
    Map<String, List<Measured>> last = new HashMap<>();
    database
        .read(
            handle ->
                handle
                    .select(
                        "SELECT * FROM event WHERE tag = ? AND kind = ? ORDER BY position",
                        subject(bench),
                        EventKind.BENCH_MEASURED.id())
                    .map((row, context) -> Events.event(row))
                    .list())
        .forEach(
            event -> {
              JsonNode says = Json.read(event.body()).path(EMULATED);
              Measured found = measured(event);
              if (says.isMissingNode()) {
                last.computeIfAbsent(found.what(), w -> new ArrayList<>()).add(found);
              } else if (says.asBoolean() == emulated) {
                last.put(found.what(), new ArrayList<>(List.of(found)));
              }
            });
    return last;
  }

  private static Measured measured(Event event) {
    JsonNode body = Json.read(event.body());
    return new Measured(body.path("what").asText(), body.path("found"), event.who(), event.at());
  }

  /** How the bench stands. */
  public BenchStanding standing(String bench, boolean emulated) {
    return database.read(handle -> standing(handle, bench, emulated));
  }

  /** What was written down about a bench, the oldest first. */
  public List<BenchEvent> events(String bench, boolean emulated) {
    return database.read(handle -> events(handle, bench, emulated));
  }

  /** Why the result of a run is in doubt; empty if it is not. */
  public Optional<String> suspect(String bench, String tag, String run) {
    return database.read(
        handle -> {
          boolean emulated = emulatedRuns(handle).contains(run);
          BenchStanding standing = standing(handle, bench, emulated);
          return standing.doubts().isEmpty()
              ? Optional.empty()
              : handle
                  .select(
                      "SELECT position, body FROM event WHERE tag = ? AND kind = ?",
                      Tags.read(tag),
                      EventKind.RUN_ENDED.id())
                  .map(
                      (row, context) ->
                          new Ended(row.getLong("position"), Json.read(row.getString("body"))))
                  .list()
                  .stream()
                  .filter(e -> e.body().path("id").asText().equals(run))
                  .findFirst()
                  .flatMap(e -> standing.suspect(e.position()));
        });
  }

  /** Every result of a bench that is in doubt, the checks themselves left out. */
  public List<Suspect> suspects(String bench, boolean emulated) {
    return database.read(
        handle -> {
          BenchStanding standing = standing(handle, bench, emulated);
          Set<String> emulatedRuns = emulatedRuns(handle);
          List<Suspect> found = new ArrayList<>();
          Set<String> checks =
              events(handle, bench, emulated).stream()
                  .map(BenchEvent::run)
                  .collect(Collectors.toSet());
          for (BenchStanding.Doubt doubt : standing.doubts()) {
            handle
                .select(
                    "SELECT tag, body FROM event WHERE position > ? AND position < ? AND kind = ?"
                        + " ORDER BY position",
                    doubt.after(),
                    doubt.until(),
                    EventKind.RUN_ENDED.id())
                .map((row, c) -> suspect(row.getString("tag"), row.getString("body"), bench, doubt))
                .list()
                .forEach(
                    s ->
                        s.filter(one -> isNew(found, one) && !checks.contains(one.run()))
                            .filter(one -> emulatedRuns.contains(one.run()) == emulated)
                            .ifPresent(found::add));
          }
          return List.copyOf(found);
        });
  }

  private record Ended(long position, JsonNode body) {}

  private static boolean isNew(List<Suspect> found, Suspect one) {
    return found.stream().noneMatch(f -> f.run().equals(one.run()));
  }

  private static Optional<Suspect> suspect(
      String tag, String text, String bench, BenchStanding.Doubt doubt) {
    JsonNode body = Json.read(text);
    return body.path("bench").asText().equals(bench)
        ? Optional.of(new Suspect(body.path("id").asText(), tag, doubt.why()))
        : Optional.empty();
  }

  private Event append(Handle handle, String who, EventKind kind, String bench, JsonNode body) {
    return appender.append(handle, who, kind, subject(bench), body);
  }

  static String subject(String bench) {
    return "BENCH/" + bench.toUpperCase(Locale.ROOT);
  }

  private static String said(String why, String what) {
    if (why.isBlank()) {
      throw new LedgerFault("A bench is not " + what + " without a reason", "Say why");
    }
    return why.strip();
  }

  private static BenchStanding standing(Handle handle, String bench, boolean emulated) {
    return BenchStanding.of(events(handle, bench, emulated));
  }

  private static List<BenchEvent> events(Handle handle, String bench, boolean emulated) {
    Set<String> emulatedRuns = emulatedRuns(handle);
    return handle
        .select(
            "SELECT * FROM event WHERE tag = ? AND kind <> ? ORDER BY position",
            subject(bench),
            EventKind.BENCH_MEASURED.id())
        .map((row, context) -> event(row.getLong("position"), Events.event(row)))
        .list()
        .stream()
        .filter(e -> e.run().isEmpty() || emulatedRuns.contains(e.run()) == emulated)
        .toList();
  }

  private static Set<String> emulatedRuns(Handle handle) {
    return handle
        .select("SELECT id FROM run WHERE source = ?", Source.EMULATED.name())
        .mapTo(String.class)
        .set();
  }

  private static BenchEvent event(long place, Event event) {
    JsonNode body = Json.read(event.body());
    return switch (EventKind.of(event.kind())) {
      case BENCH_CHECKED ->
          told(
              place,
              event,
              body.path("against").isEmpty() ? What.CHECKED_GOOD : What.CHECKED_BAD,
              body.path("tag").asText(),
              words(body.path("against")));
      case BENCH_LOCKED ->
          told(place, event, What.LOCKED, body.path("tag").asText(), words(body.path("because")));
      case BENCH_UNLOCKED ->
          told(
              place,
              event,
              body.path("resultsStand").asBoolean() ? What.CLEARED : What.UNLOCKED,
              "",
              List.of(body.path("because").asText()));
      default ->
          told(
              place,
              event,
              body.path("out").asText().isEmpty() ? What.CALIBRATED : What.FOUND_OUT,
              body.path("channel").asText(),
              Optional.of(body.path("out").asText()).filter(o -> !o.isEmpty()).stream().toList());
    };
  }

  private static BenchEvent told(
      long place, Event event, What what, String unit, List<String> words) {
    String run = Json.read(event.body()).path("run").asText("");
    return new BenchEvent(place, what, unit, run, event.who(), event.at(), words);
  }

  private static List<String> words(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
  }
}
