package org.staywright.web.part;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.chart.FamilyCharts;
import org.staywright.document.chart.ForceChart;
import org.staywright.document.part.FamilyFigures;
import org.staywright.document.part.PartFigures;
import org.staywright.part.Part;
import org.staywright.web.chart.Graph;
import org.staywright.web.chart.Pictures;
import org.staywright.web.field.Labelled;
import org.staywright.web.fit.CautionView;
import org.staywright.web.fit.Supply;
import org.staywright.wording.LawText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A part in full, in words.
 *
 * @param number part number
 * @param description in a line
 * @param outline dimensioned
 * @param charts its force over the compression at three temperatures, and what only its family has
 * @param own figures that only its family has
 * @param evenness how near to constant its force comes
 * @param strength what it must bear
 * @param figures all of them
 * @param derived whether some were worked out, and are marked
 * @param slow forces where the trade measures them
 * @param prices by quantity; none where none is known
 * @param supply terms, stock and lead time
 * @param law how it stands under published texts
 * @param cautions it calls for
 * @param evennessAbout what makes its force even
 * @param strengthAbout how its strength is told
 */
public record PartView(
    String number,
    String description,
    RawString outline,
    List<Chart> charts,
    List<Labelled> own,
    List<Labelled> evenness,
    List<Labelled> strength,
    List<Labelled> figures,
    boolean derived,
    List<Labelled> slow,
    List<Labelled> prices,
    List<Labelled> supply,
    List<Labelled> law,
    List<CautionView> cautions,
    String evennessAbout,
    String strengthAbout) {

  /**
   * @param heading above it
   * @param graph of it
   */
  public record Chart(String heading, Graph graph) {

    static Chart of(FamilyCharts.Chart chart, Wording wording) {
      return new Chart(chart.heading(), Graph.of(chart.drawing(), chart.about(), wording));
    }
  }

  /** In the words of its family. */
  static PartView of(Part part, Wording plain) {
    Wording wording = plain.about(part.family().code());
    return new PartView(
        part.number(),
        PartText.in(wording).describe(part),
        Pictures.outline(part, wording),
        charts(part, wording).stream().map(each -> Chart.of(each, wording)).toList(),
        figures(FamilyFigures.of(part, wording)),
        figures(FamilyFigures.evenness(part, wording)),
        figures(FamilyFigures.strength(part, wording)),
        figures(new PartFigures(part, wording).pairs()),
        !part.derived().isEmpty(),
        figures(new PartFigures(part, wording).forces()),
        Supply.prices(part.offer(), wording),
        Supply.terms(part.offer(), wording),
        figures(LawText.in(wording).pairs(part)),
        CautionView.of(Cautions.of(part), wording),
        wording.text("part.evenness.about"),
        wording.text("document.strength.about"));
  }

  /** Its force over the compression, where anything pushes, and what only its family has. */
  static List<FamilyCharts.Chart> charts(Part part, Wording wording) {
    List<FamilyCharts.Chart> charts = new ArrayList<>();
    if (part.spring().force() != 0) {
      charts.add(
          new FamilyCharts.Chart(
              wording.text("part.forces"),
              ForceChart.withFastLimit(part, wording),
              wording.text("part.forces.about")));
    }
    charts.addAll(FamilyCharts.of(part, wording));
    return charts;
  }

  /** Of its charts' files. */
  public String address() {
    return "/parts/" + number;
  }

  private static List<Labelled> figures(List<String[]> pairs) {
    return pairs.stream().map(pair -> new Labelled(pair[0], pair[1])).toList();
  }
}
