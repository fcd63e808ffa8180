package org.staywright.fit;

import org.staywright.mechanism.Travel;

/**
 * Hand forces over the travel of one fit, N; positive where the hand must work.
 *
 * @param travel the samples
 * @param open opening slowly, nominal
 * @param close closing slowly, nominal
 * @param openWeak with the weakest spring
 * @param closeWeak with the weakest spring
 * @param openStrong with the strongest spring
 * @param closeStrong with the strongest spring
 */
public record FitCurve(
    Travel travel,
    double[] open,
    double[] close,
    double[] openWeak,
    double[] closeWeak,
    double[] openStrong,
    double[] closeStrong) {

  /** The curve of a fit in its job. */
  public static FitCurve of(Job job, Fit fit) {
    double extended = fit.figures().extended();
    Travel travel = new Paths(job).of(extended).travel();
    HandForces nominal =
        HandForces.of(job, travel, fit.part(), fit.count(), extended, Load.NOMINAL);
    HandForces weak = HandForces.of(job, travel, fit.part(), fit.count(), extended, Load.WEAK);
    HandForces strong = HandForces.of(job, travel, fit.part(), fit.count(), extended, Load.STRONG);
    return new FitCurve(
        travel,
        nominal.open(),
        nominal.close(),
        weak.open(),
        weak.close(),
        strong.open(),
        strong.close());
  }
}
