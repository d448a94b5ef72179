package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.station.work.Home;
import corewright.station.work.Refused;
import corewright.station.work.commission.Survey;
import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A slip of the fingers costs one line and not the whole talk. */
class BenchQuestionsTest {
  private static final Optional<String> ASKED = Optional.empty();

  private final StringWriter said = new StringWriter();

  @Test
  void whatCannotBeReadIsAskedAgainWithTheReason() {
    BenchQuestions ask = typing("ten\n-470\n470,5\n10\n100±1\n10 ± 1 %\n?\n0\n-\n3\nM. Reyes\n");
    assertEquals(470.5, ask.discharge_ohm(ASKED));
    assertEquals(10, ask.plug(ASKED).resistance().value());
    assertEquals(0.05, ask.plug(Optional.of("10±1%")).resistance().u()); // U is k = 2
    assertEquals("M. Reyes", ask.name(ASKED));
    for (String words :
        List.of(
            "'ten' is no number above 0. Write it as 470.",
            "'-470' is no number above 0.",
            "'10' is no resistor. Write it as 10±0.1 or 10±1%.",
            "'100±1' will not do: a resistor between 2 Ω and 50 Ω is needed",
            "Somebody answers for what is energised.",
            "This must be known. To change what was answered before, stop and begin again.",
            "'3' is no name")) {
      assertTrue(said.toString().contains(words), words + " in " + said);
    }
    assertFalse(said.toString().contains("not seen"), said.toString());
  }

  @Test
  void whatWouldOnlyBeRefusedAfterThePowerUpIsRefusedBefore() {
    BenchQuestions ask = typing("Bench 1\nbench-1\n5\n60\nsd84\nsd48, ie110\n");
    assertEquals("bench-1", ask.called(ASKED));
    assertEquals(60, ask.ceiling_V(ASKED)); // 10 V go through the resistor
    assertEquals(List.of("sd48", "ie110"), ask.families(ASKED, Catalogue.ofHome()));
    assertThrows(Refused.class, () -> ask.called(Optional.of("b".repeat(27)))); // of 32, 6 are ours
    Refused none =
        assertThrows(Refused.class, () -> ask.families(Optional.of("x"), Catalogue.ofHome()));
    assertTrue(none.remedy().contains("sd48"), none.remedy());
  }

  @Test
  void noTrialAtAllIsRefused() {
    Typing refused = Typing.nothing("bench", "--emulate=sd48", "--trials=0", "--out=none.json");
    assertEquals(ExitCodes.REFUSED, refused.code());
    assertTrue(refused.err().startsWith("--trials 0 measures no time"), refused.err());
  }

  private BenchQuestions typing(String lines) {
    PrintWriter err = new PrintWriter(said, true);
    Home home = Home.fromSystem();
    Survey nobody =
        new Survey(
            home,
            home.dialects(),
            (role, port, baud, characters) -> {
              throw new AssertionError("opened " + port);
            },
            Clock.system());
    Asking asking = new Asking(new BufferedReader(new StringReader(lines)), err);
    return new BenchQuestions(new BenchTalk(asking, err, nobody));
  }
}
