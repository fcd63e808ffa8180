package org.staywright.fit;

import java.math.BigDecimal;

/**
 * A part × count that is not rejected, with what the order needs.
 *
 * @param row of the range
 * @param count of springs
 * @param fits whether it meets every requirement
 * @param handRms effort, N
 * @param margin least margin
 * @param setPrice null where unknown
 * @param days until all are here
 * @param exact the plain assessment, null where only the screening has seen it
 */
record Candidate(
    int row,
    int count,
    boolean fits,
    double handRms,
    double margin,
    BigDecimal setPrice,
    int days,
    Fit exact) {

  static Candidate of(Job job, int row, Fit fit) {
    return new Candidate(
        row,
        fit.count(),
        fit.fits(),
        fit.outcome().effort(),
        fit.outcome().margin(job),
        fit.setPrice(),
        fit.leadTimeDays(),
        fit);
  }
}
