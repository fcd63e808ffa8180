package org.staywright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Which package may use which. Widen a row only with packages that stand above it, never into a
 * circle.
 */
class ArchitectureTest {

  private static final String ROOT = "org.staywright";

  /** Each package and what of ours it may use; {@code web}, the last, may use all. */
  private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

  static {
    MAY_USE.put("unit", List.of());
    MAY_USE.put("gas", List.of("unit"));
    MAY_USE.put("spring", List.of("gas", "unit"));
    MAY_USE.put("mechanism", List.of("unit"));
    MAY_USE.put("part", List.of("spring", "gas", "unit"));
    MAY_USE.put("motion", List.of("mechanism", "spring", "gas", "unit"));
    MAY_USE.put("fit", List.of("part", "mechanism", "motion", "spring", "gas", "unit"));
    MAY_USE.put("caution", List.of("fit", "part", "mechanism", "spring", "unit"));
    MAY_USE.put("wording", List.of("caution", "fit", "part", "spring", "unit"));
    MAY_USE.put("form", List.of("fit", "part", "mechanism", "motion", "spring", "gas", "unit"));
    MAY_USE.put("database", List.of());
    MAY_USE.put("account", List.of("database", "unit"));
    MAY_USE.put("stock", List.of("database", "part", "form", "spring", "unit"));
    MAY_USE.put(
        "job", List.of("fit", "part", "mechanism", "form", "database", "stock", "gas", "unit"));
    MAY_USE.put("backup", List.of("database", "form", "stock", "unit"));
    MAY_USE.put(
        "document",
        List.of(
            "job", "caution", "wording", "fit", "motion", "mechanism", "part", "spring", "unit"));
    MAY_USE.put("web", List.copyOf(MAY_USE.keySet()));
  }

  private static final Set<String> PURE =
      Set.of("unit", "gas", "spring", "mechanism", "part", "motion", "fit", "caution");

  private static final String[] HTTP = {
    "jakarta.ws.rs..",
    "jakarta.servlet..",
    "io.vertx..",
    "io.quarkus.vertx..",
    "io.quarkus.rest..",
    "io.quarkus.resteasy..",
    "io.quarkus.csrf..",
    "io.quarkus.qute..",
    "org.jboss.resteasy.."
  };

  private static final String[] PERSISTENCE = {
    "io.quarkus.hibernate..", "jakarta.persistence..", "org.hibernate.."
  };

  /** Who may speak SQL by JDBC, with what is nested in it; all else asks by entities. */
  private static final List<String> SPEAK_SQL =
      List.of(
          // Transactions, and what a driver says of a database that is gone.
          "database.Database",
          "database.Unreachable",
          // Rows beside whatever is changed, also where that is done by JDBC; and their guard.
          "database.Audit",
          "database.AuditStays",
          // Parts and fittings, by the million.
          "stock.StockRows",
          "stock.RevisionSummary",
          // A migration runs before there are entities, on tables as they were then.
          "job.DamperToBeside",
          // Any table, whatever its columns.
          "backup.Archive",
          "backup.Backup",
          "backup.ColumnKind",
          "backup.Contents",
          "backup.Restoration",
          "backup.StoredTable");

  private static final JavaClasses OURS = Compiled.OURS;

  @TestFactory
  Stream<DynamicTest> packagesUseOnlyWhatTheyMay() {
    return MAY_USE.keySet().stream()
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () ->
                        noClasses()
                            .that()
                            .resideInAPackage(inside(name))
                            .should()
                            .dependOnClassesThat(
                                resideInAPackage(ROOT + "..")
                                    .and(not(resideInAnyPackage(allowed(name)))))
                            .allowEmptyShould(true)
                            .check(OURS)));
  }

  @Test
  void everyPackageHasItsRow() {
    String[] known =
        Stream.concat(Stream.of(ROOT), MAY_USE.keySet().stream().map(ArchitectureTest::inside))
            .toArray(String[]::new);
    classes().should().resideInAnyPackage(known).check(OURS);
  }

  @Test
  void rowsOnlyNamePackagesAboveThem() {
    List<String> above = new ArrayList<>();
    MAY_USE.forEach(
        (name, used) -> {
          assertTrue(above.containsAll(used), name + " may use " + used + ", above are " + above);
          above.add(name);
        });
  }

  @Test
  void packagesFormNoCircle() {
    slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(OURS);
  }

  @Test
  void purePackagesKnowOnlyJavaCommonsMathAndNullMarks() {
    String[] pure = PURE.stream().map(ArchitectureTest::inside).toArray(String[]::new);
    String[] known =
        Stream.concat(
                Stream.of(pure),
                Stream.of("java..", "org.apache.commons.math3..", "org.jspecify.annotations.."))
            .toArray(String[]::new);
    classes()
        .that()
        .resideInAnyPackage(pure)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(known)
        .check(OURS);
  }

  @Test
  void onlyWebKnowsHttpAndTemplates() {
    noClasses()
        .that()
        .resideOutsideOfPackage(inside("web"))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(HTTP)
        .check(OURS);
  }

  @Test
  void onlyStockJobAndAccountKnowTheDatabase() {
    noClasses()
        .that()
        .resideOutsideOfPackages(inside("stock"), inside("job"), inside("account"))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(PERSISTENCE)
        .check(OURS);
  }

  @Test
  void onlyWhoMaySpeaksSql() {
    String known =
        SPEAK_SQL.stream()
            .map(name -> Pattern.quote(ROOT + "." + name))
            .collect(Collectors.joining("|", "(", ")(\\$.*)?"));
    noClasses()
        .that()
        .haveNameNotMatching(known)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.sql..", "javax.sql..")
        .check(OURS);
  }

  @Test
  void whoMaySpeakSqlDoes() {
    for (String name : SPEAK_SQL) {
      classes()
          .that()
          .haveFullyQualifiedName(ROOT + "." + name)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "javax.sql..")
          .check(OURS);
    }
  }

  @Test
  void classesAreNamedAfterThingsOfTheTrade() {
    noClasses()
        .should()
        .haveNameMatching(".*(Service|Manager|Impl|Utils?|Helper)(\\$.*)?")
        .check(OURS);
  }

  private static String inside(String name) {
    return ROOT + "." + name + "..";
  }

  private static String[] allowed(String name) {
    return Stream.concat(Stream.of(name), MAY_USE.get(name).stream())
        .map(ArchitectureTest::inside)
        .toArray(String[]::new);
  }
}
