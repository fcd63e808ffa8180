package org.staywright.document.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.staywright.document.Stocked;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Svg;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;
import org.staywright.wording.Wording;

/** A chart as files: its numbers are the computed ones, and its picture stands by itself. */
class ChartFileTest {

  private static final Job LID = Samples.lid();
  private static final Fit FIT = Stocked.best();
  private static final FitCurve CURVE = FitCurve.of(LID, FIT);
  private static final Part PART = FIT.part();

  @Test
  void holdsTheHandForcesOfEverySample() throws Exception {
    List<CSVRecord> rows = rows(Stocked.ENGLISH);
    assertEquals(CURVE.travel().q().length + 1, rows.size());
    int opening = column(rows, "opening, nominal: hand force, N");
    int least = column(rows, "closing, least in any corner: hand force, N");
    int most = column(rows, "opening, most in any corner: hand force, N");
    for (int i = 1; i < rows.size(); i++) {
      assertEquals(
          Unit.DEGREE.of(CURVE.travel().q()[i - 1]), number(rows.get(i), 0), 0.01, "row " + i);
      assertEquals(CURVE.nominal().open()[i - 1], number(rows.get(i), opening), 0.01, "row " + i);
      assertEquals(CURVE.closeLeast()[i - 1], number(rows.get(i), least), 0.01, "row " + i);
      assertEquals(CURVE.openMost()[i - 1], number(rows.get(i), most), 0.01, "row " + i);
    }
  }

  @Test
  void saysWhatTheFlapDoesByItself() throws Exception {
    List<CSVRecord> rows = rows(Stocked.ENGLISH);
    int free = column(rows, "Let go, nominal");
    for (int i = 1; i < rows.size(); i++) {
      double open = CURVE.nominal().open()[i - 1];
      double close = CURVE.nominal().close()[i - 1];
      String expected = open < 0 ? "opens by itself" : close < 0 ? "shuts by itself" : "stays put";
      assertEquals(expected, rows.get(i).get(free), "row " + i);
    }
  }

  /** A pound-force is 4.4482216152605 N exactly (NIST SP 811, from the pound and standard g). */
  @Test
  void isInTheUnitsOfItsReaderWithDecimalPoints() throws Exception {
    List<CSVRecord> rows = rows(Wording.of(Locale.GERMAN, Units.INCH_POUND));
    int opening = column(rows, "öffnend, nominell:");
    assertTrue(rows.get(0).get(opening).endsWith("lbf"), rows.get(0).get(opening));
    assertEquals(CURVE.nominal().open()[0] / 4.4482216152605, number(rows.get(1), opening), 0.01);
  }

  @Test
  void readsForcesAtThreeTemperaturesBothWays() {
    Readings readings = ForceChart.withFastLimit(PART, Stocked.ENGLISH).readings();
    List<Readings.Series> series = readings.series();
    assertEquals(7, series.size());
    double[] kelvin = {PART.limits().coldest(), Unit.ROOM, PART.limits().hottest()};
    double half = PART.spring().stroke() / 2;
    for (int i = 0; i < 3; i++) {
      assertEquals(
          PART.spring().law().giving(half, kelvin[i]),
          series.get(2 * i).at(Unit.MILLIMETRE.of(half)),
          0.5,
          series.get(2 * i).name());
      assertEquals(
          PART.spring().law().taking(half, kelvin[i]),
          series.get(2 * i + 1).at(Unit.MILLIMETRE.of(half)),
          0.5,
          series.get(2 * i + 1).name());
    }
  }

  @Test
  void keepsItsColoursOutsideTheProgram() throws Exception {
    String svg = Svg.file(chart(Stocked.ENGLISH));
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    assertTrue(svg.contains(".d-curve-2 { stroke: #2c7a68;"), svg.substring(0, 400));
    assertFalse(svg.contains("var("));
  }

  private static Drawing chart(Wording wording) {
    return HandForceChart.of(LID, FIT, FIT.figures().orElseThrow(), wording);
  }

  private static List<CSVRecord> rows(Wording wording) throws Exception {
    String csv = ChartCsv.of(chart(wording).readings(), wording);
    return CSVFormat.RFC4180.parse(new StringReader(csv)).getRecords();
  }

  private static int column(List<CSVRecord> rows, String head) {
    List<String> heads = rows.get(0).toList();
    return heads.indexOf(
        heads.stream().filter(each -> each.startsWith(head)).findFirst().orElseThrow());
  }

  private static double number(CSVRecord row, int column) {
    return Double.parseDouble(row.get(column));
  }
}
