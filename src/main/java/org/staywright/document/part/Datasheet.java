package org.staywright.document.part;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.chart.FamilyCharts;
import org.staywright.document.chart.ForceChart;
import org.staywright.document.sheet.Edition;
import org.staywright.document.sheet.Remarks;
import org.staywright.document.sheet.Sheet;
import org.staywright.document.view.SpringOutline;
import org.staywright.part.Part;
import org.staywright.part.Price;
import org.staywright.wording.LawText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** All about one part: outline, force curves, figures, terms, cautions. */
public final class Datasheet {

  /** Greatest height, pt. */
  private static final double OUTLINE = 170;

  private final Part part;
  private final Edition edition;
  private final Wording wording;

  private Datasheet(Part part, Edition edition, Wording wording) {
    this.part = part;
    this.edition = edition;
    this.wording = wording.about(part.family().code());
  }

  /** A datasheet that does not say which stock it is from. */
  public static byte[] pdf(Part part, Wording wording) {
    return pdf(part, null, wording);
  }

  /** A datasheet of a stock's revision; null where there is none. */
  public static byte[] pdf(Part part, Edition edition, Wording wording) {
    return new Datasheet(part, edition, wording).print();
  }

  private byte[] print() {
    Sheet.Cover cover =
        new Sheet.Cover(
            wording.text("document.datasheet.title", part.number()),
            wording.locale(),
            footer(),
            edition == null ? null : edition.date(),
            part + " " + edition);
    return Sheet.print(cover, this::fill);
  }

  private void fill(Sheet sheet) {
    sheet.title(
        wording.text("document.datasheet"), part.number(), PartText.in(wording).brief(part));
    sheet.drawing(SpringOutline.of(part, wording), OUTLINE);
    if (part.spring().force() > 0) {
      sheet.heading(wording.text("document.force-curves"));
      sheet.drawing(ForceChart.forPaper(part, wording), 225);
      sheet.heading(wording.text("document.forces"));
      sheet.pairs(new PartFigures(part, wording).forces());
      sheet.note(wording.text("document.near"));
    }
    sheet.heading(wording.text("document.terms"));
    sheet.pairs(terms());
    if (part.spring().force() > 0) {
      sheet.newPage();
    }
    family(sheet);
    sheet.heading(wording.text("document.figures"));
    sheet.pairs(new PartFigures(part, wording).pairs());
    if (!part.derived().isEmpty()) {
      sheet.note(wording.text("document.derived"));
    }
    if (part.description() != null) {
      sheet.note(wording.text("document.own-description", part.description()));
    }
    sheet.heading(wording.text("law.heading"));
    sheet.statements(LawText.in(wording).pairs(part));
    sheet.note(wording.text("law.note"));
    sheet.heading(wording.text("document.cautions"));
    sheet.remarks(Remarks.of(Cautions.of(part), wording));
  }

  /** What only its family has, and what it must bear. */
  private void family(Sheet sheet) {
    for (FamilyCharts.Chart chart : FamilyCharts.of(part, wording)) {
      sheet.heading(chart.heading());
      sheet.drawing(chart.drawing(), 230);
    }
    List<String[]> own = FamilyFigures.of(part, wording);
    if (!own.isEmpty()) {
      sheet.heading(wording.text("document.family." + part.family().code()));
      sheet.pairs(own);
    }
    List<String[]> strength = new ArrayList<>(FamilyFigures.evenness(part, wording));
    strength.addAll(FamilyFigures.strength(part, wording));
    sheet.heading(wording.text("document.strength"));
    sheet.pairs(strength);
    sheet.note(wording.text("document.strength.about"));
  }

  private String footer() {
    String computed = wording.text("document.footer");
    return edition == null
        ? computed
        : computed
            + ' '
            + wording.text("document.footer.edition", edition.revision(), edition.date());
  }

  private List<String[]> terms() {
    List<String[]> terms = new ArrayList<>();
    Price price = part.offer().price();
    if (price != null) {
      for (Price.Break each : price.breaks()) {
        terms.add(
            new String[] {
              wording.text("document.price-from", each.from()),
              wording.text("document.price-each", wording.money(each.each(), price.currency()))
            });
      }
      terms.add(term("document.valid-until", String.valueOf(price.validUntil())));
      terms.add(term("document.pack", String.valueOf(price.pack())));
      terms.add(term("document.order-multiple", String.valueOf(price.orderMultiple())));
    }
    String days = wording.text("document.days", part.offer().leadTimeDays());
    terms.add(term("part.label.leadTimeDays", days));
    return terms;
  }

  private String[] term(String key, String value) {
    return new String[] {wording.text(key), value};
  }
}
