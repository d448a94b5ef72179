package corewright.bench.run;

import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.fault.WireFault.Kind;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.SlowPulses;
import corewright.profiles.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Faults on the wire: drawn at random, and step by step each by itself. */
final class WireFaultDraw {
  private static final List<String> ROLES =
      List.of("load", "source", "switch", "interlock", "thermometer", "meter", "digitizer");

  /** Messages that a run sends at most to each role, so that every one of them may be hit. */
  private static final Map<String, Integer> MESSAGES =
      Map.of(
          "load", 20,
          "source", 70,
          "switch", 30,
          "interlock", 6,
          "thermometer", 25,
          "meter", 20,
          "digitizer", 40);

  private static final List<Kind> OF_A_MESSAGE =
      List.of(
          Kind.NO_ANSWER,
          Kind.ANSWER_LOST,
          Kind.HALF_ANSWER,
          Kind.SLOW_ANSWER,
          Kind.BABBLES,
          Kind.GARBAGE,
          Kind.WRONG_IDENTITY,
          Kind.REFUSED,
          Kind.UNPLUGGED);

  private static final List<Kind> OF_A_FRAME =
      List.of(
          Kind.CRC_ERROR,
          Kind.LOST_FRAME,
          Kind.REPEATED_FRAME,
          Kind.HALF_ANSWER,
          Kind.GARBAGE,
          Kind.NO_ANSWER,
          Kind.UNPLUGGED);

  /** More samples than the slow steps before count, so that it comes in the fast one. */
  private static final long FAST_SAMPLE = 12_000;

  private WireFaultDraw() {}

