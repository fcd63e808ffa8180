package org.staywright.fit.job;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Fitting;
import org.staywright.part.Price;

/** The end fittings that answer a wish on a thread, the one to try first in front. */
public final class FittingChoice {

  /** Cheapest, then shortest, then by number; without a price last. */
  private static final Comparator<Fitting> ORDER =
      Comparator.comparing(FittingChoice::each, Comparator.nullsLast(Comparator.naturalOrder()))
          .thenComparingDouble(Fitting::lengthToCentre)
          .thenComparing(Fitting::number);

  private FittingChoice() {}

  public static List<Fitting> of(List<Fitting> all, Job.FittingWish wish, String thread) {
    return all.stream()
        .filter(fitting -> fitting.type().endsASpring() && thread.equals(fitting.thread()))
        .filter(
            fitting ->
                wish.number() != null
                    ? fitting.number().equals(wish.number())
                    : fitting.type() == wish.type())
        .sorted(ORDER)
        .toList();
  }

  private static @Nullable BigDecimal each(Fitting fitting) {
    Price price = fitting.offer().price();
    return price == null ? null : price.each(1);
  }
}
