package org.staywright.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.staywright.part.Range;

/** The range of the newest revision, built once for each. */
@ApplicationScoped
public class CurrentRange {

  private final Stock stock;
  private volatile Range built;

  public CurrentRange(Stock stock) {
    this.stock = stock;
  }

  public Range get() {
    int newest = stock.newest();
    Range range = built;
    return range != null && range.revision() == newest ? range : build();
  }

  /** As it was built last, without a question to the database. */
  public Optional<Range> last() {
    return Optional.ofNullable(built);
  }

  private synchronized Range build() {
    int newest = stock.newest();
    if (built == null || built.revision() != newest) {
      // A million parts twice would not fit into the memory: the older range goes first.
      built = null;
      built = stock.range(newest);
    }
    return built;
  }
}
