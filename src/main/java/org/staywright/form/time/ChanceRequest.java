package org.staywright.form.time;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.form.schema.Field.withDefaults;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.PERCENT;

import org.staywright.fit.time.Chance;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.job.CurveRequest;
import org.staywright.form.job.FitRequest;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.part.Range;
import org.staywright.unit.Bound;

/**
 * Which chances are asked for.
 *
 * @param of the part in its job
 * @param draws to make
 * @param seed of the draws
 * @param spreads NaN where the usual ones are to do
 */
public record ChanceRequest(CurveRequest of, int draws, int seed, Uncertainties spreads) {

  private static final Shape SPREADS =
      Shape.of(
          "spreads",
          optional("forceN", Amount.between(0, 50_000, NEWTON)),
          optional("frictionPercent", Amount.between(0, 200, PERCENT)),
          optional("massPercent", Amount.between(0, 100, PERCENT)),
          optional("centreOfMassMm", Amount.between(0, 500, MILLIMETRE)),
          optional("mountsMm", Amount.between(0, 100, MILLIMETRE)),
          optional("temperatureK", new Amount(Bound.between(0, 200, "K"))),
          optional("ageYears", new Amount(Bound.between(0, 50, "a"))));

  public static final Shape SHAPE =
      FitRequest.shape(
          "fit-chance",
          withDefault("draws", new Whole(1, Chance.MOST_DRAWS), 10_000),
          withDefault("seed", new Whole(0, Integer.MAX_VALUE), 1),
          withDefaults("spreads", SPREADS));

  /** A refusal names every fault of the body. */
  public static ChanceRequest read(JsonText body, Range range) {
    FitRequest.JsonTree asked = FitRequest.read(SHAPE, body, FitRequest::handed);
    return new ChanceRequest(
        CurveRequest.of(asked, range),
        asked.whole("/draws"),
        asked.whole("/seed"),
        new Uncertainties(
            asked.number("/spreads/forceN"),
            PERCENT.si(asked.number("/spreads/frictionPercent")),
            PERCENT.si(asked.number("/spreads/massPercent")),
            MILLIMETRE.si(asked.number("/spreads/centreOfMassMm")),
            MILLIMETRE.si(asked.number("/spreads/mountsMm")),
            asked.number("/spreads/temperatureK"),
            asked.number("/spreads/ageYears")));
  }
}
