package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.bench.record.HandReading;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.station.work.Refused;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandOptionTest {
  private static final Profile FULL = Catalogue.ofHome().profile("sd48-full");

  /** A stated U is 2u (JCGM 100, 6.2.1). */
  @Test
  void carriesValueUncertaintyNameAndInstrument() {
    assertEquals(
        Map.of(
            "key-off",
            new HandReading(
                new Measurement(0.0012, 0.00005, Unit.AMPERE), "Ada", "multimeter 4, due 2027-03")),
        HandOption.read(List.of("key-off=0.0012±0.0001,multimeter 4, due 2027-03"), FULL, "Ada"));
    assertEquals(
        new Measurement(-1e-3, 5e-6, Unit.AMPERE),
        HandOption.read(List.of("key-off=-1e-3+-1e-5,m"), FULL, "Ada").get("key-off").value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "key-off=0.001 | cannot be read",
        "key-off=0.001±0.0001 | cannot be read",
        "keyoff=1±1,m | has no step 'keyoff' that is entered by hand",
        "rest=1±1,m | has no step 'rest' that is entered by hand",
        "key-off=1.2.3±1,m | '1.2.3' is no number",
        "key-off=1±-1,m | cannot be read",
        "key-off=1±1,  | cannot be read",
      })
  void saysWhatIsWrong(String entry, String words) {
    String said =
        assertThrows(
                Refused.class,
                () -> HandOption.read(List.of(entry + (entry.endsWith(",") ? " " : "")), FULL, "A"))
            .getMessage();
    assertEquals(true, said.contains(words), said);
  }
}
