package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.Contacts;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.BenchFault;
import corewright.fixtures.emulate.unit.Harness;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.profiles.Catalogue;
import corewright.station.work.BenchCondition;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bench with a worn pin (0.25 Ω) and noisy converters, and a file that states better. */
class ConditionCommandTest {
  @TempDir private Path folder;

  @Test
  void noiseAndContactsAreKeptWithTheBenchAndStopItWhereTheyAreTooMuch() throws IOException {
    Setup link = Setup.of(UnitParameters.resistor("sd48", 0.005), 1);
    Harness worn =
        BenchFault.NOISY_OUTPUT.in(BenchFault.WORN_PIN.in(link.harness(), 1), 0); // three times
    Path shop = folder.resolve("shop");
    Path file = folder.resolve("bench.json");
    try (EmulatedBench emulated = EmulatedBench.open(link.on(worn))) {
      Files.writeString(file, described(emulated.ports()));
      Typing found =
          Typing.inShop(
              shop,
              "",
              "condition",
              "--bench=" + file,
              "--link=0.005±0.001",
              "--due=2027-02-28",
              "--confirmed-by=M. Reyes",
              "--json");
      assertEquals(ExitCodes.BENCH_FAULT, found.code(), found.err());
      JsonNode contacts = found.json().get("contacts");
      assertEquals(0.25, contacts.get("ohm").asDouble(), 2 * contacts.get("u").asDouble());
      assertEquals(1, found.json().get("stopped").size(), found.out());
    }
    Typing unmeasured = Typing.inShop(shop, "", "shift", "--bench=" + file);
    assertEquals(
        ExitCodes.DONE,
        unmeasured.code(),
        unmeasured.out() + unmeasured.err()); // it was never measured
    Typing shift = Typing.inShop(shop, "", "shift", "--bench=" + file, "--emulated");
    assertEquals(ExitCodes.BENCH_FAULT, shift.code(), shift.err());
    assertTrue(shift.out().contains("STOPPED  The contacts of fixture EF-SD48"), shift.out());
    BenchDescription bench = Descriptions.bench(file);
    assertEquals(2, bench.revision());
    String checked = bench.contacts().orElseThrow().checked();
    assertTrue(checked.startsWith("EMULATED, ") && !checked.contains("due "), checked);
    try (Workshop workshop =
        Workshop.open(Catalogue.ofHome(), shop, ShopFile.in(shop), "bench", Clock.system())) {
      BenchCondition real = workshop.benchCondition(false);
      assertEquals(List.of(), real.contactsAgainst(bench));
      assertEquals(bench, real.known(bench));
      BenchCondition found = workshop.benchCondition(true);
      String against = found.contactsAgainst(bench).get(0);
      assertTrue(against.contains("the limit is 0.0500 Ω"), against);
      // 9 mV of noise, 4 mV stated: √(81 − 16) = 8.1 mV, beside 12 mV of the zero
      double now = found.known(bench).channels().get(1).offset();
      assertEquals(Math.hypot(0.012, Math.sqrt(0.009 * 0.009 - 0.004 * 0.004)), now, 2e-4);
      assertEquals(0, found.noiseAgainst(bench).size());
      LocalDate due = LocalDate.of(2027, 2, 28);
      real.contacts(bench.id(), new Measurement(0.01, 0.001, Unit.OHM), due, "M. Reyes");
      assertEquals(List.of(against), found.contactsAgainst(bench));
    }
  }

  /** What the file says is what a certificate rests on. */
  @Test
  void anEmulatedBenchNeverPutsOffTheDayOfARealOne() {
    LocalDate day = LocalDate.of(2027, 2, 28);
    Measurement found = new Measurement(0.01, 0.001, Unit.OHM);
    Contacts never = new Contacts(0.05, "not checked");
    String real = ContactsText.of(never, found, day, false).orElseThrow();
    assertTrue(real.endsWith("Ω, due 2027-02-28"), real);
    Contacts before = new Contacts(0.05, real);
    assertEquals(Optional.empty(), ContactsText.of(before, found, day.plusYears(1), true));
    String practised = ContactsText.of(never, found, day, true).orElseThrow();
    assertEquals(
        Optional.of(real), ContactsText.of(new Contacts(0.05, practised), found, day, false));
  }

  /** No voltage before the person who has confirmed has signed in; no option passed over. */
  @Test
  void whoConfirmsSignsInAndADayWithoutALinkIsRefused() throws IOException {
    Path shop = folder.resolve("shop");
    Path file = folder.resolve("bench.json");
    Files.writeString(file, described(Map.of())); // its ports are not there
    Typing day = Typing.inShop(shop, "", "condition", "--bench=" + file, "--due=2027-02-28");
    assertEquals(ExitCodes.REFUSED, day.code(), day.err());
    assertTrue(day.err().contains("--due goes with --link"), day.err());
    Path password = Files.writeString(folder.resolve("p"), "a long password\n");
    Typing made =
        Typing.inShop(
            shop,
            "",
            "account",
            "M. Reyes",
            "--role=owner",
            "--new-password-file=" + password,
            "--by=M. Reyes");
    assertEquals(0, made.code(), made.err());
    Typing stranger =
        Typing.inShop(
            shop,
            "",
            "condition",
            "--bench=" + file,
            "--link=0.005±0.001",
            "--due=2027-02-28",
            "--by=M. Reyes",
            "--password-file=" + password,
            "--confirmed-by=N. Body");
    assertEquals(ExitCodes.REFUSED, stranger.code(), stranger.err());
    assertTrue(stranger.err().contains("Name and password do not fit"), stranger.err());
  }

  private static String described(Map<String, String> ports) throws IOException {
    Path shipped =
        Path.of(System.getProperty("corewright.home"), "fixtures/benches/emulated-sd48.json");
    String text = Files.readString(shipped);
    for (Map.Entry<String, String> port : ports.entrySet()) {
      text = text.replace("emulated:" + port.getKey(), port.getValue());
    }
    return text.replace(
            "\"offset\": 0.012, \"calibration\": \"not calibrated\"",
            "\"offset\": 0.012, \"calibration\": \"not calibrated\", \"noise\": 0.004")
        .replace("\"trip_s\"", "\"contacts\": {\"limit_ohm\": 0.05},\n  \"trip_s\"");
  }
}
