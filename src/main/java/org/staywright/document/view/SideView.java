package org.staywright.document.view;

import java.util.List;
import java.util.function.Supplier;
import org.staywright.document.draw.Drawing;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Zones;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.motion.Motion;
import org.staywright.wording.Wording;

/** The mechanism from the side: a rigid load by its poses, a force profile as its curve. */
public final class SideView {

  /** How large letters on paper are against those on the screen. */
  private static final double PAPER = 1.6;

  private SideView() {}

  /** The mechanism alone. */
  public static Drawing of(Mechanism mechanism, Wording wording) {
    return of(mechanism, null, () -> null, List.of(), ViewPosition.START, 1, wording);
  }

  /** The mechanism of a job with an assessed spring; without one where it is null. */
  public static Drawing of(Job job, Fit fit, Wording wording) {
    return of(job, fit, ViewPosition.START, wording);
  }

  /** The same where it stands on its way. */
  public static Drawing of(Job job, Fit fit, ViewPosition stand, Wording wording) {
    return of(job, fit, stand, 1, wording);
  }

  /** The same for half a page, its letters as large as the text around it. */
  public static Drawing forPaper(Job job, Fit fit, Wording wording) {
    return of(job, fit, ViewPosition.START, PAPER, wording);
  }

  private static Drawing of(Job job, Fit fit, ViewPosition stand, double letters, Wording wording) {
    return of(
        job.mechanism(),
        fit,
        () -> fit == null ? null : FitCurve.of(job, fit),
        job.beside(),
        stand,
        letters,
        wording);
  }

  /**
   * The mechanism of a job with the zones in which its mounts are looked for.
   *
   * @param found mounts there, numbered from 1
   */
  public static Drawing of(Job job, Zones zones, List<Mounts> found, Wording wording) {
    ZonesSketch sketch = new ZonesSketch(zones, found);
    return RigidView.of(job.mechanism().rigid().orElseThrow(), job.beside(), sketch, wording);
  }

  /** The mechanism of a job as it moves, for a page to play. */
  public static Drawing of(Job job, Fit fit, Motion motion, Wording wording) {
    return job.mechanism()
        .as(
            rigid -> RigidView.of(rigid, fit, job.beside(), motion, wording),
            profile -> ProfileView.of(profile, motion, wording),
            seat -> SeatView.of(seat, fit, motion, wording));
  }

  private static Drawing of(
      Mechanism mechanism,
      Fit fit,
      Supplier<FitCurve> curve,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Wording wording) {
    return mechanism.as(
        rigid -> RigidView.of(rigid, fit, beside, stand, letters, wording),
        profile -> ProfileView.of(profile, curve.get(), wording),
        seat -> SeatView.of(seat, fit, letters, wording));
  }
}
