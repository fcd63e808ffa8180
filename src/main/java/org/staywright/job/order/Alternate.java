package org.staywright.job.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.part.Range;

/**
 * The next best fit on the shelf in place of a chosen part, as many to a set.
 *
 * @param part number of the spring
 * @param stock pieces on the shelf
 * @param handOpen largest hand force opening in its worst corner, N; null where no hand moves the
 *     load
 * @param handClose the same closing
 * @param openMore that more than the chosen part's opening, N; null where that one has no figures
 * @param closeMore the same closing
 * @param mechanism code of what it moves, which tells the words; "" for several kinds
 */
public record Alternate(
    String part,
    int stock,
    Double handOpen,
    Double handClose,
    Double openMore,
    Double closeMore,
    String mechanism) {

  /** So many of the best are looked at: beyond them nobody would go. */
  private static final int LOOKED_AT = 50;

  /**
   * All that could take the place, the best first.
   *
   * @param chosen as assessed, null where it has no figures
   */
  public static List<Alternate> of(Job job, Range range, Choice choice, Fit chosen) {
    Ranking ranking = Ranking.of(range, job.fromShelf(choice.count(), LOOKED_AT));
    return ranking.fits().stream()
        .filter(fit -> !fit.part().number().equals(choice.part()))
        .map(fit -> compared(fit, chosen, job.mechanism().code()))
        .toList();
  }

  private static Alternate compared(Fit fit, Fit chosen, String mechanism) {
    String number = fit.part().number();
    int stock = fit.part().offer().stock();
    return new Alternate(
        number,
        stock,
        Figure.HAND_OPEN_WORST.value(fit),
        Figure.HAND_CLOSE_WORST.value(fit),
        more(Figure.HAND_OPEN_WORST, fit, chosen),
        more(Figure.HAND_CLOSE_WORST, fit, chosen),
        mechanism);
  }

  /** Null without what was chosen, and where no hand moves the load. */
  private static Double more(Figure hand, Fit fit, Fit chosen) {
    Double now = hand.value(fit);
    return now == null || chosen == null ? null : Double.valueOf(now - hand.value(chosen));
  }

  /** The first that does in every job of a line and is there in its number. */
  static Alternate common(List<List<Alternate>> jobs, int needed) {
    for (Alternate first : jobs.get(0)) {
      List<Alternate> same = new ArrayList<>();
      for (List<Alternate> job : jobs) {
        Optional<Alternate> found = job.stream().filter(a -> a.part.equals(first.part)).findFirst();
        found.ifPresent(same::add);
      }
      if (first.stock >= needed && same.size() == jobs.size()) {
        return same.stream().reduce(Alternate::harder).orElseThrow();
      }
    }
    return null;
  }

  /** What is asked of the hand at most where it serves in two jobs. */
  private Alternate harder(Alternate other) {
    return new Alternate(
        part,
        stock,
        more(handOpen, other.handOpen),
        more(handClose, other.handClose),
        more(openMore, other.openMore),
        more(closeMore, other.closeMore),
        mechanism.equals(other.mechanism) ? mechanism : "");
  }

  private static Double more(Double one, Double other) {
    return one == null || other == null ? null : Double.valueOf(Math.max(one, other));
  }
}
