package corewright.station;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The arrows and rules of DEVELOPERS.md, executable. Change the page and this file in one commit.
 */
class ArrowsTest {
  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("corewright");

  /** To become false when every room has its first class: then no rule can pass on nothing. */
  private static final boolean ROOMS_MAY_BE_EMPTY = false;

  /** Each room with the rooms that it may know. */
  private static final Map<String, List<String>> ARROWS =
      Map.of(
          "measures", List.of(),
          "files", List.of(),
          "profiles", List.of("measures", "files"),
          "fixtures", List.of("measures", "files"),
          "bench", List.of("profiles", "fixtures", "measures", "files"),
          "reports", List.of("bench", "profiles", "fixtures", "measures", "files"),
          "station", List.of("reports", "bench", "profiles", "fixtures", "measures", "files"));

  private static final List<String> ROOMS = ARROWS.keySet().stream().sorted().toList();

  private static final String EMULATE = "corewright.fixtures.emulate..";
  private static final String LEDGER = "corewright.reports.ledger..";

  @Test
  void everyClassLivesInARoom() {
    holds(
        classes()
            .should()
            .resideInAnyPackage(
                ROOMS.stream().map(room -> "corewright." + room + "..").toArray(String[]::new)));
  }

  @ParameterizedTest
  @FieldSource("ROOMS")
  void aRoomKnowsOnlyTheRoomsItsArrowsPointTo(String room) {
    DescribedPredicate<JavaClass> known = resideInAPackage("corewright." + room + "..");
    for (String other : ARROWS.getOrDefault(room, List.of())) {
      known = known.or(resideInAPackage("corewright." + other + ".."));
    }
    holds(
        classes()
            .that()
            .resideInAPackage("corewright." + room + "..")
            .should()
            .onlyDependOnClassesThat(known.or(resideOutsideOfPackage("corewright.."))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "corewright.measures..",
        "corewright.bench.judge..",
        "corewright.bench.diagnose..",
        "corewright.bench.identify..",
        "corewright.bench.triage..",
        "corewright.bench.inspect..",
        "corewright.bench.life..",
        "corewright.bench.log.."
      })
  void whatMeasuresAndDecidesIsPure(String room) {
    holds(
        noClasses()
            .that()
            .resideInAPackage(room)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "java.io..",
                "java.nio..",
                "java.net..",
                "java.sql..",
                "javax.sql..",
                "java.util.concurrent.."));
    holds(classes().that().resideInAPackage(room).should(never("read a clock", this::readsAClock)));
    holds(
        classes()
            .that()
            .resideInAPackage(room)
            .should(never("draw unseeded numbers", this::drawsUnseeded)));
  }

  @Test
  void whatDecidesIsHandedValuesAndNeverMeetsTheWire() {
    holds(
        noClasses()
            .that()
            .resideInAnyPackage(
                "corewright.bench.judge..",
                "corewright.bench.diagnose..",
                "corewright.bench.identify..",
                "corewright.bench.triage..",
                "corewright.bench.inspect..",
                "corewright.bench.life..",
                "corewright.bench.log..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "corewright.bench.port..",
                "corewright.bench.wire..",
                "corewright.bench.run..",
                "corewright.bench.capture.."));
  }

  @Test
  void oneClassImportsTheSerialLibrary() {
    Set<String> importers =
        MAIN.stream()
            .filter(
                c ->
                    c.getDirectDependenciesFromSelf().stream()
                        .anyMatch(
                            d -> d.getTargetClass().getPackageName().startsWith("com.fazecast")))
            .map(c -> outermost(c).getName())
            .collect(Collectors.toCollection(TreeSet::new));
    if (!(importers.isEmpty() && ROOMS_MAY_BE_EMPTY)) {
      assertEquals(1, importers.size(), importers.toString());
    }
    holds(
        noClasses()
            .that()
            .resideOutsideOfPackage("corewright.bench.port.serial..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.fazecast.."));
  }

  @Test
  void theModbusLibraryIsKnownToTheDriversAlone() {
    holds(
        noClasses()
            .that()
            .resideOutsideOfPackage("corewright.bench.wire..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.ghgande.."));
  }

  @Test
  void onlyClocksReadAClock() {
    holds(
        classes()
            .that(are("not clocks", c -> !outermost(c).getSimpleName().endsWith("Clock")))
            .should(never("read a clock", this::readsAClock)));
  }

  @Test
  void theLedgerKnowsNeitherChartsNorDocuments() {
    holds(
        noClasses()
            .that()
            .resideInAPackage(LEDGER)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("corewright.reports.chart..", "corewright.reports.document.."));
  }

