package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Instrument;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Load;
import corewright.bench.port.Meter;
import corewright.bench.port.Relay;
import corewright.bench.port.Source;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.io.IOException;
import java.time.Duration;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What every bench promises, whatever it is made of. A new driver or bench extends this and writes
 * no test of its own for it. Asks for no more than 5 V and 0.5 A, with the relay open.
 */
abstract class BenchContract {
  private static final Duration PATIENCE = Duration.ofMillis(500);

  private BenchInstruments bench;

  /** An opened bench with a whole interlock chain, everything off and no unit in danger. */
  abstract BenchInstruments fresh() throws IOException;

  @BeforeEach
  final void open() throws IOException {
    bench = fresh();
  }

  @AfterEach
  final void close() {
    if (bench != null) {
      SafeState.take(bench);
      bench.close();
    }
  }

  @Test
  final void everyInstrumentHasItsRoleAndSaysWhoItIs() {
    Set<String> roles = new HashSet<>();
    for (Instrument instrument : bench.all()) {
      roles.add(instrument.role());
      assertEquals(instrument.identity(), instrument.identity());
      assertEquals(4, instrument.identity().split(",", -1).length, "IEEE 488.2, 10.14");
    }
    Set<String> needed = Set.of("load", "source", "digitizer", "switch", "interlock");
    assertTrue(roles.containsAll(needed), roles.toString());
    roles.removeAll(needed);
    roles.removeAll(Set.of("relay", "thermometer", "meter"));
    assertEquals(Set.of(), roles);
  }

  @Test
  final void offComesFirstAndAsOftenAsOneLikes() {
    for (int i = 0; i < 3; i++) {
      bench.all().forEach(Instrument::off);
    }
    assertTrue(bench.discharge().discharging());
    assertFalse(bench.relay().heartbeat().relayClosed());
    assertFalse(bench.source().isOn().orElse(false));
  }

  @Test
  final void theSourceGivesWhatItWasSetToAndStopsGivingIt() {
    bench.source().protect(8, 1);
    bench.source().set(5, 0.5);
    assertFalse(bench.source().isOn().orElse(false), "setting does not switch on");
    bench.source().output(true);
    assertTrue(bench.source().isOn().orElse(true));
    Measurement voltage = bench.source().voltage();
    assertEquals(Unit.VOLT, voltage.unit());
    assertTrue(voltage.u() > 0, "a real instrument is never exact");
    assertEquals(5, voltage.value(), 0.05 + 4 * voltage.u());
    assertEquals(Unit.AMPERE, bench.source().current().unit());
    bench.source().off();
    assertFalse(bench.source().isOn().orElse(false));
  }

  @Test
  final void aLevelThatNoInstrumentReachesIsRefusedByName() {
    InstrumentFault volts = assertThrows(InstrumentFault.class, () -> bench.source().set(5000, 1));
    assertTrue(volts.getMessage().contains("5000"), volts.getMessage());
    assertFalse(volts.remedy().isEmpty());
    InstrumentFault amperes = assertThrows(InstrumentFault.class, () -> bench.load().set(5000));
    assertTrue(amperes.getMessage().contains("5000"), amperes.getMessage());
    assertThrows(InstrumentFault.class, () -> bench.load().set(Double.NaN));
  }

  @Test
  final void theLoadTellsItsCurrent() {
    bench.load().set(0.5);
    bench.load().input(true);
    Measurement current = bench.load().current();
    assertEquals(Unit.AMPERE, current.unit());
    assertTrue(current.u() > 0, "a real instrument is never exact");
    assertTrue(Math.abs(current.value()) < 0.6, "it takes no more than it was told");
    bench.load().off();
  }

  /** Also with the input off nothing may be left that pulses the next time it is on. */
  @Test
  final void aLoadThatPulsesTakesItAndGivesItBack() {
    if (!bench.load().canPulse()) {
      assertThrows(InstrumentFault.class, () -> bench.load().pulse(pulses(0.5)));
      return;
    }
    assertThrows(InstrumentFault.class, () -> bench.load().pulse(pulses(5000)));
    bench.load().pulse(pulses(0.5));
    bench.load().input(true);
    assertTrue(bench.load().current().value() < 0.6, "it takes no more than it was told");
    bench.load().off();
    bench.load().steady();
    bench.load().set(0.2);
    bench.load().input(true);
    assertTrue(bench.load().current().value() < 0.3, "it is steady again");
    bench.load().off();
  }

