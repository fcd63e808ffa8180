package org.staywright.fit.job;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Fitting;
import org.staywright.part.Offer;

/**
 * What a set of springs with both their end fittings costs, and when it is here.
 *
 * @param amount net, at the breaks for the count, null where a price is missing
 * @param days until the last piece is here, 0 where the shelf suffices
 */
public record SetPrice(@Nullable BigDecimal amount, int days) {

  /** Of springs that need no end fittings. */
  public static SetPrice of(int count, Offer spring) {
    BigDecimal amount =
        spring.price() == null
            ? null
            : spring.price().each(count).multiply(BigDecimal.valueOf(count));
    return new SetPrice(amount, spring.daysFor(count));
  }

  public static SetPrice of(int count, Offer spring, Fitting rod, Fitting tube) {
    int ofEach = rod.number().equals(tube.number()) ? 2 * count : count;
    int days =
        Math.max(
            spring.daysFor(count),
            Math.max(rod.offer().daysFor(ofEach), tube.offer().daysFor(ofEach)));
    if (spring.price() == null || rod.offer().price() == null || tube.offer().price() == null) {
      return new SetPrice(null, days);
    }
    BigDecimal each =
        spring
            .price()
            .each(count)
            .add(rod.offer().price().each(count))
            .add(tube.offer().price().each(count));
    return new SetPrice(each.multiply(BigDecimal.valueOf(count)), days);
  }

  /** With what acts along: needed, paid and waited for as well. */
  public SetPrice with(List<Beside> parts) {
    SetPrice all = this;
    for (Beside part : parts) {
      SetPrice more = part.price();
      all =
          new SetPrice(
              all.amount == null || more.amount == null ? null : all.amount.add(more.amount),
              Math.max(all.days, more.days));
    }
    return all;
  }
}
