package org.staywright.web.part;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.List;
import org.staywright.part.Column;
import org.staywright.part.MeasuredSpring;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A part in a list, in words.
 *
 * @param partNumber of the spring
 * @param finish of its surface
 * @param sizes in the order of the table's columns
 * @param price of one
 * @param stock on the shelf
 */
public record FoundPart(
    String partNumber, String finish, List<Size> sizes, String price, String stock) {

  /**
   * @param label of the column
   * @param value in the column's unit
   * @param off from what was measured, "" where it agrees or was not measured
   */
  public record Size(String label, String value, String off) {}

  static FoundPart of(Part part, MeasuredSpring measured, Wording wording) {
    Spring spring = part.spring();
    Offer offer = part.offer();
    return new FoundPart(
        part.number(),
        PartText.in(wording).name("finish", part.finish()),
        List.of(
            size(
                Column.ROD_DIAMETER,
                "part.rod",
                spring.rodDiameter(),
                MILLIMETRE,
                measured,
                wording),
            size(
                Column.TUBE_DIAMETER,
                "part.tube",
                spring.tubeDiameter(),
                MILLIMETRE,
                measured,
                wording),
            size(
                Column.EXTENDED_LENGTH,
                "part.extended",
                spring.extendedLength(),
                MILLIMETRE,
                measured,
                wording),
            size(Column.STROKE, "part.stroke", spring.stroke(), MILLIMETRE, measured, wording),
            size(Column.FORCE, "part.force", spring.force(), NEWTON, measured, wording)),
        offer.price() == null
            ? "–"
            : wording.money(offer.price().each(1), offer.price().currency()),
        wording.number(offer.stock(), 0));
  }

  private static Size size(
      Column column, String label, double si, Unit unit, MeasuredSpring measured, Wording wording) {
    MeasuredSpring.Figure figure = measured.figures().get(column);
    double off = figure == null ? 0 : si - figure.value();
    String text = wording.shortest(off, unit, 1);
    return new Size(
        wording.text(label),
        wording.shortest(si, unit, 1),
        text.equals("0") ? "" : off > 0 ? "+" + text : text);
  }
}
