package org.staywright.fit.rank;

import java.math.BigDecimal;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;

/**
 * A part × count that is not rejected, with what the order needs.
 *
 * @param row of the range
 * @param count of springs
 * @param misses none where it meets every requirement
 * @param handRms effort, N
 * @param margin least margin
 * @param endSpeed with which it meets its open stop, m/s, null where nothing damps; worked out only
 *     where it is asked for
 * @param setPrice null where unknown
 * @param days until all are here
 * @param exact the plain assessment, null where only the screening has seen it
 */
public record Candidate(
    int row,
    int count,
    Misses misses,
    double handRms,
    double margin,
    Supplier<@Nullable Double> endSpeed,
    @Nullable BigDecimal setPrice,
    int days,
    @Nullable Fit exact) {

  public static Candidate of(Criteria criteria, int row, Fit fit) {
    Double speed = fit.outcome().endSpeed();
    return new Candidate(
        row,
        fit.count(),
        Misses.of(fit.blockedBy()),
        fit.outcome().effort(),
        criteria.margin(fit.outcome()),
        () -> speed,
        fit.setPrice(),
        fit.leadTimeDays(),
        fit);
  }

  boolean fits() {
    return misses.count() == 0;
  }
}
