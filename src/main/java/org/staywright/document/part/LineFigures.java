package org.staywright.document.part;

import java.math.BigDecimal;
import java.math.MathContext;
import org.staywright.job.order.Alternate;
import org.staywright.job.order.OrderLine;
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
 * @param burstFactor burst pressure over charge that the supplier must declare
 * @param shelfYears years on the shelf until F1 is below its tolerance
 * @param openMore hand force opening with the alternate, N more
 * @param closeMore the same closing
 */
public record LineFigures(
    BigDecimal gasSpace,
    BigDecimal charge,
    BigDecimal product,
    Boolean withinTransport,
    Integer burstFactor,
    BigDecimal shelfYears,
    BigDecimal openMore,
    BigDecimal closeMore) {

  private static final MathContext SIX = new MathContext(6);

  public static LineFigures of(OrderLine line) {
    Part part = line.item().part();
    Alternate alternate = line.alternate();
    Double open = alternate == null ? null : alternate.openMore();
    Double close = alternate == null ? null : alternate.closeMore();
    Transport gas = part == null ? null : part.gas().map(Transport::of).orElse(null);
    double years = part == null ? Double.NaN : part.shelfYears();
    return new LineFigures(
        gas == null ? null : rounded(Unit.LITRE.of(gas.gasSpace())),
        gas == null ? null : rounded(Unit.BAR.of(gas.charge())),
        gas == null ? null : rounded(Unit.LITRE.of(Unit.BAR.of(gas.product()))),
        gas == null ? null : gas.withinFigures(),
        gas == null ? null : gas.burstFactor(),
        Double.isFinite(years) ? rounded(years) : null,
        open == null ? null : rounded(open),
        close == null ? null : rounded(close));
  }

  private static BigDecimal rounded(double value) {
    return new BigDecimal(value, SIX);
  }
}
