package corewright.station.demo;

import static corewright.fixtures.emulate.unit.Parameter.CAPACITANCE;
import static corewright.fixtures.emulate.unit.Parameter.CURRENT_LIMIT;
import static corewright.fixtures.emulate.unit.Parameter.ESR;
import static corewright.fixtures.emulate.unit.Parameter.FEEDBACK;
import static corewright.fixtures.emulate.unit.Parameter.LEAD;
import static corewright.fixtures.emulate.unit.Parameter.REFERENCE_HEAT;
import static corewright.fixtures.emulate.unit.Parameter.TRANSCONDUCTANCE;

import corewright.bench.record.Finding.Outcome;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One way across one edge of one limit.
 *
 * @param limit its id
 * @param part what is made worse
 * @param from factor on the part where the reading is on the good side of both edges
 * @param to factor where it is on the bad side of both
 * @param prepared factors on other parts, so that no other limit lies near
 */
record Walk(
    String family,
    String limit,
    Edge edge,
    Parameter part,
    double from,
    double to,
    Map<Parameter, Double> prepared) {

  static final List<String> FAMILIES = List.of("sd48", "ie110", "pv65");

  /** The two edges of a limit, and what lies on their sides. */
  enum Edge {
    PASS(Outcome.PASS, Outcome.MARGINAL),
    FAIL(Outcome.MARGINAL, Outcome.FAIL);

    private final Outcome good;
    private final Outcome bad;

    Edge(Outcome good, Outcome bad) {
      this.good = good;
      this.bad = bad;
    }

    Outcome good() {
      return good;
    }

    Outcome bad() {
      return bad;
    }

    double margin(Physics.Worst worst) {
      return this == PASS ? worst.toPass() : worst.toFail();
    }
  }

  private record Way(
      String limit, Parameter part, double from, double to, Map<Parameter, Double> prepared) {}

  /** Every limit of the arrival profiles, and the part that moves its reading. */
  private static final List<Way> WAYS =
      List.of(
          new Way("output-full", CURRENT_LIMIT, 1, 0.3, Map.of(FEEDBACK, 1.01)),
          new Way("output-part", FEEDBACK, 1, 1.13, Map.of(LEAD, 0.02)),
          new Way("droop-full", LEAD, 1, 1500, Map.of(FEEDBACK, 0.985)),
          new Way("output-rest", FEEDBACK, 1, 1.13, Map.of(LEAD, 0.02)),
          new Way("ripple-rms", ESR, 1, 5, Map.of()),
          new Way("output-high", FEEDBACK, 1, 0.93, Map.of()),
          new Way("undershoot-rest", CAPACITANCE, 1, 0.1, Map.of()),
          new Way("drift-full", REFERENCE_HEAT, 1, 600, Map.of()),
          new Way("recovery", TRANSCONDUCTANCE, 0.19, 0.01, Map.of(CAPACITANCE, 0.2)),
          new Way("ripple-full", ESR, 1, 5, Map.of()),
          new Way("undershoot", TRANSCONDUCTANCE, 1, 0.01, Map.of()));

  /** Each edge of each limit for each family. */
  static List<Walk> all() {
    return FAMILIES.stream()
        .flatMap(family -> WAYS.stream().flatMap(way -> edges(family, way)))
        .toList();
  }

  /** Every other limit once, edges and families in turn. */
  static List<Walk> few() {
    return IntStream.range(0, (WAYS.size() + 1) / 2)
        .mapToObj(
            i -> edges(FAMILIES.get(i % FAMILIES.size()), WAYS.get(2 * i)).toList().get(i % 2))
        .toList();
  }

  static List<String> limits() {
    return WAYS.stream().map(Way::limit).toList();
  }

  private static Stream<Walk> edges(String family, Way way) {
    return Stream.of(Edge.values())
        .map(
            edge ->
                new Walk(
                    family, way.limit(), edge, way.part(), way.from(), way.to(), way.prepared()));
  }

  UnitParameters unit(double factor) {
    UnitParameters unit = UnitParameters.healthy(family);
    for (Map.Entry<Parameter, Double> other : prepared.entrySet()) {
      unit = unit.times(other.getKey(), other.getValue());
    }
    return unit.times(part, factor);
  }

  @Override
  public String toString() {
    return family + " " + limit + " " + edge + " by " + part;
  }
}
