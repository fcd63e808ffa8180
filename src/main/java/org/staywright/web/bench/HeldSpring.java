package org.staywright.web.bench;

import java.util.List;
import org.staywright.document.view.ViewPosition;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.form.job.JobForm;
import org.staywright.part.Range;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;
import org.staywright.web.chart.Graph;
import org.staywright.web.chart.Scene;
import org.staywright.web.fit.AskedPart;
import org.staywright.web.fit.FitWords;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.Pick;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * One spring held on to while the mechanism is changed: what it does now.
 *
 * @param pick of it, "" where there is none
 * @param kind how the verdict looks
 * @param sentences of the verdict
 * @param bars of the requirements, none where it is out
 * @param chart of what it does, null where it is out
 * @param scene null while the job is not sound
 */
public record HeldSpring(
    String pick, String kind, List<String> sentences, List<Bar> bars, Graph chart, Scene scene) {

  /** A spring of a ranking, as it was judged there. */
  static HeldSpring of(Job job, Fit fit, ViewPosition stand, Wording wording) {
    if (fit == null) {
      return new HeldSpring(
          "", "none", List.of(), List.of(), null, Scene.of(job, null, stand, wording));
    }
    FitWords words = FitWords.of(job, fit, wording);
    FitText text = FitText.in(wording);
    List<String> missed =
        fit.blockedBy().stream()
            .map(each -> text.blocker(each, each.unit(job.mechanism())))
            .toList();
    String pick = new Pick(fit.count(), fit.part().number(), !fit.fits()).toString();
    return new HeldSpring(
        pick,
        words.verdict(),
        fit.fits() ? words.sentences() : missed,
        Bar.of(job, fit, wording),
        words.chart(),
        Scene.of(job, fit, stand, wording));
  }

  /**
   * A spring named, where the load stands somewhere on its way.
   *
   * @param shown opened, ° or mm
   */
  static HeldSpring of(JobQuery query, Range range, String asked, double shown) {
    Wording wording = query.bench().wording();
    try {
      Job job = JobForm.read(query.tree(), range);
      Unit unit =
          switch (job.mechanism().movement()) {
            case TURNS -> Unit.DEGREE;
            case SHIFTS -> Unit.MILLIMETRE;
          };
      double q = unit.si(shown);
      AskedPart judged = AskedPart.of(job, range, asked, wording);
      if (judged.fit() != null) {
        return of(job, judged.fit(), new ViewPosition(q, false), wording);
      }
      boolean out = judged.pick() != null;
      Scene scene = Scene.of(job, null, new ViewPosition(q, out), wording);
      List<String> reason = List.of(wording.text("saved.out", judged.reason()));
      return new HeldSpring(asked, "none", reason, List.of(), null, scene);
    } catch (Refusal refusal) {
      List<String> faults = refusal.faults().stream().map(wording::fault).toList();
      return new HeldSpring(asked, "none", faults, List.of(), null, null);
    }
  }
}
