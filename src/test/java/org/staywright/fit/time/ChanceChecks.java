package org.staywright.fit.time;

import java.util.ArrayList;
import java.util.List;
import org.staywright.check.Check;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.mechanism.Travel;
import org.staywright.spring.ForceLaw;

/** Chances against the normal distribution, where one thing alone strays. */
public final class ChanceChecks {

  private static final Job LID = Samples.lid();
  private static final int DRAWS = 100_000;

  private ChanceChecks() {}

  /** A mass that alone strays holds while its factor stays under the hold ratio. */
  public static List<Check> all() {
    Fit fit = Ranking.of(SampleRange.read(), LID).fits().get(0);
    double beyond = holdRatio(fit) - 1;
    List<Check> checks = new ArrayList<>();
    checks.add(holds(fit, beyond, 0.5, "0.69146"));
    checks.add(holds(fit, beyond, 1, "0.84134"));
    checks.add(holds(fit, beyond, 2, "0.97725"));
    return checks;
  }

  private static Check holds(Fit fit, double beyond, double deviations, String published) {
    Uncertainties spreads = only(Source.MASS, 2 * beyond / deviations);
    Chance chance = Chance.of(LID, fit, spreads, DRAWS, 7);
    return Check.absolute(
        "lid whose mass strays: holds at " + deviations + " standard deviations",
        published,
        chance.holds(),
        "",
        4 * chance.error(chance.holds()),
        "Φ (M. Abramowitz, I. A. Stegun, Table 26.1, from memory); four standard errors of"
            + " 100,000 draws");
  }

  public static Uncertainties only(Source source, double half) {
    double[] all = new double[Source.values().length];
    all[source.ordinal()] = half;
    return new Uncertainties(all[0], all[1], all[2], all[3], all[4], all[5], all[6]);
  }

  /** n·F·L′/|Q| at the open end, nominal temperature, at the end of the service. */
  public static double holdRatio(Fit fit) {
    Travel travel = LID.mechanism().travel(LID.mechanism().end());
    int end = travel.last();
    double left = SpringState.gasLeft(LID.conditions(), fit.part().wear());
    ForceLaw law = fit.part().spring().law(1, left);
    double x = fit.figures().orElseThrow().lengths().extended() - travel.length()[end];
    return fit.count()
        * law.force(x, LID.conditions().nominal())
        * travel.lever()[end]
        / -travel.load()[end];
  }
}
