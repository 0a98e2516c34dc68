package soakloop;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The house: imports point down only, and each library stays in its rooms. */
class HouseTest {
  /** Top to bottom: a room may use the rooms after it in this list. */
  private static final List<String> ROOMS =
      List.of(
          "app",
          "report",
          "plan",
          "versus",
          "fit",
          "study",
          "scenario",
          "reading",
          "log",
          "simulate",
          "session",
          "rig",
          "charge",
          "exchange",
          "flow",
          "fluid",
          "quantity");

  /** Library packages, and the rooms below app that may use them. */
  private static final Map<String, Set<String>> LIBRARIES =
      Map.ofEntries(
          Map.entry(
              "org.hipparchus",
              Set.of(
                  "plan",
                  "versus",
                  "fit",
                  "study",
                  "simulate",
                  "session",
                  "charge",
                  "exchange",
                  "quantity")),
          Map.entry("org.apache.commons.math3", Set.of("study", "reading")),
          Map.entry("org.jfree", Set.of("report")),
          Map.entry("freemarker", Set.of("report")),
          Map.entry("com.google.gson", Set.of("report")),
          Map.entry("org.yaml.snakeyaml", Set.of("scenario")),
          Map.entry("de.siegmar.fastcsv", Set.of("log")),
          Map.entry("picocli", Set.of()),
          Map.entry("java.awt", Set.of("report")));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("soakloop");

  @TestFactory
  List<DynamicTest> importsPointDown() {
    return ROOMS.subList(1, ROOMS.size()).stream()
        .map(
            room -> {
              String[] above =
                  ROOMS.subList(0, ROOMS.indexOf(room)).stream()
                      .map(r -> "soakloop." + r + "..")
                      .toArray(String[]::new);
              ArchRule rule =
                  noClasses()
                      .that()
                      .resideInAPackage("soakloop." + room + "..")
                      .should()
                      .dependOnClassesThat()
                      .resideInAnyPackage(above);
              return DynamicTest.dynamicTest(room, () -> rule.check(CLASSES));
            })
        .toList();
  }

  @TestFactory
  List<DynamicTest> librariesStayInTheirRooms() {
    return LIBRARIES.entrySet().stream()
        .map(
            library -> {
              Set<String> allowed = new TreeSet<>(library.getValue());
              allowed.add("app");
              String[] rooms =
                  allowed.stream().map(r -> "soakloop." + r + "..").toArray(String[]::new);
              ArchRule rule =
                  noClasses()
                      .that()
                      .resideOutsideOfPackages(rooms)
                      .should()
                      .dependOnClassesThat()
                      .resideInAPackage(library.getKey() + "..")
                      .allowEmptyShould(true);
              return DynamicTest.dynamicTest(library.getKey(), () -> rule.check(CLASSES));
            })
        .toList();
  }

  @Test
  void onlyAppPrintsExitsOrReadsTheClock() {
    GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(
        CLASSES.that(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "outside app", c -> !c.getPackageName().equals("soakloop.app"))));
    noClasses()
        .that()
        .resideOutsideOfPackage("soakloop.app..")
        .should()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(java.time.LocalDateTime.class, "now")
        .orShould()
        .callMethod(java.time.ZonedDateTime.class, "now")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(java.time.Clock.class, "systemUTC")
        .orShould()
        .callConstructor(java.util.Date.class)
        .check(CLASSES);
  }

  @Test
  void onlyReadersAndWritersTouchFiles() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "soakloop.app..", "soakloop.report..", "soakloop.scenario..", "soakloop.log..")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.nio.file.Files")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.File")
        .check(CLASSES);
  }

  @Test
  void everyRoomIsNullMarked() {
    for (String room : ROOMS) {
      org.junit.jupiter.api.Assertions.assertTrue(
          CLASSES
              .getPackage("soakloop." + room)
              .isAnnotatedWith(org.jspecify.annotations.NullMarked.class),
          room);
    }
  }

  @Test
  void everyRoomIsListed() {
    Set<String> found = new TreeSet<>();
    CLASSES.forEach(c -> found.add(c.getPackageName().replaceFirst("^soakloop\\.", "")));
    org.junit.jupiter.api.Assertions.assertEquals(new TreeSet<>(ROOMS), found);
  }
}
