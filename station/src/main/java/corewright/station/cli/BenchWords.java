package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.commission.Spread;
import corewright.bench.commission.TripTime;
import corewright.bench.commission.WiringFinding;
import corewright.bench.commission.WiringFinding.Kind;
import corewright.fixtures.describe.BenchDescription;
import corewright.measures.Figures;
import corewright.profiles.Family;
import corewright.station.work.commission.Commissioned;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a new bench came to, for people and as JSON. */
final class BenchWords {
  private BenchWords() {}

  /** What a person must know before a resistor is energised, each a sentence or two. */
  static List<String> cautions(double usual_W, double most_W, double supply_V, double ohm) {
    return List.of(
        "Take every unit off the fixture first. What comes off may still be charged: it burns and"
            + " startles until its discharge has been measured.",
        "Put the resistor of "
            + Figures.number(ohm, 2)
            + " Ω where the unit would be: from supply + to output +, and supply − straight to"
            + " output −. It must bear "
            + Figures.number(most_W, 1)
            + " W.",
        Figures.number(supply_V, 0)
            + " V are put through it and "
            + Figures.number(usual_W, 1)
            + " W become heat in it: it gets hot enough to burn, and stays so. Keep it off the"
            + " table and off the wires.",
        "Have the emergency stop in reach and the cover closed. The supply can start a fire"
            + " through a wrong wire: fuse it, and watch.",
        "Only trained people may work on energised equipment, under the codes that hold where you"
            + " are; they govern.");
  }

  static void print(Commissioned bench, List<Family> families, PrintWriter out) {
    if (bench.emulated()) {
      out.println("EMULATED: nothing of this bench is real, and it certifies nothing.");
    }
    out.println("Wiring and scale, U with k = 2:");
    for (WiringFinding f : bench.wiring()) {
      out.println("  " + mark(f.kind()) + "  " + f.saw());
      if (!f.remedy().isEmpty()) {
        out.println("      " + f.remedy());
      }
    }
    out.println("Noise with everything off, rms of one sample (k = 2):");
    new TreeMap<>(bench.noise())
        .forEach((channel, s) -> out.println("  " + channel + "  " + noise(s)));
    if (!bench.trips().isEmpty()) {
      trips(bench, families, out);
    }
  }

  private static void trips(Commissioned bench, List<Family> families, PrintWriter out) {
    List<TripTime> times = bench.trips();
    TripTime worst = TripTime.worst(times);
    out.println(
        "From a fault to everything off: worst of "
            + times.size()
            + " is "
            + ms(worst.seconds())
            + " ± "
            + ms(worst.resolution_s())
            + " ms; written as trip_s "
            + Figures.number(bench.bench().trip_s(), 3)
            + " s. With 95 % confidence no more than "
            + Figures.number(100 * TripTime.slowerShare(times.size()), 0)
            + " % of all are slower.");
    for (Family family : families) {
      double allows = family.abort().underHold_s();
      out.println(
          "  "
              + family.id()
              + " allows "
              + ms(allows)
              + " ms: "
              + (bench.bench().trip_s() <= allows
                  ? "fast enough."
                  : "TOO SLOW. Its runs will be refused on this bench."));
    }
  }

  /** In thousandths: noise is small. */
  static String noise(Spread s) {
    return Figures.number(1000 * s.sd(), 2)
        + " ± "
        + Figures.number(2000 * s.uSd(), 2)
        + " m"
        + s.unit();
  }

  private static String mark(Kind kind) {
    return switch (kind) {
      case RIGHT -> "right     ";
      case TO_CALIBRATE -> "calibrate ";
      case NOT_LOOKED_AT -> "not seen  ";
      default -> "WRONG     ";
    };
  }

  private static String ms(double seconds) {
    return Figures.number(1000 * seconds, 1);
  }

  static ObjectNode json(Commissioned result, Optional<Path> written) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    BenchDescription bench = result.bench();
    json.put("bench", bench.id());
    json.put("emulated", result.emulated());
    json.put("stands", result.stands());
    json.put("written", written.map(Path::toString).orElse(null));
    for (WiringFinding f : result.wiring()) {
      ObjectNode one = json.withArray("wiring").addObject();
      one.put("what", f.what()).put("kind", f.kind().name());
      one.put("saw", f.saw()).put("remedy", f.remedy());
      f.ratio().ifPresent(r -> one.put("ratio", r.value()).put("uRatio", r.u()));
    }
    for (Map.Entry<String, Spread> s : new TreeMap<>(result.noise()).entrySet()) {
      json.withArray("noise")
          .addObject()
          .put("channel", s.getKey())
          .put("unit", s.getValue().unit())
          .put("rms", s.getValue().sd())
          .put("uRms", s.getValue().uSd())
          .put("samples", s.getValue().n());
    }
    for (TripTime t : result.trips()) {
      json.withArray("trips_s").add(t.seconds());
    }
    json.put("trip_s", result.trips().isEmpty() ? null : bench.trip_s());
    return json;
  }
}
