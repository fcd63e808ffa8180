package org.staywright.fit.assess;

import static org.staywright.unit.Unit.ROOM;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Outcome;
import org.staywright.fit.job.SeatFigures;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;

/**
 * A stock part assessed for a job.
 *
 * @param part the spring
 * @param count of equal springs
 * @param rodFitting on the rod, null for a column, which needs none
 * @param tubeFitting on the tube, null for a column
 * @param rodEndAt where the rod hangs, FRAME or MOVING
 * @param outcome what it does
 * @param blockedBy what it misses; empty where it fits
 * @param setPrice of springs and fittings, null where a price is missing
 * @param leadTimeDays until all are here
 * @param score of the balanced ranking, 0…100
 */
public record Fit(
    Part part,
    int count,
    Fitting rodFitting,
    Fitting tubeFitting,
    RodEnd rodEndAt,
    Outcome outcome,
    List<Blocker> blockedBy,
    BigDecimal setPrice,
    int leadTimeDays,
    double score) {

  public Fit {
    blockedBy = List.copyOf(blockedBy);
  }

  /** What it does where a hand moves the load; empty under a seat. */
  public Optional<Figures> figures() {
    return outcome.as(Optional::of, seat -> Optional.empty());
  }

  /** What it does under a seat; empty where a hand moves the load. */
  public Optional<SeatFigures> seat() {
    return outcome.as(figures -> Optional.empty(), Optional::of);
  }

  /**
   * How near to constant its slow force comes in the travel that is used, at 20 °C: the least over
   * the greatest.
   */
  public double constancy() {
    ForceLaw law = part.spring().law();
    return outcome.as(
        figures -> constancy(law, figures.lengths()),
        seat -> law.constancy(0, seat.reached(), ROOM));
  }

  private static double constancy(ForceLaw law, Figures.Lengths lengths) {
    double from = lengths.extended() - lengths.max();
    return law.constancy(from, lengths.extended() - lengths.min(), ROOM);
  }

  public boolean fits() {
    return blockedBy.isEmpty();
  }

  Fit missing(List<Blocker> blockers) {
    return with(blockers, score);
  }

  public Fit scored(double balanced) {
    return with(blockedBy, balanced);
  }

  private Fit with(List<Blocker> blockers, double balanced) {
    return new Fit(
        part,
        count,
        rodFitting,
        tubeFitting,
        rodEndAt,
        outcome,
        blockers,
        setPrice,
        leadTimeDays,
        balanced);
  }
}
