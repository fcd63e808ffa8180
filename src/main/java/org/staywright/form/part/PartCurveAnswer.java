package org.staywright.form.part;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.MILLIMETRE;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.staywright.part.Part;
import org.staywright.spring.ForceCurve;

/** Forces of a part over its stroke, one list for each quantity. */
public record PartCurveAnswer(
    @Schema(ref = "part-number") String partNumber,
    double temperatureC,
    double[] compressionMm,
    double[] gasForceN,
    double[] extendingN,
    double[] compressingN,
    double[] fastCompressingN,
    double[] pressureBar,
    double progression) {

  public static PartCurveAnswer of(Part part, double kelvin, ForceCurve curve) {
    return new PartCurveAnswer(
        part.number(),
        CELSIUS.of(kelvin),
        MILLIMETRE.of(curve.compression()),
        curve.gas(),
        curve.extending(),
        curve.compressing(),
        curve.fastCompressing(),
        BAR.of(curve.pressure()),
        part.spring().progression());
  }
}
