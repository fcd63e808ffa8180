package org.staywright.job;

import jakarta.enterprise.context.ApplicationScoped;
import org.staywright.part.Fitting;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.Stock;

/** Parts lists from choices, each by the stock revision it was frozen from. */
@ApplicationScoped
public class Ordering {

  private final CurrentRange current;
  private final Stock stock;

  public Ordering(CurrentRange current, Stock stock) {
    this.current = current;
    this.stock = stock;
  }

  public PartsList of(Choice choice) {
    Range range = range(choice.revision());
    PartsList.Outfit outfit =
        new PartsList.Outfit(
            range.part(choice.part()).orElseThrow(),
            choice.count(),
            fitting(range, choice.rodFitting()),
            fitting(range, choice.tubeFitting()),
            choice.brackets());
    return PartsList.of(outfit, choice.sets(), choice.spares(), range.fittings());
  }

  /** The range of a revision: most often the one that is at hand. */
  public Range range(int revision) {
    Range newest = current.get();
    return newest.revision() == revision ? newest : stock.range(revision);
  }

  private static Fitting fitting(Range range, String number) {
    return range.fitting(number).orElseThrow();
  }
}
