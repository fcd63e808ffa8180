package org.staywright.job.order;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Price;

/** Finds what an end fitting is hung on: a stud and a clip for a ball socket, or a plate. */
public final class Mate {

  /** Diameters that differ by less are the same, m. */
  private static final double SAME = 1e-5;

  private final List<Fitting> range;
  private final boolean brackets;

  /**
   * What no fitting of the range matches.
   *
   * @param type looked for
   * @param beside the end fitting it was looked for
   */
  public record Missing(FittingType type, String beside) {}

  Mate(List<Fitting> range, boolean brackets) {
    this.range = range;
    this.brackets = brackets;
  }

  /** Adds what goes with an end fitting. */
  void of(Fitting end, List<Fitting> held, List<Missing> unmatched) {
    boolean socket = end.type() == FittingType.BALL_SOCKET;
    if (brackets) {
      find(end, FittingType.PLATE, socket ? ball(end) : pin(end), held, unmatched);
    } else if (socket) {
      find(end, FittingType.BALL_STUD, ball(end), held, unmatched);
    }
    if (socket) {
      find(end, FittingType.RETAINING_CLIP, ball(end), held, unmatched);
    }
  }

  /** Of the same finish if there is one, then the cheapest, then by number. */
  private void find(
      Fitting end,
      FittingType type,
      Predicate<Fitting> matches,
      List<Fitting> held,
      List<Missing> unmatched) {
    boolean carries = type != FittingType.RETAINING_CLIP;
    range.stream()
        .filter(fitting -> fitting.type() == type && matches.test(fitting))
        .filter(fitting -> !carries || fitting.rating() >= end.rating())
        .min(
            Comparator.comparing((Fitting fitting) -> fitting.finish() != end.finish())
                .thenComparing(Mate::each, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Fitting::number))
        .ifPresentOrElse(held::add, () -> unmatched.add(new Missing(type, end.number())));
  }

  private static Predicate<Fitting> ball(Fitting end) {
    return fitting -> Math.abs(fitting.ballDiameter() - end.ballDiameter()) < SAME;
  }

  private static Predicate<Fitting> pin(Fitting end) {
    return fitting -> Math.abs(fitting.pinDiameter() - end.pinDiameter()) < SAME;
  }

  private static BigDecimal each(Fitting fitting) {
    Price price = fitting.offer().price();
    return price == null ? null : price.each(1);
  }
}
