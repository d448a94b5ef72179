package corewright.bench.commission;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.commission.WiringFinding.Kind;
import corewright.bench.hand.Hands;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.FakeClock;
import corewright.bench.run.Framing;
import corewright.bench.run.Stop;
import corewright.bench.wire.BenchOpener;
import corewright.bench.zoo.MemoryLinks;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.Miswiring;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A bench that is wired wrongly in a known way, and 10 Ω in the place of a unit. */
class CommissionTest {
  private static final double OHM = 10;
  private static final Map<String, Dialect> DIALECTS = new HashMap<>();
  private static final BenchDescription BENCH = Descriptions.shippedBench("emulated-sd48");
  private static final Framing FRAMING = Framing.of(10_000, 4);

  /** 10 V behind 10 Ω, half of it across them: 0.5 A by Ohm's law, 2.5 W. */
  @Test
  void theResistorSetsWhatFlowsAndWhatItBears() {
    Plug plug = plug(OHM);
    assertEquals(0.5, plug.load_A());
    assertEquals(2.5, plug.usual_W());
    assertTrue(plug.most_W() < 4, plug.toString());
    assertThrows(IllegalArgumentException.class, () -> plug(0.1));
    assertThrows(IllegalArgumentException.class, () -> plug(470));
  }

  @Test
  void aBenchThatIsWiredWellIsFoundSo() {
    Map<String, WiringFinding> found = found(Optional.empty(), plug(OHM));
    assertEquals(
        List.of("input", "inputCurrent", "load", "output"),
        found.keySet().stream().sorted().toList());
    found.values().forEach(f -> assertEquals(Kind.RIGHT, f.kind(), f.saw()));
  }

  @ParameterizedTest
  @CsvSource({
    "OUTPUT_REVERSED, output, REVERSED, -1",
    "INPUT_REVERSED, input, REVERSED, -1",
    "LOAD_SHUNT_REVERSED, load, REVERSED, -1",
    "OUTPUT_OPEN, output, NOTHING_READ, 0",
    "OUTPUT_DIVIDER, output, WRONG_SCALE, 0.5",
    "LOAD_SHUNT, load, WRONG_SCALE, 2",
    "SUPPLY_SHUNT, inputCurrent, WRONG_SCALE, 0.1"
  })
  void whatIsWiredWronglyIsNamedAndNothingElse(
      Miswiring wrong, String channel, Kind kind, double ratio) {
    Map<String, WiringFinding> found = found(Optional.of(wrong), plug(OHM));
    WiringFinding of = found.get(channel);
    assertEquals(kind, of.kind(), of.saw());
    Measurement told = of.ratio().orElseThrow();
    assertEquals(ratio, told.value(), 2 * told.u() + 1e-9);
    assertFalse(of.remedy().isEmpty());
    found.remove(channel);
    found.values().forEach(f -> assertEquals(Kind.RIGHT, f.kind(), f.saw()));
  }

  @Test
  void exchangedLeadsOfInputAndOutputAreSeenByWhichOfThemFalls() {
    Map<String, WiringFinding> found = found(Optional.of(Miswiring.EXCHANGED), plug(OHM));
    assertEquals(Kind.EXCHANGED, found.get("input and output").kind());
    assertEquals(Kind.RIGHT, found.get("load").kind(), found.get("load").saw());
  }

  /** Who says 20 Ω of 10 Ω would have every channel of current read half. */
  @Test
  void aResistorThatIsAnotherIsNamedAndNoChannelIsAccused() {
    Map<String, WiringFinding> found = found(Optional.empty(), plug(2 * OHM));
    assertEquals(Kind.IN_DOUBT, found.get("resistor").kind(), found.toString());
    assertEquals(Kind.RIGHT, found.get("load").kind(), found.get("load").saw());
  }

  /** It draws 1.115 A for each ampere that it is told; its own ammeter says so itself. */
  @Test
  void aLoadThatDrawsAnotherCurrentThanItIsToldIsNamed() {
    Setup setup = Setup.of(UnitParameters.resistor("sd48", OHM), 1);
    Map<String, WiringFinding> found =
        found(setup.on(BenchFault.LOAD_DRAWS_MORE.in(setup.harness(), 0.25)), plug(OHM));
    WiringFinding load = found.remove("load's setting");
    assertEquals(Kind.IN_DOUBT, load.kind(), load.saw());
    assertTrue(load.saw().startsWith("The load was set to 0.500 A, and 0.55"), load.saw());
    found.values().forEach(f -> assertEquals(Kind.RIGHT, f.kind(), f.saw()));
  }

