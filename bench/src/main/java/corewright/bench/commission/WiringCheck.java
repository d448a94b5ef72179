package corewright.bench.commission;

import corewright.bench.commission.WiringFinding.Kind;
import corewright.bench.commission.WiringSeen.MeterSaid;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holds what the channels read of the resistor against what is there: voltages against the meter or
 * the source, currents against what the resistor lets through and what the instruments say, of
 * which the middle one is believed. Pure.
 */
public final class WiringCheck {
  /** Witnesses of one current that are further apart than this share of it do not agree. */
  private static final double WITNESSES = 0.05;

  /** An output that reads so much more than there should be may be a unit's, relative. */
  private static final double STARTED = 1.2;

  /** What each channel hangs on, in words. */
  private static final Map<String, String> LEADS =
      Map.of(
          "input", "the two sense leads of the supply side",
          "output", "the two sense leads of the output side",
          "load", "the two leads of the load's shunt",
          "inputCurrent", "the two leads of the supply's shunt");

  private final WiringSeen seen;
  private final List<WiringFinding> findings = new ArrayList<>();

  private WiringCheck(WiringSeen seen) {
    this.seen = seen;
  }

  /** A finding for each channel, and one for each witness that is not believed. */
  public static List<WiringFinding> of(WiringSeen seen) {
    return new WiringCheck(seen).findings();
  }

  private List<WiringFinding> findings() {
    Optional<Measurement> atInput = seen.meter().map(MeterSaid::input_V);
    WiringFinding input = voltage("input", atInput);
    WiringFinding output = output(seen.meter().map(MeterSaid::output_V));
    told("source", seen.plug().supply_V(), atInput.orElse(seen.source().idle_V()));
    Optional<Measurement> through = through(input, output);
    boolean exchanged = through.filter(i -> i.value() < -seen.plug().load_A() / 2).isPresent();
    if (exchanged) {
      findings.add(
          new WiringFinding(
              "input and output",
              Kind.EXCHANGED,
              "With the load drawing, the channel input fell and the channel output did not: they"
                  + " are exchanged.",
              "Exchange the sense leads of supply side and output side at the board.",
              Optional.empty()));
    } else {
      findings.add(input);
      findings.add(output);
    }
    Optional<Measurement> there = current(through.map(i -> exchanged ? negative(i) : i));
    if (seen.load().isPresent()) { // nobody sets one by hand that well
      there.ifPresent(i -> told("load", seen.plug().load_A(), i));
    }
    for (String channel : List.of("load", "inputCurrent")) {
      if (seen.idle().containsKey(channel)) {
        findings.add(current(channel, there));
      }
    }
    seen.idle().keySet().stream()
        .filter(name -> !LEADS.containsKey(name))
        .sorted()
        .map(WiringCheck::unknown)
        .forEach(findings::add);
    return List.copyOf(findings);
  }

  private WiringFinding voltage(String channel, Optional<Measurement> meter) {
    Measurement there = meter.orElse(seen.source().idle_V());
    return clipped(channel)
        .orElseGet(
            () ->
                Scale.of(
                    channel, beyondZero(channel, seen.idle(), Unit.VOLT), there, leads(channel)));
  }

  /** Without a meter nothing tells a divider that reads too much from a unit that has started. */
  private WiringFinding output(Optional<Measurement> meter) {
    WiringFinding found = voltage("output", meter);
    boolean more = found.ratio().filter(r -> Math.abs(r.value()) > STARTED).isPresent();
    return meter.isEmpty() && more
        ? new WiringFinding(
            found.what(),
            found.kind(),
            found.saw(),
            "Make sure first that no unit is on the fixture: measure before you touch it. "
                + found.remedy(),
            found.ratio())
        : found;
  }

  /** Whether an instrument gives what it was told. */
  private void told(String role, double set, Measurement there) {
    if (Math.abs(there.value() - set) > 2 * there.u() + WITNESSES * set) {
      findings.add(
          new WiringFinding(
              role + "'s setting",
              Kind.IN_DOUBT,
              "The "
                  + role
                  + " was set to "
                  + Figures.number(set, 3)
                  + " "
                  + there.unit().symbol()
                  + ", and "
                  + Figures.withU(there)
                  + (role.equals("load") ? " flow." : " is there."),
              "Have what it is set to held against what it gives, and look at the units in its"
                  + " dialect.",
              Optional.empty()));
    }
  }

  private WiringFinding current(String channel, Optional<Measurement> there) {
    return clipped(channel)
        .or(
            () ->
                there.map(
                    i ->
                        Scale.of(
                            channel,
                            beyondZero(channel, seen.loaded(), Unit.AMPERE),
                            i,
                            leads(channel))))
        .orElseGet(
            () ->
                new WiringFinding(
                    channel,
                    Kind.IN_DOUBT,
                    "What really flows is not known, so the channel " + channel + " was not told.",
                    "Mend what is said above first.",
                    Optional.empty()));
  }

