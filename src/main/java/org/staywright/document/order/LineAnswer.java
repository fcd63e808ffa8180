package org.staywright.document.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.document.part.LineFigures;
import org.staywright.job.order.Alternate;
import org.staywright.job.order.OrderLine;
import org.staywright.part.Offer;
import org.staywright.part.Price;

/**
 * A line of a parts list; what does not apply to its part is null.
 *
 * @param kind a family or a type of end fitting
 * @param minimum the least that is sold
 * @param pack pieces in it
 * @param oneBatchOf springs of a set that must be alike
 */
public record LineAnswer(
    int position,
    @Schema(ref = "part-number") String partNumber,
    String description,
    String kind,
    int quantity,
    int needed,
    @Nullable BigDecimal unitPrice,
    @Nullable BigDecimal lineTotal,
    @Nullable String currency,
    @Nullable LocalDate validUntil,
    @Nullable Integer minimum,
    @Nullable Integer pack,
    @Nullable Integer orderMultiple,
    int leadTimeDays,
    int stock,
    @Nullable LocalDate stockDate,
    int stockRevision,
    BigDecimal massKg,
    BigDecimal lineMassKg,
    @Nullable Integer oneBatchOf,
    @Nullable BigDecimal shelfLifeYears,
    @Nullable TransportAnswer transport,
    @Nullable AlternateAnswer alternate,
    List<String> notes) {

  /** Of the gas in one piece. */
  public record TransportAnswer(
      BigDecimal gasSpaceL,
      BigDecimal chargeBar,
      BigDecimal chargeBarL,
      boolean withinAdrSp283Figures,
      int burstFactorToDeclare) {

    private static @Nullable TransportAnswer of(LineFigures figures) {
      return figures.charge() == null
          ? null
          : new TransportAnswer(
              figures.gasSpace(),
              figures.charge(),
              figures.product(),
              figures.withinTransport(),
              figures.burstFactor());
    }
  }

  /** On the shelf in its place. */
  public record AlternateAnswer(
      @Schema(ref = "part-number") String partNumber,
      int stock,
      @Nullable BigDecimal openingMoreN,
      @Nullable BigDecimal closingMoreN) {

    private static @Nullable AlternateAnswer of(
        @Nullable Alternate alternate, LineFigures figures) {
      return alternate == null
          ? null
          : new AlternateAnswer(
              alternate.part(), alternate.stock(), figures.openMore(), figures.closeMore());
    }
  }

  static LineAnswer of(int position, OrderLine line, OrderText text) {
    Offer offer = line.item().offer();
    Price price = offer.price();
    LineFigures figures = LineFigures.of(line);
    return new LineAnswer(
        position,
        line.item().number(),
        text.describe(line.item()),
        line.item().kind(),
        line.quantity(),
        line.needed(),
        line.unitPrice(),
        line.total(),
        price == null ? null : price.currency(),
        price == null ? null : price.validUntil(),
        price == null ? null : price.minimum(),
        price == null ? null : price.pack(),
        price == null ? null : price.orderMultiple(),
        line.leadTimeDays(),
        offer.stock(),
        offer.stockDate(),
        line.item().revision(),
        line.item().mass(),
        line.mass(),
        line.matched() > 1 ? line.matched() : null,
        figures.shelfYears(),
        TransportAnswer.of(figures),
        AlternateAnswer.of(line.alternate(), figures),
        text.notes(line));
  }
}
