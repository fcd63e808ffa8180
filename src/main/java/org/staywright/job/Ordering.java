package org.staywright.job;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.staywright.job.order.PartsList;
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

  /** A saved job with its choice, which must be there. */
  public Chosen chosen(SavedJob saved) {
    Range range = range(saved.choice.revision());
    return Chosen.of(Jobs.read(saved, range), saved.choice, range);
  }

  /** Several of them, in their order. */
  public List<Chosen> chosen(List<SavedJob> saved) {
    return saved.stream().map(this::chosen).toList();
  }

  /** One list for several jobs. */
  public PartsList list(List<Chosen> chosen) {
    return PartsList.of(chosen.stream().map(Chosen::wanted).toList());
  }

  /** The range of a revision: most often the one that is at hand. */
  public Range range(int revision) {
    Range newest = current.get();
    return newest.revision() == revision ? newest : stock.range(revision);
  }
}
