package org.staywright.web;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.caution.Cautions;
import org.staywright.document.PartFigures;
import org.staywright.part.Part;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A part in full, in words.
 *
 * @param number part number
 * @param description in a line
 * @param outline dimensioned
 * @param forces over the compression at three temperatures
 * @param figures all of them
 * @param slow forces where the trade measures them
 * @param prices by quantity; none where none is known
 * @param supply terms, stock and lead time
 * @param cautions it calls for
 */
public record PartView(
    String number,
    String description,
    RawString outline,
    RawString forces,
    List<Figure> figures,
    List<Figure> slow,
    List<Figure> prices,
    List<Figure> supply,
    List<CautionView> cautions) {

  static PartView of(Part part, Wording wording) {
    return new PartView(
        part.number(),
        PartText.in(wording).describe(part),
        Pictures.outline(part, wording),
        Pictures.forces(part, wording),
        figures(new PartFigures(part, wording).pairs()),
        figures(new PartFigures(part, wording).forces()),
        Supply.prices(part.offer(), wording),
        Supply.terms(part.offer(), wording),
        CautionView.of(Cautions.of(part), wording));
  }

  private static List<Figure> figures(List<String[]> pairs) {
    return pairs.stream().map(pair -> new Figure(pair[0], pair[1])).toList();
  }
}
