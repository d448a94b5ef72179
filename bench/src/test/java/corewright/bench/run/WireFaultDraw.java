package corewright.bench.run;

import corewright.fixtures.emulate.fault.WireFault;
import corewright.fixtures.emulate.fault.WireFault.Kind;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.util.ArrayList;
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
    List<WireFault> cells = new ArrayList<>();
    for (double at_s : FaultyRun.STEPS_S) {
      long sample = Math.round(at_s * FaultyRun.RATE_HZ);
      OF_A_FRAME.forEach(kind -> cells.add(WireFault.atSample("digitizer", kind, sample)));
      cells.add(WireFault.atSample("interlock", Kind.CHAIN_OPENS, sample));
      cells.add(WireFault.atSample("source", Kind.STAYS_ON, sample));
      for (String role : ROLES.subList(0, ROLES.size() - 1)) {
        cells.add(WireFault.atSample(role, Kind.NO_ANSWER, sample));
        cells.add(WireFault.atSample(role, Kind.UNPLUGGED, sample));
      }
    }
    for (Kind kind : OF_A_MESSAGE) {
      cells.add(WireFault.onText("switch", kind, "ROUTe:OPEN .*"));
      cells.add(WireFault.onText("switch", kind, "ROUTe:CLOSe .*"));
      cells.add(WireFault.onText("source", kind, "VOLTage:PROTection.*"));
      cells.add(WireFault.onText("source", kind, "OUTPut ON.*"));
      cells.add(WireFault.onText("source", kind, "OUTPut OFF.*"));
      cells.add(WireFault.onText("source", kind, "VOLTage 12\\.500.*"));
      cells.add(WireFault.onText("load", kind, "SOURce:CURRent 2.*"));
      cells.add(WireFault.onText("load", kind, "INPut ON.*"));
      cells.add(WireFault.onText("meter", kind, "MEASure:RESistance.*"));
      cells.add(WireFault.onText("meter", kind, "MEASure:VOLTage.*"));
      cells.add(WireFault.onText("thermometer", kind, "MEASure.*"));
      cells.add(WireFault.onText("interlock", kind, "SENSe:CHAin.*"));
      cells.add(WireFault.onText("digitizer", kind, "RELAY 1"));
      cells.add(WireFault.onText("digitizer", kind, "START"));
    }
    List<FaultyRun> runs =
        new ArrayList<>(
            cells.stream()
                .map(fault -> new FaultyRun(unit, List.of(fault), Optional.empty()))
                .toList());
    ROLES.forEach(role -> runs.add(new FaultyRun(unit, List.of(), Optional.of(role))));
    return runs;
  }
}
