package corewright.station.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.run.Clock;
import corewright.bench.wire.Said;
import corewright.files.Mistake;
import corewright.station.training.DialectTrial.Trial;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The numbers of refusals are those of SCPI-1999 volume 2, 21.8; exceptions those of Modbus. */
class DialectTrialTest {
  private static final Path DIALECTS =
      Path.of(System.getProperty("corewright.home"), "fixtures", "dialects");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"load", "source", "meter", "logger-unasked", "scope-real", "registers"})
  void whatComesWithTheProgramSaysNothingThatIsNotAnswered(String name) {
    Trial trial = DialectTrial.of(DIALECTS.resolve("emulated-" + name + ".json"), Clock.system());
    assertEquals(List.of(), trial.mistakes());
    assertTrue(trial.said().size() >= 6, trial.said().toString());
  }

  @Test
  void everythingIsSaidBothEndsOfARangeAndTheWayBack() {
    Path thermometer = DIALECTS.resolve("emulated-thermometer.json");
    assertTrue(sent(thermometer).contains("SYSTem:LOCal"));
    List<String> load = sent(DIALECTS.resolve("emulated-load.json"));
    assertTrue(load.contains("SOURce:CURRent 0.0000") && load.contains("SOURce:CURRent 40.0000"));
  }

  private static List<String> sent(Path dialect) {
    return DialectTrial.of(dialect, Clock.system()).said().stream().map(Said::sent).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          load | SOURce:CURRent {current_A} | SOURce:CURENT {current_A} | 23 | /actions/set/0 | SOURce:CURENT 0.0000: refused with -113,"Undefined header"
          load | "most": 40 | "most": 41 | 14 | /arguments/current_A/most | SOURce:CURRent 41.0000: refused with -222,"Data out of range"
          load | (?<value>[-+]?[0-9.]+E[-+][0-9]+) | (?<value>[0-9]+) | 35 | /queries/current/answer | MEASure:CURRent?: '
          load | MEASure:CURRent? | MEASure:AMPS? | 34 | /queries/current/send | MEASure:AMPS?: refused with -113,"Undefined header"
          load | [+-]?0,\\"No error\\" | .* | 10 | /errors/none | CW:NONSENSE: nobody knows that command, and the error queue counts as empty
          load | SYSTem:ERRor? | FAULT? | 10 | /errors/send | FAULT?: no answer within 300 ms
          load | "append": ";*OPC?" | "append": ";*OPC" | 9 | /confirmation/append | *CLS;*OPC: no answer within 300 ms
          load | EMULATED-LOAD | EMULATED-LAOD | 7 | /identity | *IDN?: 'COREWRIGHT,EMULATED-LOAD,1,1.0' answers, which it is not for
          load | "receive": "\\n" | "receive": "\\r\\n" | 8 | /line | *IDN?: only 'COREWRIGHT,EMULATED-LOAD,1,1.0·' and no end of line within 300 ms
          relay | "words": {"1": true, "0": false}},§    "whole" | "words": {"ON": true, "OFF": false}},§    "whole" | 22 | /queries/closed/words | ROUTe:CLOSe? (@1): '0' cannot be read
          logger | "comma": true | "comma": false | 26 | /samples/lines | samples at 25 Hz: '
          registers | "address": 3 | "address": 4 | 15 | /samples/channels/3 | read input register 4: it refuses with exception 2, illegal data address
          """)
  void whatIsBrokenIsFoundWhereItIs(
      String name, String was, String now, int line, String where, String message)
      throws IOException {
    String good = Files.readString(DIALECTS.resolve("emulated-" + name + ".json"));
    String before = was.replace('§', '\n');
    assertTrue(good.contains(before), before);
    Path broken =
        Files.writeString(
            folder.resolve("broken.json"), good.replace(before, now.replace('§', '\n')));
    Mistake first = DialectTrial.of(broken, Clock.system()).mistakes().get(0);
    assertEquals(where, first.where());
    assertEquals(line, first.line(), first.toString());
    assertTrue(first.message().startsWith(message), first.message());
    assertTrue(!first.suggestion().isEmpty());
  }
}
