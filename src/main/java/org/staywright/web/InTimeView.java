package org.staywright.web;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.JOULE;
import static org.staywright.unit.Unit.METRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.staywright.document.MotionChart;
import org.staywright.document.Svg;
import org.staywright.fit.Chance;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Spreads;
import org.staywright.fit.TimeFigures;
import org.staywright.fit.TimeFigures.Case;
import org.staywright.fit.TimeFigures.Kept;
import org.staywright.fit.TimeFigures.Taken;
import org.staywright.mechanism.Mechanism.Kind;
import org.staywright.motion.Motion;
import org.staywright.wording.Wording;

/**
 * What a fit does in time, in words.
 *
 * @param verdicts of the requirements in time, and what happens when one spring fails
 * @param figures at worst over the temperatures
 * @param rows a motion each
 * @param charts over time
 * @param chances by random draws
 */
public record InTimeView(
    List<String> verdicts,
    List<Figure> figures,
    List<Row> rows,
    List<Graph> charts,
    List<Figure> chances) {

  private static final int DRAWS = 10_000;
  private static final int SEED = 1;

  /** A motion in figures. */
  public record Row(
      String what,
      String temperature,
      String end,
      String time,
      String speed,
      String energy,
      String load,
      String gas) {}

  /** Null where it cannot be told. */
  static InTimeView of(Job job, Fit fit, Wording wording) {
    return TimeFigures.of(job, fit)
        .map(behaviour -> new Telling(job, fit, behaviour, wording).view())
        .orElse(null);
  }

  private record Telling(Job job, Fit fit, TimeFigures behaviour, Wording wording) {

    InTimeView view() {
      return new InTimeView(verdicts(), figures(), rows(), charts(), chances());
    }

    private List<String> verdicts() {
      List<String> verdicts = new ArrayList<>();
      for (Kept kept : behaviour.kept(job.requirements().inTime())) {
        String key = "page.time.kept." + kept.code() + (kept.met() ? "" : ".missed");
        verdicts.add(
            Double.isInfinite(kept.has())
                ? wording.text("page.time.kept.never")
                : wording.text(key, number(kept, kept.has()), number(kept, kept.most())));
      }
      String failing = behaviour.failing().name().toLowerCase(Locale.ROOT);
      verdicts.add(
          wording.text(
              "page.time.failing." + failing,
              wording.number(behaviour.failingTime(), 1),
              newtons(Math.max(0, behaviour.failedForce())),
              speed(behaviour.failingSpeed()),
              wording.bare(behaviour.failingEnergy(), JOULE, 1)));
      if (behaviour.choked()) {
        verdicts.add(wording.text("page.time.choked"));
      }
      return verdicts;
    }

    private String number(Kept kept, double si) {
      return switch (kept.code()) {
        case "max-stop-speed" -> speed(si);
        case "max-stop-energy" -> wording.bare(si, JOULE, 1);
        default -> wording.number(si, 1);
      };
    }

    private List<Figure> figures() {
      List<Figure> figures = new ArrayList<>();
      for (Taken taken : behaviour.strokes()) {
        String how =
            Double.isInfinite(taken.seconds())
                ? "slow"
                : taken.seconds() == TimeFigures.SLAM ? "slam" : "easing";
        figures.add(figure("closing-" + how, newtons(taken.closing())));
        figures.add(figure("opening-" + how, newtons(taken.opening())));
      }
      figures.add(figure("opening-time", seconds(behaviour.openingTime())));
      figures.add(figure("stop-speed", speed(behaviour.stopSpeed())));
      figures.add(figure("stop-energy", wording.quantity(behaviour.stopEnergy(), JOULE, 1)));
      figures.add(figure("peak-load", newtons(behaviour.peakLoad())));
      return figures;
    }

    private List<Row> rows() {
      List<Row> rows = new ArrayList<>();
      behaviour.cases().forEach(each -> rows.add(row("opening", each, each.opening())));
      behaviour.cases().forEach(each -> rows.add(row("failing", each, each.failing())));
      return rows;
    }

    private Row row(String what, Case each, Motion motion) {
      return new Row(
          wording.text("page.time." + what),
          wording.quantity(each.kelvin(), CELSIUS, 0),
          wording.text("page.time.end." + motion.end().name().toLowerCase(Locale.ROOT)),
          seconds(motion.endTime()),
          speed(Math.abs(motion.endSpeed()) * behaviour.hand()),
          wording.quantity(motion.stopEnergy(), JOULE, 1),
          newtons(motion.peakLoad()),
          wording.quantity(motion.hottest(), CELSIUS, 0));
    }

    private List<Graph> charts() {
      List<Graph> charts = new ArrayList<>();
      add(charts, "opening", Case::opening);
      if (behaviour.cases().stream().anyMatch(each -> each.failing().moved())) {
        add(charts, "failing", Case::failing);
      }
      return charts;
    }

    private void add(List<Graph> charts, String what, Function<Case, Motion> motion) {
      Kind kind = job.mechanism().kind();
      for (boolean speed : new boolean[] {false, true}) {
        charts.add(
            new Graph(
                new RawString(
                    Svg.of(MotionChart.of(behaviour.cases(), motion, speed, kind, wording))),
                wording.text("page.time." + what)));
      }
    }

    private List<Figure> chances() {
      Chance chance = Chance.of(job, fit, Spreads.usual(job, fit.part()), DRAWS, SEED);
      List<Figure> chances = new ArrayList<>();
      chances.add(figure("holds", percent(chance.holds())));
      chances.add(figure("hand-within", percent(chance.handWithinLimit())));
      chances.add(figure("stays-shut", percent(chance.staysShut())));
      chances.add(figure("years", years(chance.yearsUntil(0.5))));
      chances.add(figure("years-early", years(chance.yearsUntil(0.05))));
      if (chance.mattersMost() != null) {
        String source = chance.mattersMost().name().toLowerCase(Locale.ROOT).replace('_', '-');
        chances.add(
            figure(
                "matters-most",
                wording.text("page.time.source." + source)
                    + ", "
                    + percent(chance.holdShares().get(chance.mattersMost()))));
      }
      return chances;
    }

    private String years(double years) {
      return Double.isInfinite(years)
          ? wording.text("page.time.never")
          : wording.text("page.time.years-of", wording.number(years, 1));
    }

    private Figure figure(String name, String value) {
      return new Figure(wording.text("page.time.figure." + name), value);
    }

    private String percent(double share) {
      return wording.number(100 * share, 1) + "\u00a0%";
    }

    private String seconds(double seconds) {
      return Double.isInfinite(seconds)
          ? wording.text("page.time.never")
          : wording.number(seconds, 2) + "\u00a0s";
    }

    private String speed(double metresPerSecond) {
      return wording.quantity(metresPerSecond, METRE_PER_SECOND, 2);
    }

    private String newtons(double force) {
      return wording.quantity(force, NEWTON, 0);
    }
  }
}
