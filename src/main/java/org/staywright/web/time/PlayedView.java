package org.staywright.web.time;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.staywright.document.view.SideView;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mechanism;
import org.staywright.motion.Motion;
import org.staywright.unit.Unit;
import org.staywright.web.chart.Pictures;
import org.staywright.web.fit.InTimeText;
import org.staywright.wording.Wording;

/**
 * One motion to be played: a side view that carries its tracks, and the same as a table.
 *
 * @param seconds it takes, as {@code js/play.js} reads it
 * @param moves whether there is anything to play
 * @param end what becomes of it, in words
 * @param steps at even times
 */
public record PlayedView(
    RawString drawing, String seconds, boolean moves, String end, List<Step> steps) {

  private static final int STEPS = 12;

  /** Where it is at one time. */
  public record Step(String time, String travel, String speed, String gas) {}

  /**
   * @param working springs that have not failed
   */
  static PlayedView of(Job job, Fit fit, Motion motion, int working, Wording wording) {
    RawString drawing = Pictures.of(SideView.of(job, fit, motion, wording));
    InTimeText text = new InTimeText(wording);
    String code = motion.end().name().toLowerCase(Locale.ROOT);
    String end =
        motion.moved()
            ? wording.text(
                "played.end." + code,
                text.seconds(motion.endTime()),
                text.joules(motion.stopEnergy()))
            : wording.text("played.stays");
    return new PlayedView(
        drawing,
        String.format(Locale.ROOT, "%.4f", motion.endTime()),
        motion.moved(),
        end,
        steps(job.mechanism(), motion, working > 0, text));
  }

  private static List<Step> steps(
      Mechanism mechanism, Motion motion, boolean gas, InTimeText text) {
    Unit unit = mechanism.movement() == Mechanism.Movement.TURNS ? DEGREE : MILLIMETRE;
    double hand = mechanism.travel(mechanism.end()).hand();
    List<Step> steps = new ArrayList<>();
    int every = Math.max(1, motion.last() / STEPS);
    for (int i = 0; i <= motion.last(); i += every) {
      steps.add(
          new Step(
              text.seconds(motion.time()[i]),
              text.wording().quantity(motion.q()[i], unit, 1),
              text.speed(motion.speed()[i] * hand),
              gas ? text.celsius(motion.gasKelvin()[i]) : "–"));
    }
    return steps;
  }
}
