package org.staywright.fit.replace;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.gas.BeyondEquation;
import org.staywright.part.Part;
import org.staywright.spring.Spring;

/**
 * Share of its gas that an old spring still has, by what a scale showed of it and what it pushed
 * when new.
 *
 * @param share 1 for all; above 1 where it pushes more than it should
 * @param plusMinus 95 % half-width, from the reading and from the tolerance of filling
 */
public record GasLeft(double share, double plusMinus) {

  /** A flap that was given a hold ratio of 1.1 no longer holds for sure with less than this. */
  public static final double ENOUGH = 1 / 1.1;

  private static final double LEAST = 0.01;
  private static final double STEP = 1e-4;

  /** What to do with it. */
  public enum Verdict {
    KEEP,
    WATCH,
    REPLACE,
    /** It pushes more than is printed on it. */
    TOO_STRONG
  }

  /**
   * @param part that the spring is like
   * @param printed force when new, N; null for that of the part
   * @return empty where the part cannot be pushed in so far or no share explains the reading
   */
  public static Optional<GasLeft> of(ScaleReading scale, Part part, @Nullable Double printed) {
    Spring spring = part.spring();
    double factor = printed == null ? 1 : printed / spring.force();
    if (!scale.within(spring)) {
      return Optional.empty();
    }
    double most = strongest(scale, spring, factor);
    double reading = scale.force().value();
    if (most < LEAST || shown(scale, spring, factor, most) < reading) {
      return Optional.empty();
    }
    double low = LEAST;
    double high = most;
    while (high - low > STEP) {
      double middle = (low + high) / 2;
      if (shown(scale, spring, factor, middle) < reading) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double share = (low + high) / 2;
    double full = shown(scale, spring, factor, Math.min(1, most));
    double off = Math.hypot(scale.force().plusMinus(), part.forceTolerance() * factor * share);
    return Optional.of(new GasLeft(share, off / full));
  }

  private static double shown(ScaleReading scale, Spring spring, double factor, double share) {
    return scale.of(spring.law(factor, share));
  }

  /** The largest share, up to one and a half, whose gas can be computed; 0 for none. */
  private static double strongest(ScaleReading scale, Spring spring, double factor) {
    for (double share : new double[] {1.5, 1.25, 1.1, 1}) {
      try {
        if (!Double.isNaN(shown(scale, spring, factor, share))) {
          return share;
        }
      } catch (BeyondEquation beyond) {
        // Denser than the gas law reaches: a smaller share may do.
      }
    }
    return 0;
  }

  /** Share lost in a year, were the loss even; NaN for an age of nought. */
  public double lostPerYear(double years) {
    return years > 0 ? Math.max(0, 1 - share) / years : Double.NaN;
  }

  public Verdict verdict() {
    if (share - plusMinus > 1) {
      return Verdict.TOO_STRONG;
    }
    if (share - plusMinus >= ENOUGH) {
      return Verdict.KEEP;
    }
    return share + plusMinus < ENOUGH ? Verdict.REPLACE : Verdict.WATCH;
  }
}
