package org.staywright.web.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.caution.Caution;
import org.staywright.caution.fit.Cautions;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.part.Fitting;
import org.staywright.web.chart.Graph;
import org.staywright.web.field.Labelled;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A fit in full, in words.
 *
 * @param kind how the verdict looks
 * @param row the same in short
 * @param sentences what it does
 * @param foremost cautions that belong beside the verdict
 * @param besides what to know of it besides
 * @param parts it is made of: spring and end fittings, a column alone
 * @param supply prices by quantity, terms, stock and lead time of the spring
 * @param graphs its charts and the mechanism with it
 * @param figures all of them
 * @param time what it does in time, null where that cannot be told
 * @param cautions it calls for
 */
public record FitView(
    String kind,
    FitRow row,
    List<String> sentences,
    List<CautionView> foremost,
    List<String> besides,
    List<Labelled> parts,
    List<Labelled> supply,
    List<Graph> graphs,
    List<Labelled> figures,
    InTimeView time,
    List<CautionView> cautions) {

  public static FitView of(Job job, Fit fit, Cleared cleared, Wording wording) {
    FitWords words = FitWords.of(job, fit, wording);
    List<Caution> cautions = Cautions.of(job, fit);
    return new FitView(
        words.verdict(),
        FitRow.of(1, job, fit, cleared.of(1, fit), wording),
        words.sentences(),
        CautionView.foremost(cautions, wording),
        words.besides(),
        parts(fit, wording),
        Stream.concat(
                Supply.prices(fit.part().offer(), wording).stream(),
                Supply.terms(fit.part().offer(), wording).stream())
            .toList(),
        words.graphs(),
        words.figures(),
        InTimeView.of(job, fit, wording),
        CautionView.of(cautions, wording));
  }

  private static List<Labelled> parts(Fit fit, Wording wording) {
    PartText text = PartText.in(wording);
    List<Labelled> parts = new ArrayList<>();
    parts.add(
        new Labelled(
            wording.text("fit.springs", fit.count()),
            part(fit.part().number(), text.describe(fit.part()))));
    if (fit.rodFitting() != null) {
      parts.add(
          new Labelled(wording.text("field.fittings.rodEnd"), fitting(fit.rodFitting(), text)));
      parts.add(
          new Labelled(wording.text("field.fittings.tubeEnd"), fitting(fit.tubeFitting(), text)));
    }
    return parts;
  }

  private static String fitting(Fitting fitting, PartText text) {
    return part(fitting.number(), text.describe(fitting));
  }

  private static String part(String number, String description) {
    return number + " · " + description;
  }
}