  /** A healthy unit: it starts, behind the small limit, and lifts the output above the supply. */
  @Test
  void aUnitInTheResistorsPlaceEndsItAtOnce() {
    InstrumentFault ended =
        assertThrows(
            InstrumentFault.class,
            () -> found(Setup.of(UnitParameters.healthy("sd48"), 1), plug(OHM)));
    assertTrue(ended.found().contains("which no resistor can do"), ended.getMessage());
    assertTrue(ended.remedy().startsWith("A unit is on the fixture"), ended.getMessage());
  }

  /** Each of the drivers' messages takes 1 ms there, and the source 2 ms for its 10 V. */
  @Test
  void howFastItIsOffIsTimedByTheCountOfSamplesAndEverythingIsOffThen() {
    on(
        Optional.empty(),
        bench -> {
          List<TripTime> times =
              new Commission(bench, plug(OHM), new FakeClock(), new Stop()).trips(FRAMING, 3);
          assertEquals(3, times.size());
          double worst = TripTime.worst(times).most_s();
          assertTrue(worst > 0.002 && worst < 0.05, times.toString());
          assertTrue(bench.discharge().discharging());
          assertEquals(Optional.of(false), bench.source().isOn());
          return times;
        });
    // 59 of 59 without a slower one: 95 % of all are faster, with 95 % confidence.
    assertEquals(0.05, TripTime.slowerShare(59), 0.0005);
  }

  /** The emulated converters' noise is 2 mV at the input; a 1.25 mV step adds its part. */
  @Test
  void theNoiseOfAChannelAtRestIsThatOfItsConverter() {
    Map<String, Spread> noise =
        on(
            Optional.empty(),
            bench ->
                new Commission(bench, plug(OHM), new FakeClock(), new Stop()).noise(FRAMING, 0.5));
    assertEquals(Math.hypot(0.002, 0.00125 / Math.sqrt(12)), noise.get("input").sd(), 1e-4);
  }

  /** 130 mΩ between the place where the input is measured and the unit, by construction. */
  @Test
  void aWornPinIsFoundByAKnownCurrentThroughALink() {
    Setup link = Setup.of(UnitParameters.resistor("sd48", 0.005), 1);
    Harness worn = BenchFault.WORN_PIN.in(link.harness(), 0.5);
    Measurement wire = new Measurement(0.005, 0.0005, Unit.OHM);
    Measurement ohm =
        on(
            link.on(worn),
            bench ->
                ContactCheck.of(
                    new Commission(bench, Plug.link(wire, 5), new FakeClock(), new Stop())
                        .wiring(FRAMING),
                    BENCH.channels()));
    assertEquals(0.13, ohm.value(), 2 * ohm.u());
    assertTrue(ohm.u() < 0.002, ohm.toString());
    assertThrows(IllegalArgumentException.class, () -> Plug.link(wire, 100));
  }

