package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DroppedTest {
  private final HostileShop.Made made = HostileShop.shared();
  private final Visit visit = HostileShop.owner();

  DroppedTest() throws IOException {}

  /** Twelve volts at rest, 10.4 V while cranking, and an output that falls from 48 to 43 V. */
  static String log(String output) {
    return log(output, 250);
  }

  private static String log(String output, int lines) {
    StringBuilder log = new StringBuilder("Time (s);Supply (V);" + output + ";RPM\n");
    for (int i = 0; i < lines; i++) {
      double t = i / 10.0;
      boolean crank = t >= 10 && t < 16;
      double wobble = ((i * 7919) % 101 - 50) / 500.0; // a tenth of a volt, the same every time
      log.append(
          String.format(
                  Locale.ROOT,
                  "%.2f;%.2f;%.2f;%d%n",
                  t,
                  (crank ? 10.4 : t < 10 ? 12.5 : 13.9) + wobble / 4,
                  (crank ? 43.2 : 48.1) + wobble,
                  crank ? 180 : t < 10 ? 0 : 720)
              .replace('.', ','));
    }
    return log.toString();
  }

  private String drop(Visit who, String name, byte[] bytes) {
    who.get("/");
    HttpResponse<String> answer = send(who, name, bytes);
    assertEquals(204, answer.statusCode(), answer.body());
    return answer.headers().firstValue("X-Go").orElse("");
  }

  private static HttpResponse<String> send(Visit who, String name, byte[] bytes) {
    return who.send(
        HttpRequest.newBuilder(URI.create(who.at("/dropped")))
            .header("X-Form", "yes")
            .header("X-Proof", who.proof())
            .header("X-Name", URLEncoder.encode(name, StandardCharsets.UTF_8))
            .header("Content-Type", "application/octet-stream")
            .POST(HttpRequest.BodyPublishers.ofByteArray(bytes)));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The output falls to 43.2 V with a supply that held, where the family asks for 45 V. */
  @Test
  void readsALogAndShowsEveryGuess() {
    String at = drop(visit, "drive.csv", bytes(log("Module output (V)")));
    String page = visit.get(at).body();
    assertTrue(page.contains("This log supports a fault of the module."), page);
    assertTrue(page.contains("decimal comma"), page);
    assertTrue(page.contains("semicolons"), page);
    assertTrue(page.contains("value=\"OUTPUT\" selected"), page);
    assertTrue(page.contains("sd48"), "by where the output rests");
    assertTrue(visit.get(at + "/picture").body().contains("<svg"));
  }

  /** An hour at ten lines a second: the customer stands at the counter and waits. */
  @Test
  void concludesAnHourOfALogWithinFiveSeconds() {
    byte[] hour = bytes(log("Output (V)", 36_000));
    long start = System.nanoTime();
    String page = visit.get(drop(visit, "hour.csv", hour)).body();
    double took_s = (System.nanoTime() - start) / 1e9;
    assertTrue(page.contains("This log supports a fault of the module."), page);
    assertTrue(took_s < 5, took_s + " s");
  }

  /** Nothing named like an output: nobody can say what the module did, until a person does. */
  @Test
  void readsItAgainAsAPersonCorrectsIt() {
    String at = drop(visit, "blind.csv", bytes(log("Torque")));
    assertFalse(visit.get(at).body().contains("This log supports a fault"));
    String page =
        visit
            .get(
                at
                    + "?as=log&g1=TIME&c1=TIME&g2=SUPPLY&c2=SUPPLY&g3=NONE&c3=OUTPUT&g4=SPEED&c4="
                    + "SPEED&unit-OUTPUT=V&family=sd48")
            .body();
    assertTrue(page.contains("This log supports a fault of the module."), page);
  }

  /** A load current, sampled fast, is no log. It settles at 44.00 V of 46.5 V. */
  @Test
  void tellsARecordFromALogAndJudgesItByTheFamilyThatIsNamed() {
    String at = drop(visit, "weak.csv", bytes(HostileShop.weak()));
    String measured = visit.get(at).body();
    assertTrue(measured.contains("no family was named"), measured);
    assertTrue(measured.contains("Hold 1, 0.000"), measured);
    assertTrue(
        measured.contains("Droop (0 by definition: droop refers to this hold)</th><td>0.00 V<"),
        measured);
    String page = visit.get(at + "?as=record&family=sd48").body();
    assertTrue(page.contains("<b>FAIL</b>"), page);
    assertTrue(page.contains("44.00"), page);
    assertTrue(page.contains("It certifies nothing"), page);
    String headline = page.replaceAll("(?s).*<p class=\"sent\">([^<]+)<.*", "$1");
    assertEquals(2, page.split(">" + java.util.regex.Pattern.quote(headline) + "<", -1).length);
    assertTrue(visit.get(at + "/picture").body().contains("<svg"));
  }

  @Test
  void saysOnThePageWhyAFileCannotBeReadAndWhereItLiesIsNobodysBusiness() {
    String at = drop(visit, "../../" + HostileShop.SCRIPT + ".csv", bytes("nothing\nof\nuse\n"));
    String page = visit.get(at).body();
    assertTrue(page.contains("Not read"), page);
    assertFalse(page.contains(HostileShop.SCRIPT), page);
    assertFalse(page.contains("incoming"), page);
    assertEquals(200, visit.get(at + "?as=record").statusCode());
  }

  /** A record whose line 1002 is no number, and one whose columns nobody can tell. */
  @Test
  void namesEachMistakeOfABadFileWithItsLineAndReadsItOnceItIsCorrected() {
    String[] lines = HostileShop.weak().split("\n");
    lines[1001] = "1.000,12.4,broken,0";
    String torn = drop(visit, "torn.csv", bytes(String.join("\n", lines)));
    String page = visit.get(torn + "?as=record&family=sd48").body();
    assertTrue(page.contains("torn.csv could not be read as a recorded test"), page);
    assertTrue(page.contains("Line 1002: a number is expected"), page);
    assertTrue(page.contains("Mend or remove the line"), page);
    assertFalse(page.contains("<b>FAIL</b>"), "half a record is no record");

    String unnamed = HostileShop.weak().replaceFirst("[^\n]*", "a,b,c,d");
    String at = drop(visit, "unnamed.csv", bytes(unnamed));
    assertTrue(
        visit
            .get(at + "?as=record&family=sd48")
            .body()
            .contains("Line 1: no column is called time"));
    String named =
        visit
            .get(
                at
                    + "?as=record&family=sd48&column-time=a&unit-time=s&column-input=b&unit-input=V"
                    + "&column-output=c&unit-output=V&column-load=d&unit-load=A")
            .body();
    assertTrue(named.contains("<b>FAIL</b>"), named);
    assertTrue(named.contains("44.00"), named);
  }

  @Test
  void belongsToTheSessionThatBroughtIt() {
    String at = drop(visit, "drive.csv", bytes(log("Module output (V)")));
    Visit other = visit.colleague("N. Vane", Role.COUNTER);
    assertEquals(422, other.get(at).statusCode());
    assertEquals(422, visit.get("/dropped/..%2f..%2fledger.db").statusCode());
    assertEquals(422, visit.get("/dropped/0123456789abcdef/picture").statusCode());
  }

  @Test
  void refusesWhatIsEmptyOrTooLargeOrWithoutProof() {
    visit.get("/");
    assertTrue(send(visit, "none.csv", new byte[0]).body().contains("is empty"));
    HttpResponse<String> odd =
        visit.send(
            HttpRequest.newBuilder(URI.create(visit.at("/dropped")))
                .header("X-Name", "100%zz.csv")
                .header("X-Proof", visit.proof())
                .POST(HttpRequest.BodyPublishers.ofString("a;b")));
    assertEquals(303, odd.statusCode(), odd.body());
    HttpResponse<String> foreign =
        visit.send(
            HttpRequest.newBuilder(URI.create(visit.at("/dropped")))
                .header("X-Name", "x.csv")
                .header("X-Proof", "guessed")
                .POST(HttpRequest.BodyPublishers.ofString("a;b")));
    assertEquals(403, foreign.statusCode());
  }

  @Test
  void keepsItWithAUnitOnRequestUnderItsHash() {
    String at = drop(visit, "drive.csv", bytes(log("Module output (V)")));
    visit.get(at);
    String to =
        Visit.location(
            visit.post(
                at + "/keep", Map.of("tag", made.untested(), "note", "from the cab", "as", "log")));
    assertEquals("/unit/" + made.untested(), to);
    String unit = visit.get(to).body();
    assertTrue(unit.contains("log, drive.csv from the cab"), unit);
    assertEquals(422, visit.post(at + "/keep", Map.of("tag", "nothing")).statusCode());
  }
}
