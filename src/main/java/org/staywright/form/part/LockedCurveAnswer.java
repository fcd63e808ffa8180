package org.staywright.form.part;

import static org.staywright.unit.Unit.MILLIMETRE;

import org.staywright.spring.LockedCurve;

/** What a spring that locks holds beyond its open force, one list for each quantity. */
public record LockedCurveAnswer(
    double[] deflectionMm, double[] slowN, double[] fastN, double stiffnessNPerMm) {

  public static LockedCurveAnswer of(LockedCurve curve) {
    return new LockedCurveAnswer(
        MILLIMETRE.of(curve.deflection()),
        curve.slow(),
        curve.fast(),
        MILLIMETRE.si(curve.stiffness()));
  }
}
