package org.staywright.document;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.staywright.document.chart.ForceChart;
import org.staywright.document.chart.HandForceChart;
import org.staywright.document.chart.Sparkline;
import org.staywright.document.draw.Drawing;
import org.staywright.document.view.SideView;
import org.staywright.document.view.SpringOutline;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.wording.Wording;

/** Parts of the sample range, and every drawing of one of them. */
public final class Stocked {

  public static final Wording ENGLISH = Wording.english();
  public static final Wording GERMAN = Wording.of(Locale.GERMAN);
  public static final Range RANGE = Range.of(1, parts(), fittings());

  private Stocked() {}

  /** A part of the middle of the range: damped at the end, 8/18, 160 mm, 400 N. */
  public static Part middling() {
    return parts().stream()
        .filter(part -> part.damping().endZone() > 0)
        .filter(part -> Math.abs(part.spring().rodDiameter() - 8e-3) < 1e-6)
        .filter(part -> Math.abs(part.spring().stroke() - 0.16) < 1e-6)
        .filter(part -> Math.abs(part.spring().force() - 400) < 1e-6)
        .findFirst()
        .orElseThrow();
  }

  /** The best fit for the lid of the samples. */
  public static Fit best() {
    Ranking ranking = Ranking.of(RANGE, Samples.lid());
    return ranking.fits().isEmpty() ? ranking.near().get(0) : ranking.fits().get(0);
  }

  public static List<Drawing> drawings() {
    Job lid = Samples.lid();
    Fit fit = best();
    FitCurve curve = FitCurve.of(lid, fit);
    return List.of(
        SpringOutline.of(fit.part(), ENGLISH),
        SpringOutline.of(fit.part(), fit.rodFitting(), fit.tubeFitting(), ENGLISH),
        ForceChart.of(fit.part(), ENGLISH),
        ForceChart.withFastLimit(fit.part(), ENGLISH),
        SideView.of(lid.mechanism(), ENGLISH),
        SideView.of(lid, fit, ENGLISH),
        HandForceChart.of(lid, fit, fit.figures().orElseThrow(), ENGLISH),
        HandForceChart.forPaper(lid, fit, fit.figures().orElseThrow(), ENGLISH),
        Sparkline.of(curve, 50, ENGLISH));
  }

  public static List<Part> parts() {
    try (Reader file = Files.newBufferedReader(Path.of("catalog-data", "gas-springs.csv"))) {
      return RowFile.read(file, PartRow.COLUMNS, PartRow::read).rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Fitting> fittings() {
    try (Reader file = Files.newBufferedReader(Path.of("catalog-data", "fittings.csv"))) {
      return RowFile.read(file, FittingRow.COLUMNS, FittingRow::read).rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
