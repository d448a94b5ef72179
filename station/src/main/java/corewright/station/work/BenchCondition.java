package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.commission.NoiseFloor;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.reports.ledger.Benches.Measured;
import corewright.reports.ledger.Ledger;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** What the record knows of a bench between calibrations: its noise, and its fixture's contacts. */
public final class BenchCondition {
  private static final String NOISE = "noise";
  private static final String CONTACTS = "contacts";

  private final Ledger ledger;
  private final boolean emulated;

  /**
   * @param emulated whether the bench is: what one is says nothing of a real one of the same id
   */
  BenchCondition(Ledger ledger, boolean emulated) {
    this.ledger = ledger;
    this.emulated = emulated;
  }

  private record Floors(List<NoiseFloor> floors) {}

  private record Contact(double ohm, double u, String due) {}

  /** Keeps the noise as it was found. */
  public void noise(String bench, List<NoiseFloor> found, String who) {
    ledger.benches().measured(bench, emulated, NOISE, new Floors(found), who);
  }

  /** Keeps the contacts' resistance as it was found. */
  public void contacts(String bench, Measurement found, LocalDate due, String who) {
    ledger
        .benches()
        .measured(
            bench, emulated, CONTACTS, new Contact(found.value(), found.u(), due.toString()), who);
  }

  /** The bench with what its channels are known to now: unexplained noise counts. */
  public BenchDescription known(BenchDescription bench) {
    List<NoiseFloor> floors = floors(bench);
    return floors.isEmpty()
        ? bench
        : bench.withChannels(
            bench.channels().stream()
                .map(
                    c ->
                        floors.stream()
                            .filter(f -> f.channel().equals(c.channel()))
                            .max(Comparator.comparingDouble(NoiseFloor::rms))
                            .map(f -> f.in(c))
                            .orElse(c))
                .toList());
  }

  /** Why its noise stops the bench, each a sentence. */
  public List<String> noiseAgainst(BenchDescription bench) {
    List<NoiseFloor> floors = floors(bench);
    return bench.channels().stream()
        .flatMap(
            c ->
                floors.stream()
                    .filter(f -> f.channel().equals(c.channel()))
                    .flatMap(f -> f.against(c).stream()))
        .distinct()
        .toList();
  }

  /** Why the fixture's contacts are not good enough, each a sentence. */
  public List<String> contactsAgainst(BenchDescription bench) {
    return last(bench, CONTACTS).stream()
        .map(m -> new Measurement(number(m, "ohm"), number(m, "u"), Unit.OHM))
        .flatMap(found -> against(found, bench).stream())
        .distinct()
        .toList();
  }

  /** What a reading of the contacts has against the bench; empty where no limit is stated. */
  public static Optional<String> against(Measurement found, BenchDescription bench) {
    return bench
        .contacts()
        .filter(limit -> found.value() > limit.limit_ohm())
        .map(
            limit ->
                "The contacts of fixture "
                    + bench.fixture().id()
                    + " put "
                    + Figures.withU(found)
                    + " between supply and output; the limit is "
                    + Figures.like(limit.limit_ohm(), found)
                    + ".");
  }

  private List<NoiseFloor> floors(BenchDescription bench) {
    return last(bench, NOISE).stream()
        .flatMap(m -> each(m.found().path("floors")))
        .map(
            f ->
                new NoiseFloor(
                    f.path("channel").asText(),
                    f.path("unit").asText(),
                    f.path("rms").asDouble(),
                    f.path("u").asDouble()))
        .toList();
  }

  private List<Measured> last(BenchDescription bench, String what) {
    return ledger.benches().measured(bench.id(), emulated).getOrDefault(what, List.of());
  }

  private static double number(Measured m, String field) {
    return m.found().path(field).asDouble();
  }

  private static Stream<JsonNode> each(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false);
  }
}