  /** One to three faults anywhere. */
  static List<WireFault> some(Random random) {
    List<WireFault> faults = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      faults.add(one(random));
    }
    return faults;
  }

  private static WireFault one(Random random) {
    String role = ROLES.get(random.nextInt(ROLES.size()));
    long sample = random.nextInt((int) (FaultyRun.END_S * FaultyRun.RATE_HZ));
    switch (random.nextInt(8)) {
      case 0 -> {
        return WireFault.atSample("interlock", Kind.CHAIN_OPENS, sample);
      }
      case 1 -> {
        return WireFault.onText("source", Kind.STAYS_ON, "OUTPut ON.*");
      }
      case 2, 3 -> {
        return WireFault.atSample("digitizer", any(OF_A_FRAME, random), sample);
      }
      default -> {
        int message = random.nextInt(MESSAGES.getOrDefault(role, 20));
        return WireFault.atMessage(role, any(OF_A_MESSAGE, random), message);
      }
    }
  }

  private static Kind any(List<Kind> kinds, Random random) {
    return kinds.get(random.nextInt(kinds.size()));
  }

  /** Every step with every single fault that can come in it. */
  static List<FaultyRun> matrix(UnitParameters unit) {
    List<FaultyRun> runs = new ArrayList<>();
    for (double at_s : FaultyRun.STEPS_S) {
      long sample = Math.round(at_s * FaultyRun.RATE_HZ);
      inStep(sample).forEach(fault -> runs.add(run(unit, fault, Optional.empty())));
    }
    for (Place place : PLACES) {
      inStep(place.sample())
          .forEach(fault -> runs.add(run(unit, fault, Optional.of(place.step()))));
    }
    Optional<Step> crank =
        PLACES.stream().map(Place::step).filter(s -> s.kind() == Step.Kind.CRANK).findFirst();
    Optional<Step> pulses = Optional.of(PLACES.get(PLACES.size() - 1).step());
    for (Kind kind : OF_A_MESSAGE) {
      MESSAGES_THAT_MATTER.forEach(
          m -> runs.add(run(unit, WireFault.onText(m[0], kind, m[1]), Optional.empty())));
      OF_SWING.forEach(m -> runs.add(run(unit, WireFault.onText("source", kind, m), crank)));
      OF_PULSES.forEach(m -> runs.add(run(unit, WireFault.onText("load", kind, m), pulses)));
    }
    ROLES.forEach(role -> runs.add(new FaultyRun(unit, List.of(), Optional.of(role))));
    return runs;
  }

  private static FaultyRun run(UnitParameters unit, WireFault fault, Optional<Step> also) {
    return new FaultyRun(unit, List.of(fault), Optional.empty(), also);
  }

  private static List<WireFault> inStep(long sample) {
    List<WireFault> faults = new ArrayList<>();
    OF_A_FRAME.forEach(kind -> faults.add(WireFault.atSample("digitizer", kind, sample)));
    faults.add(WireFault.atSample("interlock", Kind.CHAIN_OPENS, sample));
    faults.add(WireFault.atSample("source", Kind.STAYS_ON, sample));
    for (String role : ROLES.subList(0, ROLES.size() - 1)) {
      faults.add(WireFault.atSample(role, Kind.NO_ANSWER, sample));
      faults.add(WireFault.atSample(role, Kind.UNPLUGGED, sample));
    }
    return faults;
  }

  private static final List<String[]> MESSAGES_THAT_MATTER =
      List.of(
          of("switch", "ROUTe:OPEN .*"),
          of("switch", "ROUTe:CLOSe .*"),
          of("source", "VOLTage:PROTection.*"),
          of("source", "OUTPut ON.*"),
          of("source", "OUTPut OFF.*"),
          of("source", "VOLTage 12\\.500.*"),
          of("load", "SOURce:CURRent 2.*"),
          of("load", "INPut ON.*"),
          of("meter", "MEASure:RESistance.*"),
          of("meter", "MEASure:VOLTage.*"),
          of("thermometer", "MEASure.*"),
          of("interlock", "SENSe:CHAin.*"),
          of("digitizer", "RELAY 1"),
          of("digitizer", "START"));

  private static final List<String> OF_PULSES =
      List.of("SOURce:PULSe.*", "INPut OFF.*", "SOURce:FUNCtion:SHAPe DC.*");

  private static final List<String> OF_SWING = List.of("VOLTage:SWINg.*", "FUNCtion DC.*");

  private static String[] of(String role, String message) {
    return new String[] {role, message};
  }

  /**
   * A step that is no hold, short, with a moment in it.
   *
   * @param sample since the digitizer was started last
   */
  private record Place(Step step, long sample) {}

  /** At the profile's rate where that will do, so that the samples are counted through. */
  private static final List<Place> PLACES =
      List.of(
          place(Step.Kind.START, 12.5, 0, 0.3, Step.Detail.NONE, 2.4),
          place(Step.Kind.QUIESCENT, 12.5, 0, 0.3, Step.Detail.NONE, 0.15),
          place(Step.Kind.LINES, 0, 0, 0, levels(1, 9, 12.5, 15.8), 0.3),
          place(
              Step.Kind.LOCK_OUT,
              10,
              0,
              0,
              new Step.Detail(Optional.empty(), 6, 4, List.of(), 1),
              1.6),
          place(
              Step.Kind.FALLING,
              10.5,
              1,
              0,
              new Step.Detail(Optional.empty(), 9.5, 2, List.of(), 1),
              0.9),
          place(Step.Kind.HIGH_LINE, 15.8, 0, 0.3, Step.Detail.NONE, 0.15),
          place(Step.Kind.CRANK, 0, 1, 0, cranked(), 0.5),
          place(Step.Kind.SURVIVAL, 0, 0, 0, levels(1, 12.5, 6.5, 12.5), 0.5),
          place(Step.Kind.DECAY, 12.5, 0, 1, Step.Detail.NONE, 0.7),
          place(Step.Kind.THERMAL, 12.5, 1, 0.4, Step.Detail.NONE, 0.2),
          new Place(
              step(Step.Kind.BURST, 12.5, 1, 0.02, StepsOfTheTradeTest.at(1.5e6)), FAST_SAMPLE),
          new Place(
              step(
                  Step.Kind.PULSES,
                  12.5,
                  0,
                  0.1,
                  new Step.Detail(
                      Optional.of(250e3),
                      0,
                      0,
                      List.of(),
                      1,
                      Optional.empty(),
                      true,
                      Optional.of(
                          new Step.Pulses(
                              10,
                              0.4e-3,
                              440,
                              List.of(new Step.Slower(SlowPulses.IDLE, 93, 0.1)))))),
              FAST_SAMPLE));

  private static Step.Detail cranked() {
    return new Step.Detail(
        Optional.empty(),
        0,
        0,
        List.of(
            new Step.Level(12.5, 0.2, false),
            new Step.Level(9.5, 0.1, false),
            new Step.Level(10.35, 0.3, true, Optional.of(new Step.Swing(0.4, 13)))),
        2,
        Optional.empty(),
        true,
        Optional.of(new Step.Pulses(10, 0.4e-3, 27)),
        0.4);
  }

  private static Place place(
      Step.Kind kind, double input_V, double load_A, double hold_s, Step.Detail detail, double in) {
    double from_s = kind == Step.Kind.DECAY ? FaultyRun.AFTER_S : FaultyRun.BEFORE_S;
    return new Place(
        step(kind, input_V, load_A, hold_s, detail), Math.round((from_s + in) * FaultyRun.RATE_HZ));
  }

  private static Step step(
      Step.Kind kind, double input_V, double load_A, double hold_s, Step.Detail detail) {
    return new Step("also", kind, kind.name(), input_V, 16, load_A, hold_s, false, detail);
  }

  private static Step.Detail levels(int repeats, double... inputs_V) {
    List<Step.Level> levels =
        Arrays.stream(inputs_V).mapToObj(v -> new Step.Level(v, 0.2, true)).toList();
    return new Step.Detail(Optional.empty(), 0, 0, levels, repeats);
  }
}
