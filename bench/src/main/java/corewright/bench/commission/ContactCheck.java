package corewright.bench.commission;

import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the fixture's contacts put between supply and output, by a known current through a link: how
 * far the two sides move apart when the load draws. What they were apart before, their zeros and
 * most of their factors, falls out.
 */
public final class ContactCheck {
  /** A wire that carries nothing drops nothing; the dividers take microamperes, V. */
  private static final double NOTHING_V = 0.05;

  private ContactCheck() {}

  /**
   * Resistance from the input's sense leads to the output's, the link's own taken away, Ω.
   *
   * @param known what is known of the channels
   * @throws IllegalArgumentException if the load channel shows no current, or what is in the link's
   *     place is no wire
   */
  public static Measurement of(WiringSeen seen, List<ChannelCalibration> known) {
    Measurement ampere = moved(seen, known, "load", Unit.AMPERE);
    Measurement in = moved(seen, known, "input", Unit.VOLT);
    Measurement out = moved(seen, known, "output", Unit.VOLT);
    if (!(ampere.value() > seen.plug().load_A() / 2)) {
      throw new IllegalArgumentException(
          "the load was set to " + seen.plug().load_A() + " A and " + ampere + " flow");
    }
    double idle_V = risen(seen, known, "input") - risen(seen, known, "output");
    if (idle_V > NOTHING_V) {
      throw new IllegalArgumentException(
          Figures.number(idle_V, 2)
              + " V stand between supply and output while nothing flows: that is a unit's diode and"
              + " no wire");
    }
    double ohm = (in.value() - out.value()) / ampere.value();
    double u = Math.hypot(Math.hypot(in.u(), out.u()), ohm * ampere.u()) / ampere.value();
    Measurement link = seen.plug().resistance();
    return new Measurement(ohm - link.value(), Math.hypot(u, link.u()), Unit.OHM);
  }

  /** What the supply put on a channel before the load drew, less what its factor may make of it. */
  private static double risen(WiringSeen seen, List<ChannelCalibration> known, String channel) {
    double risen = spread(seen.idle(), channel).mean() - spread(seen.rest(), channel).mean();
    double doubt = 2 * gain(known, channel) * risen;
    return channel.equals("input") ? risen - doubt : risen + doubt;
  }

  /** How far a channel moved when the load began to draw: its zero is in both and falls out. */
  private static Measurement moved(
      WiringSeen seen, List<ChannelCalibration> known, String channel, Unit unit) {
    Spread idle = spread(seen.idle(), channel);
    Spread loaded = spread(seen.loaded(), channel);
    double by = loaded.mean() - idle.mean();
    double gain_u = gain(known, channel) * by;
    return new Measurement(by, Math.hypot(Math.hypot(idle.u(), loaded.u()), gain_u), unit);
  }

  private static double gain(List<ChannelCalibration> known, String channel) {
    return known.stream()
        .filter(c -> c.channel().equals(channel))
        .mapToDouble(ChannelCalibration::gain_rel)
        .findFirst()
        .orElse(0);
  }

  private static Spread spread(Map<String, Spread> read, String channel) {
    return Optional.ofNullable(read.get(channel))
        .orElseThrow(() -> new IllegalArgumentException("the digitizer has no channel " + channel));
  }
}
