package org.staywright.fit.replace;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Coded;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * The force class that a flap asks of its springs, found at its handle.
 *
 * <p>Uncertainties by propagation of distributions (JCGM 101:2008, Supplement 1 to the Guide to the
 * Expression of Uncertainty in Measurement, clause 5): every reading is drawn anew from its normal
 * distribution, what is not measured from an even or exponential one, a fixed seed.
 *
 * @param force F1 of each spring, N
 * @param hold what each must push at the open end so that the flap just stays there, N; null where
 *     its weight keeps it open by itself, or may
 * @param by what the force follows from
 */
public record FlapForce(Span force, @Nullable Span hold, By by) {

  private static final int DRAWS = 4000;
  private static final int SEED = 1;

  /** With more draws than this leading nowhere the readings tell nothing. */
  private static final double MOST_LOST = 0.05;

  /**
   * Push of new springs at the open end over what just holds, spread evenly: our assumption, no
   * source.
   */
  private static final double LEAST_MARGIN = 1.1;

  private static final double MOST_MARGIN = 1.6;

  /** F2/F1 of what may have hung there: 95 % of the gas springs of the sample range. */
  private static final Reading PROGRESSION = new Reading(1.36, 0.22);

  /** Where F1 and F2 are told, from either end of the stroke, m. */
  private static final double GAUGE_POINT = 5e-3;

  /** What the force follows from. */
  public enum By implements Coded {
    /** The slope from which it rose by itself when its springs were good. */
    BEHAVIOUR,
    /** That it stayed open with a usual margin. */
    MARGIN
  }

  /** Refuses what contradicts itself, and readings too rough to tell a force. */
  public static FlapForce of(FlapSurvey survey) {
    if (!survey.faults().isEmpty()) {
      throw new Refusal(survey.faults());
    }
    RandomGenerator random = new SplittableRandom(SEED);
    double[] forces = new double[DRAWS];
    double[] holds = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      FlapSurvey drawn = survey.drawn(random);
      FlapStatics flap = FlapStatics.of(drawn);
      holds[i] = flap.balance(drawn.open().value(), survey.springs());
      forces[i] = force(drawn, flap, random);
    }
    return new FlapForce(
        spread(forces).orElseThrow(FlapForce::tooUncertain),
        spread(holds).orElse(null),
        survey.rises() == null ? By.MARGIN : By.BEHAVIOUR);
  }

  private static double force(FlapSurvey drawn, FlapStatics flap, RandomGenerator random) {
    double spareOpen = spare(random);
    double spareClosed = spare(random);
    double progression = Math.max(1, PROGRESSION.drawn(random).value());
    double margin = LEAST_MARGIN + (MOST_MARGIN - LEAST_MARGIN) * random.nextDouble();
    double slope = (drawn.rises() == null ? drawn.open() : drawn.rises()).value();
    double longest = flap.length(drawn.open().value()) + spareOpen;
    double stroke = longest - flap.length(drawn.closed().value()) + spareClosed;
    double in = longest - flap.length(slope);
    double rise = (progression - 1) * (in - GAUGE_POINT) / (stroke - 2 * GAUGE_POINT);
    double push = flap.balance(slope, drawn.springs()) * (drawn.rises() == null ? margin : 1);
    return push / (1 + rise);
  }

  private static double spare(RandomGenerator random) {
    return -Through.SPARE * Math.log(1 - random.nextDouble());
  }

  /** Empty where too many draws lead nowhere. */
  private static Optional<Span> spread(double[] draws) {
    double[] good = Arrays.stream(draws).filter(d -> Double.isFinite(d) && d > 0).toArray();
    boolean enough = good.length >= (1 - MOST_LOST) * draws.length;
    return enough ? Optional.of(Span.of(good)) : Optional.empty();
  }

  private static Refusal tooUncertain() {
    return new Refusal(new Fault("centresOpenMm", null, "±", "force-too-uncertain"));
  }
}