  private Optional<WiringFinding> clipped(String channel) {
    boolean any =
        Stream.of(seen.rest(), seen.idle(), seen.loaded())
            .anyMatch(m -> Optional.ofNullable(m.get(channel)).filter(Spread::clipped).isPresent());
    return any
        ? Optional.of(
            new WiringFinding(
                channel,
                Kind.OVER_RANGE,
                "Channel " + channel + " is at an end of its range.",
                "Look for an open lead, or a divider or shunt that is far off.",
                Optional.empty()))
        : Optional.empty();
  }

  /** What went through the resistor, by the two voltages, each by its own factor. */
  private Optional<Measurement> through(WiringFinding input, WiringFinding output) {
    Optional<Measurement> in = fell("input", input);
    Optional<Measurement> out = fell("output", output);
    if (in.isEmpty() || out.isEmpty()) {
      return Optional.empty();
    }
    Measurement ohm = seen.plug().resistance();
    double ampere = (out.get().value() - in.get().value()) / ohm.value();
    double u =
        Math.hypot(
            Math.hypot(out.get().u(), in.get().u()) / ohm.value(), ampere * ohm.u() / ohm.value());
    return Optional.of(new Measurement(ampere, u, Unit.AMPERE));
  }

  /** How far a voltage fell when the load drew, by the channel's own factor. */
  private Optional<Measurement> fell(String channel, WiringFinding found) {
    if (found.ratio().isEmpty() || found.kind() == Kind.NOTHING_READ) {
      return Optional.empty();
    }
    Measurement ratio = found.ratio().get();
    Measurement idle = beyondZero(channel, seen.idle(), Unit.VOLT);
    Measurement loaded = beyondZero(channel, seen.loaded(), Unit.VOLT);
    double fell = (idle.value() - loaded.value()) / ratio.value();
    double noise = Math.hypot(idle.u(), loaded.u()) / Math.abs(ratio.value());
    return Optional.of(
        new Measurement(fell, Math.hypot(noise, fell * ratio.u() / ratio.value()), Unit.VOLT));
  }

  /** The middle of what resistor, source and load say of one current. */
  private Optional<Measurement> current(Optional<Measurement> through) {
    record Witness(String name, Measurement said) {}
    List<Witness> witnesses = new ArrayList<>();
    through.ifPresent(i -> witnesses.add(new Witness("resistor", i)));
    Measurement loaded = seen.source().loaded_A();
    Measurement idle = seen.source().idle_A();
    witnesses.add(
        new Witness(
            "source's own ammeter",
            new Measurement(
                loaded.value() - idle.value(), Math.hypot(loaded.u(), idle.u()), Unit.AMPERE)));
    seen.load().ifPresent(i -> witnesses.add(new Witness("load's own ammeter", i)));
    witnesses.sort(Comparator.comparingDouble(w -> w.said().value()));
    Measurement middle = witnesses.get(witnesses.size() / 2).said();
    if (!(middle.value() > seen.plug().load_A() / 2)) {
      findings.add(
          new WiringFinding(
              "load",
              Kind.IN_DOUBT,
              "The load was set to "
                  + Figures.number(seen.plug().load_A(), 3)
                  + " A, and "
                  + Figures.withU(middle)
                  + " flow.",
              "Look whether the load is connected, with its plus at the output's plus, and on.",
              Optional.empty()));
      return Optional.empty();
    }
    Measurement best = middle;
    for (Witness w : witnesses) {
      double apart = Math.abs(w.said().value() - middle.value());
      if (apart > 2 * Math.hypot(w.said().u(), middle.u()) + WITNESSES * middle.value()) {
        findings.add(notBelieved(w.name(), w.said(), middle, witnesses.size()));
      } else if (w.said().u() < best.u()) {
        best = w.said();
      }
    }
    return Optional.of(best);
  }

  private static WiringFinding notBelieved(
      String name, Measurement said, Measurement middle, int witnesses) {
    return new WiringFinding(
        name,
        Kind.IN_DOUBT,
        "By the "
            + name
            + " "
            + Figures.withU(said)
            + " flow, by the "
            + (witnesses > 2 ? "others " : "other ")
            + Figures.withU(middle)
            + ".",
        name.equals("resistor") || witnesses < 3
            ? "Measure the resistor, and look at its contacts; then have the instruments' own"
                + " readings checked."
            : "Have that instrument's own reading checked; it is not believed here.",
        Optional.empty());
  }

  private Measurement beyondZero(String channel, Map<String, Spread> read, Unit unit) {
    Spread now = spread(read, channel);
    Spread rest = spread(seen.rest(), channel);
    return new Measurement(now.mean() - rest.mean(), Math.hypot(now.u(), rest.u()), unit);
  }

  private static Spread spread(Map<String, Spread> read, String channel) {
    return Optional.ofNullable(read.get(channel))
        .orElseThrow(() -> new IllegalArgumentException("the digitizer has no channel " + channel));
  }

  private static Measurement negative(Measurement m) {
    return new Measurement(-m.value(), m.u(), m.unit());
  }

  private static WiringFinding unknown(String channel) {
    return new WiringFinding(
        channel,
        Kind.NOT_LOOKED_AT,
        "Channel " + channel + " was not looked at: the resistor gives it nothing to read.",
        "Calibrate it against a meter.",
        Optional.empty());
  }

  private static String leads(String channel) {
    return LEADS.getOrDefault(channel, "its leads");
  }
}
