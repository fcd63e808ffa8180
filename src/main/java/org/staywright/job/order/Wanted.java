package org.staywright.job.order;

import java.util.List;
import org.staywright.part.Fitting;

/**
 * Sets that are wanted for one job.
 *
 * @param job its name
 * @param outfit one set
 * @param sets of it
 * @param spares of each piece beyond the sets
 * @param range of fittings that studs, clips and brackets are taken from
 * @param revision of the stock it is all from
 * @param years of service of a set
 * @param misfit why the part does not fit, null where it does
 * @param judged what it does in its job, null where that is not known
 * @param alternates to the spring, the best first
 */
public record Wanted(
    String job,
    Outfit outfit,
    int sets,
    int spares,
    List<Fitting> range,
    int revision,
    double years,
    Misfit misfit,
    OrderedFit judged,
    List<Alternate> alternates) {

  /** Without a job that would judge it. */
  public Wanted(
      String job,
      Outfit outfit,
      int sets,
      int spares,
      List<Fitting> range,
      int revision,
      double years) {
    this(job, outfit, sets, spares, range, revision, years, null, null, List.of());
  }

  Outfit.Bill bill() {
    return outfit.bill(range, revision);
  }
}