  /** 5 V do not start it: they come through its diode, which no wire has. */
  @Test
  void aUnitInTheLinksPlaceIsNotTakenForWornContacts() {
    Plug link = Plug.link(new Measurement(0.001, 0.0005, Unit.OHM), 5);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                on(
                    Setup.of(UnitParameters.healthy("sd48"), 1),
                    bench ->
                        ContactCheck.of(
                            new Commission(bench, link, new FakeClock(), new Stop())
                                .wiring(FRAMING),
                            BENCH.channels())));
    assertTrue(refused.getMessage().contains("a unit's diode and no wire"), refused.toString());
  }

  /** Somebody who does at the load what the station asks for, a moment later. */
  @Test
  void aLoadThatIsSetByHandIsWaitedForAndTimedByLoweringTheSupply() {
    FakeClock clock = new FakeClock();
    Setup setup = Setup.of(UnitParameters.resistor("sd48", OHM), 1).on(() -> 0L);
    MemoryLinks links = new MemoryLinks(EmulatedBench.instruments(setup), clock);
    Link load = links.open("load", "", 0);
    Hands somebody =
        new Hands() {
          @Override
          public String name() {
            return "Ada";
          }

          @Override
          public void please(String what) {
            String done = what.contains("off") ? "INPut OFF\n" : "SOURce:CURRent 0.4;:INPut ON\n";
            load.write(done.getBytes(US_ASCII), Duration.ofSeconds(1));
          }
        };
    BenchOpener opener =
        new BenchOpener(links, CommissionTest::dialect, clock, Optional.of(somebody));
    try (BenchInstruments bench = opener.open(byHand())) {
      Commission commission = new Commission(bench, plug(OHM), clock, new Stop());
      WiringCheck.of(commission.wiring(FRAMING))
          .forEach(f -> assertEquals(Kind.RIGHT, f.kind(), f.saw()));
      assertTrue(commission.trips(FRAMING, 1).get(0).most_s() < 0.05);
    }
  }

  private static BenchDescription byHand() {
    return new BenchDescription(
        BENCH.id(),
        1,
        "",
        BENCH.instruments().stream()
            .map(
                c ->
                    c.role().equals("load")
                        ? new Connection("load", "by hand", 300, 1, Connection.BY_HAND, "none")
                        : c)
            .toList(),
        BENCH.channels(),
        BENCH.fixture(),
        1,
        BENCH.origin());
  }

  private static Dialect dialect(String id) {
    return DIALECTS.computeIfAbsent(id, Descriptions::shippedDialect);
  }

  @Test
  void aPersonWhoStopsItLeavesEverythingOff() {
    on(
        Optional.empty(),
        bench -> {
          Stop stop = new Stop();
          stop.request("The operator pressed Ctrl-C.");
          InstrumentFault ended =
              assertThrows(
                  InstrumentFault.class,
                  () -> new Commission(bench, plug(OHM), new FakeClock(), stop).wiring(FRAMING));
          assertTrue(ended.getMessage().contains("Ctrl-C"), ended.getMessage());
          assertEquals(Optional.of(false), bench.source().isOn());
          return ended;
        });
  }

  /** The source goes silent when it is told its 10 V, and so cannot be switched off either. */
  @Test
  void whatWentWrongFirstIsToldBesideWhatCouldNotBeSwitchedOff() {
    Setup setup =
        Setup.of(UnitParameters.resistor("sd48", OHM), 1)
            .with(WireFault.onText("source", WireFault.Kind.NO_ANSWER, "VOLTage 10.*"));
    InstrumentFault ended =
        assertThrows(
            InstrumentFault.class,
            () ->
                on(
                    setup,
                    bench ->
                        new Commission(bench, plug(OHM), new FakeClock(), new Stop())
                            .wiring(FRAMING)));
    assertEquals("leaving it in the safe state", ended.doing());
    assertTrue(ended.found().startsWith("Switching the source off failed: "), ended.found());
    assertTrue(ended.found().contains(" Before that: source: 'VOLTage 10.000;"), ended.found());
  }

  /** A digitizer whose channels are called otherwise: nothing is waited for that cannot come. */
  @Test
  void aChannelThatIsNotThereIsToldAndNotWaitedFor() {
    on(
        Optional.empty(),
        bench -> {
          Commission commission =
              new Commission(
                  bench.with(new Renamed(bench.digitizer())),
                  plug(OHM),
                  new FakeClock(),
                  new Stop());
          InstrumentFault ended =
              assertThrows(InstrumentFault.class, () -> commission.trips(FRAMING, 1));
          assertEquals("the digitizer has no channel for a current", ended.found());
          return ended;
        });
  }

  private static Plug plug(double ohm) {
    return Plug.of(new Measurement(ohm, 0.01 * ohm / 2, Unit.OHM));
  }

  private static Map<String, WiringFinding> found(Optional<Miswiring> wrong, Plug plug) {
    return found(wired(wrong), plug);
  }

  private static Map<String, WiringFinding> found(Setup setup, Plug plug) {
    return on(
        setup,
        bench ->
            WiringCheck.of(new Commission(bench, plug, new FakeClock(), new Stop()).wiring(FRAMING))
                .stream()
                .collect(Collectors.toMap(WiringFinding::what, f -> f)));
  }

  private static <T> T on(Optional<Miswiring> wrong, Function<BenchInstruments, T> what) {
    return on(wired(wrong), what);
  }

  private static Setup wired(Optional<Miswiring> wrong) {
    Setup sound = Setup.of(UnitParameters.resistor("sd48", OHM), 1);
    return sound.on(wrong.map(w -> w.in(sound.harness())).orElse(sound.harness()));
  }

  private static <T> T on(Setup setup, Function<BenchInstruments, T> what) {
    FakeClock clock = new FakeClock();
    BenchOpener opener =
        new BenchOpener(
            new MemoryLinks(EmulatedBench.instruments(setup.on(() -> 0L)), clock),
            CommissionTest::dialect,
            clock);
    try (BenchInstruments bench = opener.open(BENCH)) {
      return what.apply(bench);
    }
  }
}
