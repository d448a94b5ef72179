package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.files.Mistake;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FamilyRulesTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();

  private static final String GOOD =
      """
      {
        "id": "sd48", "revision": 1, "title": "A family", "defaultProfile": "sd48-arrival",
        "converter": { "input_V": 12.5, "inputCeiling_V": 16, "output_V": 48, "ratedLoad_A": 2,
          "capacitance_F": 0.002, "esr_ohm": 0.015, "switching_Hz": 65000 },
        "inputZones": { "good_V": 10, "tolerated_V": 9 },
        "abort": { "outputOver_V": 56, "outputUnder_V": 30, "underHold_s": 0.5, "inputOver_A": 18, "inputOver_s": 0.01, "case_C": 90 },
        "discharge": { "resistor_ohm": 470, "power_W": 10, "safe_V": 5, "within_s": 4.2 }, "deadCheck": { "input_ohm": 50, "output_ohm": 500 },
        "variants": [
          { "id": "X1", "title": "open", "serviceable": "yes", "why": "it is open", "kit": "XK", "prior": 0.6, "expected": { "bosses": ["4"], "mass": ["light"] } },
          { "id": "X2", "title": "set", "serviceable": "no", "why": "it is set in resin", "kit": "", "prior": 0.4, "expected": { "bosses": ["6"], "mass": ["heavy"] } }
        ],
        "cues": [
          { "id": "bosses", "question": "How many?", "look": "Around the lid.", "travelsWith": "cover", "reliability": 0.9, "cost_s": 10, "answers": ["4", "6"] },
          { "id": "mass", "question": "How heavy?", "look": "Scale.", "travelsWith": "board", "reliability": 0.8, "cost_s": 20, "answers": ["light", "heavy"],
            "scale": { "unit": "g", "bands": [ { "answer": "light", "from": 0, "to": 400 }, { "answer": "heavy", "from": 400, "to": 900 } ] } }
        ],
        "checklist": [
          { "id": "moisture", "group": "contamination", "question": "Wet?", "answers": ["dry", "wet"], "blocks": ["wet"], "meaning": "Dry it.", "grades": { "wet": "D" } },
          { "id": "dried", "group": "contamination", "question": "Dried?", "answers": ["yes", "no"], "blocks": [], "meaning": "Dry it.", "askedIf": { "moisture": ["wet"] }, "signs": { "no": "opened" } }
        ],
        "economics": { "currency": "EUR", "sale": 1, "exchange": 1, "exchangeCost": 1, "kit": 1, "labour_h": 1,
          "rate_perHour": 1, "test": 1, "warranty": 1, "harvest": 1, "yield": 0.9, "evaluation": 1, "freight": 1 }
      }
      """;

  @TempDir private Path folder;

  @Test
  void theFileThatIsEditedBelowIsGood() {
    assertEquals("sd48", CATALOGUE.readFamily(Edited.file(folder, GOOD)).id());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "tolerated_V": 9 | "tolerated_V": 11 | 5 | /inputZones/tolerated_V | 11 V is above good_V, 10 V | Write at most 10
          "good_V": 10     | "good_V": 13      | 5 | /inputZones/good_V | 13 V is above the nominal input, 12.5 V | Write at most 12.5
          "inputCeiling_V": 16 | "inputCeiling_V": 12 | 3 | /converter/inputCeiling_V | it is below the nominal input, 12.5 V | Write at least 12.5
          "outputOver_V": 56 | "outputOver_V": 49 | 6 | /abort/outputOver_V | 49 V is inside the operating range of a 48 V output | Write well above 49.44 V, below what the parts bear
          "outputUnder_V": 30 | "outputUnder_V": 46 | 6 | /abort/outputUnder_V | 46 V is inside the operating range of a 48 V output | Write well below 45.6 V
          "inputOver_A": 18 | "inputOver_A": 12 | 6 | /abort/inputOver_A | 12 A is what a good unit may draw at full load and 10 V | Write at least 13.4
          "resistor_ohm": 470 | "resistor_ohm": 47 | 7 | /discharge/resistor_ohm | it takes 49.0 W at 48 V | Use a larger resistance, or state a power_W that bears it
          "within_s": 4.2  | "within_s": 2     | 7 | /discharge/within_s | a healthy unit takes 2.13 s through this resistor | Write about twice that
          "id": "X2"       | "id": "X1"        | 10 | /variants/1/id | two variants are called 'X1' | Rename one of them
          "prior": 0.4     | "prior": 0.5      | 8 | /variants | the priors of the variants sum to 1.1 | Make them sum to 1
          "prior": 0.4     | "prior": 1.4      | 10 | /variants/1/prior | 1.4 is out of range | Write a number from 0 to 1
          "bosses": ["6"]  | "boses": ["6"]    | 10 | /variants/1/expected/boses | there is no cue 'boses' | Did you mean 'bosses'?
          "mass": ["heavy"] | "mass": ["haevy"] | 10 | /variants/1/expected/mass/0 | 'haevy' is none of the answers | Did you mean 'heavy'?
          "kit": "XK"      | "kit": ""         | 9 | /variants/0/kit | a build that can be rebuilt needs a kit | Name its parts kit
          "kit": ""        | "kit": "YK"       | 10 | /variants/1/kit | a build that cannot be rebuilt has no kit | Write "", or another serviceable
          "reliability": 0.9 | "reliability": 90 | 13 | /cues/0/reliability | 90 is out of range | Write a number from 0 to 1
          "answer": "light" | "answer": "ligth" | 15 | /cues/1/scale/bands/0/answer | 'ligth' is no answer of this cue | Did you mean 'light'?
          "from": 400      | "from": 300       | 15 | /cues/1/scale/bands/1/from | the band begins before the last one ends, at 400 | Write at least 400
          "to": 900        | "to": 400         | 15 | /cues/1/scale/bands/1/to | the band ends before it begins | Write more than 'from'
          "blocks": ["wet"] | "blocks": ["damp"] | 18 | /checklist/0/blocks/0 | 'damp' is none of the answers | Use one of: dry, wet
          "blocks": ["wet"] | "blocks": ["dry"] | 18 | /checklist/0/blocks | 'dry' is the unremarkable answer and would block every unit | Put the unremarkable answer first
          "wet": "D"       | "wte": "D"        | 18 | /checklist/0/grades/wte | 'wte' is none of the answers | Did you mean 'wet'?
          "no": "opened"   | "not": "opened"   | 19 | /checklist/1/signs/not | 'not' is none of the answers | Did you mean 'no'?
          "moisture": ["wet"] | "mosture": ["wet"] | 19 | /checklist/1/askedIf/mosture | no line before this one is called 'mosture' | Did you mean 'moisture'?
          "moisture": ["wet"] | "moisture": ["wte"] | 19 | /checklist/1/askedIf/moisture/0 | 'wte' is none of the answers | Did you mean 'wet'?
          "unit": "g",     | "unit": "year and week", | 15 | /cues/1/scale/formats | a date without a format can be read in several ways | Name how the maker writes it, as "YYWW"
          "unit": "g",     | "unit": "g", "formats": ["YYWW"], | 15 | /cues/1/scale/formats | only a date has a format | Leave it out, or make the unit year and week
          "currency": "EUR" | "currency": "Euro" | 21 | /economics/currency | "Euro" is not written as it must be | Write three capital letters (ISO 4217)
          """)
  void saysWhereWhatAndWhatToDo(
      String was, String now, int line, String where, String message, String suggestion) {
    List<Mistake> mistakes = Edited.mistakes(folder, GOOD, was, now, CATALOGUE::readFamily);
    String file = folder.resolve("edited.json").toString();
    Mistake expected = new Mistake(file, line, where, message, suggestion);
    // a prior that is out of range also spoils the sum
    assertEquals(
        List.of(expected),
        mistakes.stream()
            .filter(m -> mistakes.size() == 1 || !m.message().contains("sum to 2"))
            .toList());
  }
}
