package org.staywright.fit;

import java.math.BigDecimal;
import java.util.List;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Fitting;
import org.staywright.part.Part;

/**
 * A stock part assessed for a job.
 *
 * @param part the spring
 * @param count of equal springs
 * @param rodFitting on the rod
 * @param tubeFitting on the tube
 * @param rodEndAt where the rod hangs, FRAME or MOVING
 * @param figures what it does
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
    Figures figures,
    List<Blocker> blockedBy,
    BigDecimal setPrice,
    int leadTimeDays,
    double score) {

  public Fit {
    blockedBy = List.copyOf(blockedBy);
  }

  public boolean fits() {
    return blockedBy.isEmpty();
  }

  Fit scored(double balanced) {
    return new Fit(
        part,
        count,
        rodFitting,
        tubeFitting,
        rodEndAt,
        figures,
        blockedBy,
        setPrice,
        leadTimeDays,
        balanced);
  }
}
