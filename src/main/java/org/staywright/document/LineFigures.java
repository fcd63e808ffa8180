package org.staywright.document;

import java.math.BigDecimal;
import java.math.MathContext;
import org.staywright.job.Alternate;
import org.staywright.job.OrderLine;
import org.staywright.part.Part;
import org.staywright.part.Transport;
import org.staywright.unit.Unit;

/**
 * The figures of a line that are computed, rounded once for every form of the list; null where they
 * do not apply.
 *
 * @param gasSpace L
 * @param charge bar, gauge
 * @param product bar·L
 * @param withinTransport whether the figures of ADR special provision 283 are kept
 * @param shelfYears years on the shelf until F1 is below its tolerance
 * @param openMore hand force opening with the alternate, N more
 * @param closeMore the same closing
 */
record LineFigures(
    BigDecimal gasSpace,
    BigDecimal charge,
    BigDecimal product,
    Boolean withinTransport,
    BigDecimal shelfYears,
    BigDecimal openMore,
    BigDecimal closeMore) {

  private static final MathContext SIX = new MathContext(6);

  static LineFigures of(OrderLine line) {
    Part part = line.item().part();
    Alternate alternate = line.alternate();
    Double open = alternate == null ? null : alternate.openMore();
    Double close = alternate == null ? null : alternate.closeMore();
    if (part == null) {
      return new LineFigures(null, null, null, null, null, null, null);
    }
    Transport transport = Transport.of(part);
    double years = part.shelfYears();
    return new LineFigures(
        rounded(Unit.LITRE.of(transport.gasSpace())),
        rounded(Unit.BAR.of(transport.charge())),
        rounded(Unit.LITRE.of(Unit.BAR.of(transport.product()))),
        transport.withinFigures(),
        Double.isFinite(years) ? rounded(years) : null,
        open == null ? null : rounded(open),
        close == null ? null : rounded(close));
  }

  private static BigDecimal rounded(double value) {
    return new BigDecimal(value, SIX);
  }
}
