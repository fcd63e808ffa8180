package org.staywright.form.fit;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.SpringState;
import org.staywright.form.time.TravelUnit;

/** The hand's force over the travel of a job. */
public record HandCurveAnswer(
    double[] travel,
    TravelUnit travelUnit,
    double[] lengthMm,
    double[] openN,
    double[] closeN,
    List<CornerCurve> corners) {

  /** The same in one corner. */
  public record CornerCurve(
      @Schema(ref = "weak-or-strong") SpringState spring,
      @Schema(ref = "heavy-or-light") LoadState load,
      double[] openN,
      double[] closeN) {

    static CornerCurve of(FitCurve.Hand hand) {
      return new CornerCurve(
          hand.corner().spring(),
          hand.corner().load(),
          NEWTON.of(hand.open()),
          NEWTON.of(hand.close()));
    }
  }

  public static HandCurveAnswer of(Job job, FitCurve curve) {
    TravelUnit unit = TravelUnit.of(job.mechanism());
    return new HandCurveAnswer(
        unit.of(curve.travel().q()),
        unit,
        MILLIMETRE.of(curve.travel().length()),
        NEWTON.of(curve.nominal().open()),
        NEWTON.of(curve.nominal().close()),
        curve.corners().stream().map(CornerCurve::of).toList());
  }
}
