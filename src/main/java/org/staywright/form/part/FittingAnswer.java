package org.staywright.form.part;

import static com.fasterxml.jackson.annotation.JsonInclude.Include.NON_NULL;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Offer;

/**
 * An end fitting or bracket of the range; what does not apply to it is left out.
 *
 * @param description in words, the range's own or made from the figures
 */
public record FittingAnswer(
    @Schema(ref = "part-number") String partNumber,
    String description,
    FittingType type,
    Finish finish,
    @JsonInclude(NON_NULL) @Nullable String thread,
    double lengthToCentreMm,
    double ratingN,
    double swingDeg,
    @JsonInclude(NON_NULL) @Nullable Double ballDiameterMm,
    @JsonInclude(NON_NULL) @Nullable Double pinDiameterMm,
    double massKg,
    @JsonUnwrapped Offer offer) {

  public static FittingAnswer of(Fitting fitting, String description) {
    return new FittingAnswer(
        fitting.number(),
        description,
        fitting.type(),
        fitting.finish(),
        fitting.thread(),
        MILLIMETRE.of(fitting.lengthToCentre()),
        fitting.rating(),
        DEGREE.of(fitting.swing()),
        millimetres(fitting.ballDiameter()),
        millimetres(fitting.pinDiameter()),
        fitting.mass(),
        fitting.offer());
  }

  private static @Nullable Double millimetres(double metres) {
    return metres > 0 ? MILLIMETRE.of(metres) : null;
  }
}
