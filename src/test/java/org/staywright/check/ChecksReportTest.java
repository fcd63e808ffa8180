package org.staywright.check;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.Reports;
import org.staywright.fit.time.ChanceChecks;
import org.staywright.gas.GasExampleChecks;
import org.staywright.gas.NitrogenChecks;
import org.staywright.gas.ViscosityChecks;
import org.staywright.mechanism.StaticsChecks;
import org.staywright.motion.MotionChecks;
import org.staywright.part.LawChecks;
import org.staywright.part.StandardChecks;
import org.staywright.spring.CoilChecks;
import org.staywright.spring.LockChecks;
import org.staywright.spring.StrengthChecks;
import org.staywright.unit.UnitChecks;

/**
 * Every published figure against ours. {@code reports/checks.md} tells them, so that a change of a
 * figure shows as a change of the file.
 */
@TestInstance(Lifecycle.PER_CLASS)
class ChecksReportTest {

  private static final String HEAD =
      """
      # Checks against published figures

      Written by `mvn test -Preports`; do not edit. `ChecksReportTest` fails where it is not so, or where a
      deviation exceeds its tolerance. Tolerances in percent are of the published figure, or half of
      its last printed digit where that is coarser. Sources end in "from memory" where nobody looked
      the figure up; what the figures are of is explained in `src/site/markdown/physics.md`.
      """;

  private static final Map<String, Supplier<List<Check>>> SUBJECTS = new LinkedHashMap<>();

  static {
    SUBJECTS.put("Units", UnitChecks::all);
    SUBJECTS.put("Nitrogen: single published values", NitrogenChecks::points);
    SUBJECTS.put("Nitrogen: virial coefficients", NitrogenChecks::virials);
    SUBJECTS.put("Nitrogen: slow and fast changes", GasExampleChecks::all);
    SUBJECTS.put("Viscosity of nitrogen and oil", ViscosityChecks::all);
    SUBJECTS.put("Flow through an orifice", MotionChecks::flow);
    SUBJECTS.put("Motion", MotionChecks::all);
    SUBJECTS.put("Chance", ChanceChecks::all);
    SUBJECTS.put("Buckling of one section", StrengthChecks::buckling);
    SUBJECTS.put("Buckling of two sections", StrengthChecks::stepped);
    SUBJECTS.put("Thick tubes", StrengthChecks::tubes);
    SUBJECTS.put("Coil springs", CoilChecks::all);
    SUBJECTS.put("Locked springs", LockChecks::all);
    SUBJECTS.put("Flaps on hinges", StaticsChecks::all);
    SUBJECTS.put("Centres of mass", StaticsChecks::centres);
    SUBJECTS.put("Loads on inclines", StaticsChecks::inclines);
    SUBJECTS.put("Preferred numbers", StandardChecks::preferredNumbers);
    SUBJECTS.put("Threads", StandardChecks::threads);
    SUBJECTS.put("Pressure equipment and transport", LawChecks::all);
    SUBJECTS.put("Nitrogen: table", NitrogenChecks::table);
  }

  /** Worked out once, but by this test and not before it: so a changed program is met anew. */
  private final Map<String, List<Check>> done = new HashMap<>();

  @ParameterizedTest
  @MethodSource("subjects")
  void oursMeetsWhatIsPublished(String subject) {
    assertAll(checks(subject).stream().map(check -> () -> assertTrue(check.holds(), check::row)));
  }

  @Test
  void theReportIsAsItIsKept() throws IOException {
    Reports.hold("checks.md", report());
  }

  private static Set<String> subjects() {
    return SUBJECTS.keySet();
  }

  private List<Check> checks(String subject) {
    return done.computeIfAbsent(subject, each -> SUBJECTS.get(each).get());
  }

  private String report() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append("\n| subject | figures | largest share of its tolerance used |\n|---|---|---|\n");
    for (String subject : subjects()) {
      List<Check> checks = checks(subject);
      text.append("| ")
          .append(subject)
          .append(" | ")
          .append(checks.size())
          .append(" | ")
          .append(Math.round(100 * most(checks)))
          .append(" % |\n");
    }
    for (String subject : subjects()) {
      List<Check> checks = checks(subject);
      text.append("\n## ").append(subject).append("\n\n");
      List<String> sources = checks.stream().map(Check::source).distinct().toList();
      boolean one = sources.size() == 1;
      if (one) {
        text.append("Source: ").append(sources.get(0)).append(".\n\n");
      }
      text.append("| figure | published | ours | unit | deviation | tolerance |");
      text.append(
          one ? "\n|---|---|---|---|---|---|\n" : " source |\n|---|---|---|---|---|---|---|\n");
      for (Check check : checks) {
        text.append(check.row()).append(one ? "\n" : " " + check.source() + " |\n");
      }
    }
    return text.toString();
  }

  private static double most(List<Check> checks) {
    return checks.stream()
        .mapToDouble(check -> Math.abs(check.deviation()) / check.tolerance())
        .max()
        .orElse(0);
  }
}
