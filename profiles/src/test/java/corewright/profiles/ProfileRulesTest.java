package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.files.Mistake;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProfileRulesTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();

  private static final String GOOD =
      """
      {
        "id": "short", "revision": 1, "family": "sd48", "title": "Short", "purpose": "arrival",
        "sampleRate_Hz": 250000, "settle_s": 0.1, "guard_s": 0.01,
        "feeds": [ { "name": "input" } ],
        "provingLoad_A": 1,
        "temperature": { "nominal_C": 23, "tolerance_K": 5 },
        "steps": [
          { "id": "dead", "kind": "deadCheck", "title": "Dead check" },
          { "id": "first", "kind": "firstPower", "title": "First power", "input_V": 12.5, "inputLimit_A": 0.5, "hold_s": 2 },
          { "id": "rest", "kind": "hold", "title": "At rest", "input_V": 12.5, "inputLimit_A": 20, "load_A": 0, "hold_s": 0.4 },
          { "id": "full", "kind": "hold", "title": "Full load", "input_V": 12.5, "inputLimit_A": 20, "load_A": 2, "hold_s": 2.2 },
          { "id": "end", "kind": "discharge", "title": "Discharge" }
        ],
        "limits": [
          { "id": "full", "quantity": "output", "unit": "V", "side": "atLeast", "pass": 46.5, "fail": 45, "from_A": 1.9, "headline": true, "why": "set-point" },
          { "id": "drift", "quantity": "drift", "unit": "V/min", "side": "atLeast", "pass": -6, "fail": -12, "from_A": 1.9, "why": "steady" },
          { "id": "ripple", "quantity": "ripplePeakToPeak", "unit": "V", "side": "atMost", "pass": 0.3, "fail": 0.4, "from_A": 1.9, "why": "resistance" },
          { "id": "step", "quantity": "undershoot", "unit": "V/A", "side": "atMost", "pass": 0.3, "fail": 0.5, "from_A": 1.9,
            "edge": { "from_A": 0, "to_A": 0.1, "least_A": 0.5 }, "why": "loop" }
        ]
      }
      """;

  @TempDir private Path folder;

  @Test
  void theFileThatIsEditedBelowIsGood() {
    Path file = Edited.file(folder, GOOD);
    assertEquals("short", CATALOGUE.readProfile(file).id());
    assertEquals(List.of(), CATALOGUE.cautions(file));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "family": "sd48" | "family": "sd84" | 2 | /family | there is no family 'sd84' | Did you mean 'sd48'?
          "id": "rest"     | "id": "full"     | 11 | /steps/3/id | two steps are called 'full' | Rename one of them
          { "id": "dead", "kind": "deadCheck", "title": "Dead check" }, | `` | 9 | /steps/0 | 'first' powers the unit before a dead check | Put a step of kind deadCheck before it
          "kind": "firstPower" | "load_A": 0, "judged": false, "kind": "hold" | 9 | /steps/1 | 'first' is the first step with power and has no low limit | Put a step of kind firstPower before it
          , { "id": "end", "kind": "discharge", "title": "Discharge" } | `` | 11 | /steps/3 | the profile ends with the unit charged, after 'full' | End it with a step of kind discharge
          { "id": "rest" | { "id": "e", "kind": "discharge", "title": "E" }, { "id": "rest" | 10 | /steps/2/kind | steps follow after the discharge | Discharge in the last step only
          "load_A": 2      | "load_A": 2.5    | 11 | /steps/3/load_A | 2.5 A is above the rated load of sd48, 2 A | Write at most 2
          "title": "First power", "input_V": 12.5 | "title": "First power", "input_V": 24 | 9 | /steps/1/input_V | 24 V is above what sd48 may be given, 16 V | Write at most 16
          "title": "At rest", "input_V": 12.5 | "title": "At rest", "input_V": 8.5 | 10 | /steps/2/input_V | with 8.5 V the input is below 9 V and every run would be void | Write at least 10, or "supplyDrops": true if the supply is dropped on purpose
          "inputLimit_A": 20, "load_A": 2 | "inputLimit_A": 8, "load_A": 2 | 11 | /steps/3/inputLimit_A | 8 A cuts the supply off: a good unit may need 10.7 A here | Write more than that
          "hold_s": 0.4    | "hold_s": 0.11   | 10 | /steps/2/hold_s | 0.11 s is over before settle_s and guard_s are, 0.11 s | Hold longer, or settle shorter
          "provingLoad_A": 1 | "provingLoad_A": 3 | 7 | /steps | no judged hold draws provingLoad_A, 3 A | Add a loaded hold: a reading at rest proves nothing
          "id": "ripple"   | "id": "drift"    | 17 | /limits/2/id | two limits are called 'drift' | Rename one of them
          "quantity": "ripplePeakToPeak" | "quantity": "ripplePeakToPaek" | 17 | /limits/2/quantity | nothing is measured as 'ripplePeakToPaek' | Did you mean 'ripplePeakToPeak'?
          "unit": "V/min"  | "unit": "V/s"    | 16 | /limits/1/unit | drift is held in V/min, not in V/s | Write "V/min", and pass and fail in it
          "unit": "V/A"    | "unit": "V"      | 18 | /limits/3/unit | undershoot is held in V/A, not in V | Write "V/A", and pass and fail in it
          "fail": 45,      | "fail": 47,      | 15 | /limits/0/fail | the marginal band lies on the good side: pass at least 46.5, fail 47 | Write at most 46.5, or exchange pass and fail
          "fail": 0.4      | "fail": 0.2      | 17 | /limits/2/fail | the marginal band lies on the good side: pass at most 0.3, fail 0.2 | Write at least 0.3, or exchange pass and fail
          "headline": true, | `` | 14 | /limits | no limit is the headline | Write "headline": true at the limit that the sentence and the picture speak of
          "from_A": 1.9, "why": "steady" | "from_A": 1.9, "headline": true, "why": "steady" | 16 | /limits/1/headline | 'drift' is a second headline | Leave "headline" at one limit
          "from_A": 1.9, "why": "resistance" | "from_A": 0.5, "to_A": 1.5, "why": "resistance" | 17 | /limits/2 | 'ripple' can apply to no judged hold | Match from_A, to_A, fromHold_s and edge with the steps
          "to_A": 0.1, "least_A": 0.5 | "to_A": 0.1, "least_A": 5 | 18 | /limits/3 | 'step' can apply to no judged hold | Match from_A, to_A, fromHold_s and edge with the steps
          "hold_s": 2.2    | "hold_s": 0.9    | 16 | /limits/1 | a drift is not read from a hold under 1 s, as 'full' is | Add "fromHold_s": 1, or hold longer
          "fail": 45       | "fail": 30       | 15 | /limits/0/fail | 30 V is never reached: the run is cut off at outputUnder_V | Write more than 30
          "settle_s"       | "setle_s"        | 3 | /setle_s | nothing here is called 'setle_s' | Did you mean 'settle_s'?
          "hold_s": 2.2    | "hold_ms": 2200  | 11 | /steps/3/hold_ms | nothing here is called 'hold_ms' | Write 'hold_s', with the number in s
          """)
  void saysWhereWhatAndWhatToDo(
      String was, String now, int line, String where, String message, String suggestion) {
    String good =
        was.startsWith(",")
            ? GOOD.replace("},\n    { \"id\": \"end\"", "}\n    , { \"id\": \"end\"")
            : GOOD;
    List<Mistake> mistakes = Edited.mistakes(folder, good, was, now, CATALOGUE::readProfile);
    String file = folder.resolve("edited.json").toString();
    assertEquals(List.of(new Mistake(file, line, where, message, suggestion)), mistakes);
  }

  /** What stands for REST below is put before the first hold; the mistake is looked for in it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "kind": "start", "input_V": 12.5, "inputLimit_A": 16 | /steps/2 | 'hold_s' is missing | Add "hold_s"
          "kind": "quiescent", "input_V": 12.5, "inputLimit_A": 16, "hold_s": 1, "ramp_VperS": 1 | /steps/2/ramp_VperS | a step of kind quiescent takes no ramp_VperS | Leave it out, or choose the kind that takes it
          "kind": "lockOut", "input_V": 10, "inputLimit_A": 16, "to_V": 11, "ramp_VperS": 1 | /steps/2/to_V | the ramp goes down, and 11 V is no lower | Write less than input_V, 10
          "kind": "lockOut", "input_V": 10, "inputLimit_A": 16, "to_V": 5, "ramp_VperS": 9 | /steps/2/ramp_VperS | 9 V/s is faster than a source follows | Write at most 5
          "kind": "lines", "inputLimit_A": 16, "levels": [{ "input_V": 9, "hold_s": 1 }, { "input_V": 17, "hold_s": 1 }] | /steps/2/levels/1/input_V | 17 V is above what sd48 may be given, 16 V | Write at most 16
          "kind": "lines", "inputLimit_A": 16, "levels": [{ "input_V": 8, "hold_s": 1 }, { "input_V": 15, "hold_s": 1 }] | /steps/2/levels/0/input_V | below 9 V nothing is said about a unit | Write at least 9
          "kind": "lines", "inputLimit_A": 16, "levels": [{ "input_V": 9, "hold_s": 0.1 }, { "input_V": 15, "hold_s": 1 }] | /steps/2/levels/0/hold_s | 0.1 s is over before settle_s is, 0.1 s | Hold longer, or settle shorter
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "levels": [{ "input_V": 9, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 2, "judged": false }] | /steps/2/levels | no level of 'new' is judged | Leave out "judged": false at the plateau
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "levels": [{ "input_V": 8, "hold_s": 2 }, { "input_V": 10, "hold_s": 2 }] | /steps/2/levels/0/input_V | below 9 V nothing is said about a unit, and every run would be void | Write at least 10, or "judged": false
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 1 }] | /steps/2/levels/1/hold_s | a drift is not read from 1 s | Hold for more than 1 s
          "kind": "crank", "inputLimit_A": 16, "load_A": 2.5, "repeats": 5, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 2 }] | /steps/2/load_A | 2.5 A is above the rated load of sd48, 2 A | Write at most 2
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "pulse_A": 1, "width_s": 0.0004, "rate_Hz": 27, "sampleRate_Hz": 100000, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 2 }] | /steps/2/pulse_A | a pulse of 1 A is none above 1 A | Write more than load_A
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 27, "sampleRate_Hz": 20000, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 2 }] | /steps/2/width_s | with 20000 samples a second the dip of a pulse is not seen | Write at least 40000 as sampleRate_Hz
          "kind": "crank", "inputLimit_A": 7, "load_A": 1, "repeats": 5, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 27, "sampleRate_Hz": 100000, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 2 }] | /steps/2/inputLimit_A | 7 A cuts the supply off: a good unit may need 7.3 A here | Write more than that
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "pulse_A": 10, "rate_Hz": 27, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10, "hold_s": 2 }] | /steps/2 | 'width_s' is missing | Add "width_s"
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 9.1, "hold_s": 2, "swing_Vpp": 0.4, "swing_Hz": 13 }] | /steps/2/levels/1/swing_Vpp | the troughs of the swing lie at 8.9 V, below 9 V, and every run would be void | Write less, or a higher input_V
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "levels": [{ "input_V": 15.8, "hold_s": 2, "judged": false, "swing_Vpp": 0.4, "swing_Hz": 13 }, { "input_V": 10, "hold_s": 2 }] | /steps/2/levels/0/swing_Vpp | the crests of the swing lie at 16 V, above 15.84 V | Write less, or a lower input_V
          "kind": "crank", "inputLimit_A": 16, "load_A": 1, "repeats": 5, "levels": [{ "input_V": 8, "hold_s": 2, "judged": false }, { "input_V": 10.4, "hold_s": 2, "swing_Vpp": 0.4, "swing_Hz": 1.2 }] | /steps/2/levels/1/swing_Hz | fewer than 3 swings in 2 s | Hold for longer
          "kind": "lines", "inputLimit_A": 16, "levels": [{ "input_V": 9, "hold_s": 1, "swing_Vpp": 0.1, "swing_Hz": 13 }, { "input_V": 15, "hold_s": 1 }] | /steps/2/levels/0/swing_Vpp | the input stands still in a step of kind lines | Leave the swing out
          "kind": "survival", "inputLimit_A": 16, "levels": [{ "input_V": 12.5, "hold_s": 1 }, { "input_V": 6.5, "hold_s": 0.03 }] | /steps/2/levels | the input does not come back to a good one, 10 V, in which a unit would | Add a level
          "kind": "survival", "inputLimit_A": 16 | /steps/2 | 'levels' is missing | Add "levels"
          "kind": "highLine", "input_V": 15, "inputLimit_A": 16, "hold_s": 1, "rest_s": 2 | /steps/2/rest_s | a step of kind highLine takes no rest_s | Leave it out, or choose the kind that takes it
          "kind": "highLine", "input_V": 16, "inputLimit_A": 16, "hold_s": 1 | /steps/2/input_V | 16 V leave the source no room below 16 V, where the run ends | Write at most 15.84
          "kind": "lines", "inputLimit_A": 16, "levels": [{ "input_V": 9, "hold_s": 1 }, { "input_V": 15.9, "hold_s": 1 }] | /steps/2/levels/1/input_V | 15.9 V leave the source no room below 16 V, where the run ends | Write at most 15.84
          "kind": "byHand" | /steps/2 | 'quantity' is missing | Add "quantity"
          "kind": "byHand", "quantity": "tapStop" | /steps/2/quantity | 'tapStop' is not read by hand | Did you mean 'tapStep'?
          "kind": "highLine", "input_V": 15, "inputLimit_A": 16, "hold_s": 1, "needed": false | /steps/2/needed | a step of kind highLine takes no needed | Leave it out, or choose the kind that takes it
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 1, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000, "load_A": 1 | /steps/2/pulse_A | a pulse of 1 A is none above 1 A | Write more than load_A
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 3, "width_s": 0.0012, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000 | /steps/2/width_s | pulses of 0.0012 s, 440 a second, leave no rest | Write less than 0.001136
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 12, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000 | /steps/2/pulse_A | the pulses take 2.112 A on the whole, above the rated load of sd48, 2 A | Write less, or fewer or shorter pulses
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 50000 | /steps/2/sampleRate_Hz | with 50000 samples a second neither capacitance nor series resistance is told | Write at least 100000
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0001, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000 | /steps/2/sampleRate_Hz | with 100000 samples a second neither capacitance nor series resistance is told | Write at least 160000
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 0.14, "sampleRate_Hz": 100000 | /steps/2/hold_s | fewer than 20 pulses follow on settle_s | Hold for longer
          "kind": "pulses", "input_V": 9.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000 | /steps/2/input_V | with 9.5 V the input is no good one | Write at least 10
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 8, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000 | /steps/2/inputLimit_A | 8 A cuts the supply off: a good unit may need 9.4 A here | Write more than that
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000, "idle": { "rate_Hz": 440, "hold_s": 1 } | /steps/2/idle/rate_Hz | 440 pulses a second are not slower than rate_Hz | Write less than 440
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000, "idle": { "rate_Hz": 93, "hold_s": 1 }, "cranking": { "rate_Hz": 94, "hold_s": 1 } | /steps/2/cranking/rate_Hz | 94 pulses a second are not slower than idle | Write less than 93
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000, "cranking": { "rate_Hz": 27, "hold_s": 0.4 } | /steps/2/cranking/hold_s | fewer than 10 pulses follow on settle_s | Hold for longer
          "kind": "pulses", "input_V": 12.5, "inputLimit_A": 16, "pulse_A": 10, "width_s": 0.0004, "rate_Hz": 440, "hold_s": 1, "sampleRate_Hz": 100000, "cranking": { "rate_Hz": 27 } | /steps/2/cranking | 'hold_s' is missing | Add "hold_s": for how long, s
          "kind": "highLine", "input_V": 15, "inputLimit_A": 16, "hold_s": 1, "idle": { "rate_Hz": 93, "hold_s": 1 } | /steps/2/idle | a step of kind highLine takes no idle | Leave it out, or choose the kind that takes it
          "kind": "falling", "input_V": 9.9, "inputLimit_A": 16, "to_V": 9.2, "ramp_VperS": 1, "load_A": 1.3 | /steps/2/input_V | with 9.9 V the input is no good one | Write at least 10
          "kind": "falling", "input_V": 10.5, "inputLimit_A": 16, "to_V": 8.9, "ramp_VperS": 1, "load_A": 1.3 | /steps/2/to_V | below 9 V nothing is said about a unit | Write at least 9
          "kind": "falling", "input_V": 10.5, "inputLimit_A": 16, "to_V": 10.5, "ramp_VperS": 1, "load_A": 1.3 | /steps/2/to_V | the ramp goes down, and 10.5 V is no lower | Write less than input_V, 10.5
          "kind": "falling", "input_V": 10.5, "inputLimit_A": 16, "to_V": 9.2, "ramp_VperS": 6, "load_A": 1.3 | /steps/2/ramp_VperS | 6 V/s is faster than a source follows | Write at most 5
          "kind": "falling", "input_V": 10.5, "inputLimit_A": 9, "to_V": 9.2, "ramp_VperS": 1, "load_A": 1.3 | /steps/2/inputLimit_A | 9 A cuts the supply off: a good unit may need 9.4 A here | Write more than that
          "kind": "falling", "input_V": 10.5, "inputLimit_A": 16, "to_V": 9.2, "ramp_VperS": 1 | /steps/2 | 'load_A' is missing | Add "load_A"
          "kind": "burst", "input_V": 12.5, "inputLimit_A": 16, "load_A": 1, "hold_s": 0.2, "sampleRate_Hz": 1000000 | /steps/2/sampleRate_Hz | ripple below 300 kHz is not told with 1000000 samples a second | Write at least 1500000
          "kind": "burst", "input_V": 12.5, "inputLimit_A": 16, "load_A": 1, "hold_s": 0.2, "sampleRate_Hz": 1500000, "pulse_A": 2 | /steps/2/pulse_A | a step of kind burst takes no pulse_A | Leave it out, or choose the kind that takes it
          "kind": "highLine", "input_V": 17, "inputLimit_A": 16, "hold_s": 1 | /steps/2/input_V | 17 V is above what sd48 may be given, 16 V | Write at most 16
          """)
  void aStepThatIsNoHoldIsHeldToItsOwnRules(
      String step, String where, String message, String suggestion) {
    List<Mistake> mistakes = withStep(step, "{ \"id\": \"rest\"");
    assertEquals(
        List.of(
            new Mistake(folder.resolve("edited.json").toString(), 10, where, message, suggestion)),
        mistakes);
  }

  @Test
  void aStepThatIsNoHoldStandsBesideTheHoldsAndOnce() {
    String quiescent =
        "\"kind\": \"quiescent\", \"input_V\": 12.5, \"inputLimit_A\": 16, \"hold_s\": 1";
    assertEquals(
        List.of("'new' stands between the holds"),
        withStep(quiescent, "{ \"id\": \"full\", \"kind\": \"hold\"").stream()
            .map(Mistake::message)
            .toList());
    assertEquals(
        List.of("'new' is a second step of this kind"),
        withStep(
                quiescent + " }, { \"id\": \"other\", \"title\": \"Other\", " + quiescent,
                "{ \"id\": \"rest\"")
            .stream()
            .map(m -> m.message().replace("other", "new"))
            .toList());
  }

  @Test
  void afterADecayNothingButTheDischargeFollows() {
    String decay = "\"kind\": \"decay\", \"input_V\": 12.5, \"inputLimit_A\": 16, \"hold_s\": 20";
    assertEquals(
        List.of("'rest' follows on a decay, without feed"),
        withStep(decay, "{ \"id\": \"rest\"").stream().map(Mistake::message).toList());
  }

  @Test
  void aReadingThatNoStepTakesIsNotALimit() {
    List<Mistake> mistakes =
        Edited.mistakes(
            folder,
            GOOD,
            "\"quantity\": \"drift\", \"unit\": \"V/min\"",
            "\"quantity\": \"lockOutOff\", \"unit\": \"V\"",
            CATALOGUE::readProfile);
    assertEquals(
        List.of("no step of this profile reads 'lockOutOff': Add a step of kind lockOut"),
        mistakes.stream().map(m -> m.message() + ": " + m.suggestion()).toList());
  }

  /** What only a unit that lets go shows is no limit: a good one would never be judged. */
  @Test
  void howFarItHoldsIsNoLimit() {
    List<Mistake> mistakes =
        Edited.mistakes(
            folder,
            GOOD.replace(
                "{ \"id\": \"rest\"",
                "{ \"id\": \"falling\", \"title\": \"Falling\", "
                    + FALLING
                    + " }, { \"id\": \"rest\""),
            "\"quantity\": \"drift\", \"unit\": \"V/min\"",
            "\"quantity\": \"holdsTo\", \"unit\": \"V\"",
            CATALOGUE::readProfile);
    assertEquals(
        List.of("Hold fallingLowest against its limit"),
        mistakes.stream().map(Mistake::suggestion).toList());
  }

  private static final String FALLING =
      "\"kind\": \"falling\", \"input_V\": 10.5, \"inputLimit_A\": 16, \"to_V\": 9.2,"
          + " \"ramp_VperS\": 1, \"load_A\": 1.3";

  @Test
  void whatASurvivalTellsIsHeldAgainstNothing() {
    String survival =
        "{ \"id\": \"deep\", \"kind\": \"survival\", \"title\": \"Deep\", \"inputLimit_A\": 16,"
            + " \"levels\": [{ \"input_V\": 6.5, \"hold_s\": 1 }, { \"input_V\": 12, \"hold_s\": 1"
            + " }] },";
    List<Mistake> mistakes =
        Edited.mistakes(
            folder,
            GOOD.replace("{ \"id\": \"rest\"", survival + "{ \"id\": \"rest\""),
            "\"quantity\": \"drift\", \"unit\": \"V/min\"",
            "\"quantity\": \"survivalBack\", \"unit\": \"s\"",
            CATALOGUE::readProfile);
    assertEquals(
        List.of("'survivalBack' is told and not judged: Leave the limit out"),
        mistakes.stream().map(m -> m.message() + ": " + m.suggestion()).toList());
  }

  /** At the rated rate alone, an idle rate is not read. */
  @Test
  void aLimitAtARateNeedsThePulsesAtIt() {
    String pulses =
        "{ \"id\": \"pulses\", \"kind\": \"pulses\", \"title\": \"Pulses\", \"input_V\": 12.5,"
            + " \"inputLimit_A\": 16, \"pulse_A\": 10, \"width_s\": 0.0004, \"rate_Hz\": 440,"
            + " \"hold_s\": 1, \"sampleRate_Hz\": 100000 }, ";
    List<Mistake> mistakes =
        Edited.mistakes(
            folder,
            GOOD.replace("{ \"id\": \"rest\"", pulses + "{ \"id\": \"rest\""),
            "\"quantity\": \"drift\", \"unit\": \"V/min\"",
            "\"quantity\": \"pulsedOutputIdle\", \"unit\": \"V\"",
            CATALOGUE::readProfile);
    assertEquals(
        List.of(
            "no step of this profile reads 'pulsedOutputIdle': Add \"idle\" to the step of kind"
                + " pulses"),
        mistakes.stream().map(m -> m.message() + ": " + m.suggestion()).toList());
  }

  private List<Mistake> withStep(String step, String before) {
    return Edited.mistakes(
        folder,
        GOOD,
        before,
        "{ \"id\": \"new\", \"title\": \"New\", " + step + " }, " + before,
        CATALOGUE::readProfile);
  }

  @Test
  void findsMistakesOfTheSchemaAndOfTheRulesTogether() {
    String two =
        GOOD.replace("\"guard_s\": 0.01", "\"guard_s\": \"0,01\"")
            .replace("\"load_A\": 2,", "\"load_A\": 2.4,");
    List<Mistake> mistakes =
        Edited.mistakes(
            folder, two, "\"side\": \"atMost\"", "\"side\": \"below\"", CATALOGUE::readProfile);
    assertEquals(
        List.of("3 /guard_s", "11 /steps/3/load_A", "17 /limits/2/side", "18 /limits/3/side"),
        mistakes.stream().map(m -> m.line() + " " + m.where()).toList());
  }

  @Test
  void aSampleRateUnderTheRippleIsACaution() {
    List<Mistake> cautions =
        CATALOGUE.cautions(Edited.file(folder, GOOD.replace("250000", "100000")));
    assertEquals(1, cautions.size());
    assertEquals("/limits/2/quantity", cautions.get(0).where());
    assertEquals("Sample with more than 130000 Hz to see it", cautions.get(0).suggestion());
  }

  @Test
  void aToleratedInputIsACaution() {
    List<Mistake> cautions =
        CATALOGUE.cautions(
            Edited.file(
                folder,
                GOOD.replace("\"At rest\", \"input_V\": 12.5", "\"At rest\", \"input_V\": 9.5")));
    assertEquals(
        List.of("with 9.5 V the input is tolerated at best: a fail will not count"),
        cautions.stream().map(Mistake::message).toList());
  }

  /** A profile that drops the supply on purpose may go under the edges. */
  @Test
  void aDroppedSupplyMayGoUnderTheEdges() {
    String dropped =
        GOOD.replace("\"At rest\", \"input_V\": 12.5", "\"At rest\", \"input_V\": 6.5")
            .replace("\"provingLoad_A\"", "\"supplyDrops\": true, \"provingLoad_A\"");
    assertEquals(List.of(), CATALOGUE.cautions(Edited.file(folder, dropped)));
  }
}
