package org.staywright.web.fit;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static org.staywright.unit.Unit.JOULE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.Job;
import org.staywright.fit.time.TimeFigures;
import org.staywright.fit.time.TimeFigures.Taken;
import org.staywright.web.field.Labelled;
import org.staywright.wording.CornerText;
import org.staywright.wording.Wording;

/**
 * What a fit does in time, in short: what stands in its details.
 *
 * @param verdicts of the requirements in time, and what happens when one spring fails
 * @param figures at worst over the temperatures
 */
public record InTimeView(List<String> verdicts, List<Labelled> figures) {

  /** Null where it cannot be told. */
  public static InTimeView of(Job job, Fit fit, Wording wording) {
    return TimeFigures.of(job, fit).map(figures -> of(job, figures, wording)).orElse(null);
  }

  public static InTimeView of(Job job, TimeFigures figures, Wording wording) {
    Telling telling = new Telling(job, figures, new InTimeText(wording).most());
    return new InTimeView(telling.verdicts(), telling.figures());
  }

  private record Telling(Job job, TimeFigures behaviour, InTimeText text) {

    private List<String> verdicts() {
      Wording wording = text.wording();
      List<String> verdicts = new ArrayList<>();
      for (Kept kept : behaviour.opening().kept(job.requirements())) {
        String key = "time.kept.max-" + kept.criterion().code() + (kept.met() ? "" : ".missed");
        verdicts.add(
            Double.isInfinite(kept.has())
                ? wording.text("time.kept.never", CornerText.of(kept.corner(), wording))
                : wording.text(
                    key,
                    number(kept, kept.has(), text),
                    number(kept, kept.needed(), new InTimeText(wording)),
                    CornerText.of(kept.corner(), wording)));
      }
      String failing = behaviour.failing().name().toLowerCase(Locale.ROOT);
      verdicts.add(
          wording.text(
              "time.failing." + failing,
              wording.number(behaviour.failingTime(), 1, FLOOR),
              text.newtons(Math.max(0, behaviour.failedForce())),
              text.speed(behaviour.failingSpeed()),
              wording.bare(behaviour.failingEnergy(), JOULE, 1, CEILING)));
      if (behaviour.choked()) {
        verdicts.add(wording.text("time.choked"));
      }
      return verdicts;
    }

    private static String number(Kept kept, double si, InTimeText text) {
      return switch (kept.criterion()) {
        case STOP_SPEED -> text.speed(si);
        case STOP_ENERGY -> text.wording().bare(si, JOULE, 1, text.rounding());
        default -> text.wording().number(si, 1, text.rounding());
      };
    }

    private List<Labelled> figures() {
      List<Labelled> figures = new ArrayList<>();
      for (Taken taken : behaviour.strokes()) {
        String how =
            Double.isInfinite(taken.seconds())
                ? "slow"
                : taken.seconds() == TimeFigures.SLAM ? "slam" : "easing";
        figures.add(text.figure("closing-" + how, text.newtons(taken.closing())));
        figures.add(text.figure("opening-" + how, text.newtons(taken.opening())));
      }
      figures.add(text.figure("opening-time", text.seconds(behaviour.opening().time().value())));
      figures.add(text.figure("stop-speed", text.speed(behaviour.opening().stopSpeed().value())));
      figures.add(
          text.figure("stop-energy", text.joules(behaviour.opening().stopEnergy().value())));
      figures.add(text.figure("peak-load", text.newtons(behaviour.peakLoad())));
      return figures;
    }
  }
}