  @Test
  void documentsReadRecordsAndNeverSql() {
    DescribedPredicate<JavaClass> insideTheLedger =
        resideInAPackage(LEDGER)
            .and(are("no values", c -> !c.isRecord() && !c.isEnum() && !c.isInterface()));
    holds(
        noClasses()
            .that()
            .resideInAPackage("corewright.reports.document..")
            .should()
            .dependOnClassesThat(
                insideTheLedger.or(
                    resideInAnyPackage(
                        "java.sql..",
                        "javax.sql..",
                        "org.jdbi..",
                        "org.sqlite..",
                        "org.postgresql..",
                        "org.flywaydb.."))));
  }

  @Test
  void onlyTheDemoAndTrainingReachAnEmulator() {
    holds(
        noClasses()
            .that()
            .resideOutsideOfPackages(
                EMULATE, "corewright.station.demo..", "corewright.station.training..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(EMULATE));
  }

  @Test
  void theDemonstrationNamesNoVerdict() {
    holds(
        noClasses()
            .that()
            .resideInAPackage("corewright.station.demo..")
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("corewright.bench.record.Verdict"));
  }

  @Test
  void emulatorsShareNothingWithTheRestOfTheHouse() {
    holds(
        noClasses()
            .that()
            .resideInAPackage(EMULATE)
            .should()
            .dependOnClassesThat(
                resideInAPackage("corewright..").and(resideOutsideOfPackage(EMULATE))));
  }

  @Test
  void emulatorsNeverReadDialects() {
    holds(classes().that().resideInAPackage(EMULATE).should(neverMention("dialect")));
  }

  @Test
  void emulatorsGiveTheSameBytesForTheSameSeed() {
    holds(
        classes()
            .that()
            .resideInAPackage(EMULATE)
            .should(never("draw unseeded numbers", this::drawsUnseeded)));
  }

  private static void holds(ArchRule rule) {
    rule.allowEmptyShould(ROOMS_MAY_BE_EMPTY).check(MAIN);
  }

  private boolean readsAClock(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getName();
    return switch (owner.getName()) {
      case "java.lang.System" -> name.equals("nanoTime") || name.equals("currentTimeMillis");
      case "java.lang.Thread", "java.util.concurrent.TimeUnit" -> name.equals("sleep");
      case "java.util.concurrent.locks.LockSupport" ->
          name.equals("parkNanos") || name.equals("parkUntil");
      case "java.util.Calendar" -> name.equals("getInstance");
      case "java.util.Date", "java.util.GregorianCalendar" -> constructsFromNothing(access);
      default ->
          owner.getPackageName().startsWith("java.time")
              && (name.equals("now") || name.startsWith("system") || name.startsWith("tick"));
    };
  }

  private boolean drawsUnseeded(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getName();
    return switch (owner.getName()) {
      case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
      case "java.util.UUID" -> name.equals("randomUUID");
      case "java.util.Collections" -> name.equals("shuffle") && parameters(access) == 1;
      case "java.util.concurrent.ThreadLocalRandom", "java.security.SecureRandom" -> true;
      case "java.util.random.RandomGenerator" -> name.equals("of") || name.equals("getDefault");
      default ->
          constructsFromNothing(access)
              && (owner.isAssignableTo("java.util.random.RandomGenerator")
                  || owner.getPackageName().startsWith("org.apache.commons.math3.random"));
    };
  }

  private static boolean constructsFromNothing(JavaAccess<?> access) {
    return access.getName().equals("<init>") && parameters(access) == 0;
  }

  private static int parameters(JavaAccess<?> access) {
    String fullName = access.getTarget().getFullName();
    String inBrackets = fullName.substring(fullName.indexOf('(') + 1, fullName.lastIndexOf(')'));
    return inBrackets.isEmpty() ? 0 : inBrackets.split(",", -1).length;
  }

  private static JavaClass outermost(JavaClass c) {
    JavaClass at = c;
    while (at.getEnclosingClass().isPresent()) {
      at = at.getEnclosingClass().get();
    }
    return at;
  }

  private static DescribedPredicate<JavaClass> are(String what, Predicate<JavaClass> test) {
    return DescribedPredicate.describe(what, test);
  }

  private static ArchCondition<JavaClass> never(String what, Predicate<JavaAccess<?>> forbidden) {
    return new ArchCondition<>("never " + what) {
      @Override
      public void check(JavaClass c, ConditionEvents events) {
        c.getAccessesFromSelf().stream()
            .filter(forbidden)
            .forEach(a -> events.add(SimpleConditionEvent.violated(c, a.getDescription())));
      }
    };
  }

  private static ArchCondition<JavaClass> neverMention(String word) {
    return new ArchCondition<>("never mention '" + word + "'") {
      @Override
      public void check(JavaClass c, ConditionEvents events) {
        if (bytesOf(c).toLowerCase(Locale.ROOT).contains(word)) {
          events.add(SimpleConditionEvent.violated(c, c.getName() + " mentions '" + word + "'"));
        }
      }
    };
  }

  private static String bytesOf(JavaClass c) {
    try (InputStream in = c.getSource().orElseThrow().getUri().toURL().openStream()) {
      return new String(in.readAllBytes(), ISO_8859_1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