  /** Also with the output off nothing may be left that swings the next time it is on. */
  @Test
  final void aSourceThatSwingsTakesItAndGivesItBack() {
    if (!bench.source().canSwing()) {
      assertThrows(InstrumentFault.class, () -> bench.source().swing(swing(0.4)));
      return;
    }
    assertThrows(InstrumentFault.class, () -> bench.source().swing(swing(5000)));
    bench.source().set(10, 1);
    bench.source().swing(swing(0.4));
    bench.source().output(true);
    assertEquals(10, bench.source().voltage().value(), 0.3, "it stays about its level");
    bench.source().off(); // ends it by itself
    bench.source().set(10, 1);
    bench.source().output(true);
    for (int i = 0; i < 20; i++) {
      assertEquals(10, bench.source().voltage().value(), 0.1, "it is steady again");
    }
    bench.source().steady();
    bench.source().off();
  }

  private static Source.Swing swing(double swing_Vpp) {
    return new Source.Swing(10, swing_Vpp, 13);
  }

  private static Load.Pulses pulses(double high_A) {
    return new Load.Pulses(0, high_A, 0.0004, 0.005, 100);
  }

  @Test
  final void theSwitchSaysWhereItIs() {
    bench.relay().relay(true); // a watchdog that has tripped keeps the resistor until then
    bench.relay().relay(false);
    bench.discharge().discharge(false);
    assertFalse(bench.discharge().discharging());
    bench.discharge().discharge(true);
    assertTrue(bench.discharge().discharging());
    bench.discharge().discharge(false);
    bench.discharge().off();
    assertTrue(bench.discharge().discharging(), "off is the safe position");
  }

  @Test
  final void interlockAndBoardAgreeAboutTheChain() {
    assertTrue(bench.interlock().whole());
    assertTrue(bench.relay().heartbeat().interlockWhole());
  }

  @Test
  final void theRelayIsWhereItWasPut() {
    Relay board = bench.relay();
    board.relay(true);
    assertTrue(board.heartbeat().relayClosed());
    board.relay(false);
    assertFalse(board.heartbeat().relayClosed());
    board.relay(true);
    board.off();
    assertFalse(board.heartbeat().relayClosed());
  }

  @Test
  final void samplesFollowEachOtherFromZeroEachTimeItIsStarted() {
    Digitizer board = bench.digitizer();
    for (int wanted_Hz : new int[] {1000, 2000}) {
      int rate_Hz = Math.min(wanted_Hz, board.most_Hz());
      int samples = Math.max(1, Math.min(20, rate_Hz / 50));
      board.start(rate_Hz, samples);
      long next = 0;
      for (int i = 0; i < 5; i++) {
        Frame frame = board.next(PATIENCE);
        assertEquals(next, frame.first());
        assertEquals(samples, frame.samples());
        assertEquals(board.channels().size(), frame.codes().length);
        assertEquals(0, frame.brokenBefore());
        next += frame.samples();
      }
      bench.relay().heartbeat();
      assertEquals(next, board.next(PATIENCE).first(), "a heartbeat costs no sample");
      board.stop();
    }
    board.stop(); // as often as one likes
  }

  @Test
  final void theBoardNamesItsFixtureAndItsChannels() {
    assertNotEquals(Optional.of(""), bench.relay().fixture());
    Set<String> names = new HashSet<>();
    bench.digitizer().channels().forEach(c -> names.add(c.name()));
    assertTrue(names.containsAll(Set.of("output", "load")), names.toString());
    Optional<Digitizer.Channel> output =
        bench.digitizer().channels().stream().filter(c -> c.name().equals("output")).findFirst();
    assertEquals("V", output.orElseThrow().unit());
    assertTrue(output.orElseThrow().lsb() > 0);
  }

  @Test
  final void theThermometerReadsACaseThatNobodyHasHeated() {
    assumeTrue(bench.thermometer().isPresent(), "this bench has no thermometer");
    Measurement cold = bench.thermometer().orElseThrow().temperature();
    assertEquals(Unit.CELSIUS, cold.unit());
    assertTrue(cold.u() > 0, "a real instrument is never exact");
    assertTrue(cold.value() > -20 && cold.value() < 60, cold.toString());
  }

  @Test
  final void theMeterFindsNoVoltageWhereNothingIsOn() {
    assumeTrue(bench.meter().isPresent(), "this bench has no meter");
    Meter meter = bench.meter().orElseThrow();
    for (Meter.Terminals terminals : Meter.Terminals.values()) {
      meter.to(terminals);
      Measurement volts = meter.voltage();
      assertEquals(Unit.VOLT, volts.unit());
      assertTrue(volts.u() > 0, "a real instrument is never exact");
      assertEquals(0, volts.value(), 1 + 4 * volts.u());
      meter.resistance().ifPresent(r -> assertEquals(Unit.OHM, r.unit()));
      meter.diode().ifPresent(d -> assertEquals(Unit.VOLT, d.unit()));
    }
  }

  @Test
  final void whatIsGivenBackCanBeHadAgain() throws IOException {
    bench.close();
    bench.close();
    bench = fresh();
    assertFalse(bench.relay().heartbeat().relayClosed());
  }
}
