package org.staywright.web.fit;

import static java.math.RoundingMode.CEILING;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.chart.OverlayChart;
import org.staywright.document.part.PartFigures;
import org.staywright.document.view.SpringOutline;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.ideal.Balance;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.web.chart.Graph;
import org.staywright.web.field.Labelled;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.Pick;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * The spring that would be made for a job beside the best of stock, in words.
 *
 * @param kind how the verdict looks
 * @param verdict what to do first, then what stock and a spring made for it would do
 * @param balance what springs would do in even balance
 * @param rows figures side by side, empty where nothing can be made
 * @param chart of both at the hand, null where nothing can be made
 * @param outline of the spring to be made, null where none is proposed
 * @param made its figures, none where none is proposed
 * @param cautions it calls for
 * @param stock address of all about the stock part, "" for none
 * @param order the stock part to order instead, "" where that is not the advice
 * @param sheet address of the specification, "" where none is proposed
 */
public record IdealView(
    String kind,
    List<String> verdict,
    String balance,
    List<IdealRows.Row> rows,
    Graph chart,
    Graph outline,
    List<Labelled> made,
    List<CautionView> cautions,
    String stock,
    String order,
    String sheet) {

  public static IdealView of(JobQuery query, Job job, Ideal ideal, Wording wording) {
    Fit made = ideal.made();
    Fit stock = ideal.stock();
    Fit proposed = ideal.proposed();
    Pick pick =
        stock == null ? null : new Pick(stock.count(), stock.part().number(), !stock.fits());
    return new IdealView(
        kind(ideal),
        verdict(job, ideal, wording),
        balance(ideal, wording),
        made == null ? List.of() : new IdealRows(made, stock, wording).rows(),
        made == null ? null : chart(job, made, stock, wording),
        proposed == null ? null : outline(proposed, wording),
        proposed == null ? List.of() : figures(proposed, wording),
        proposed == null ? List.of() : CautionView.of(Cautions.of(job, proposed), wording),
        pick == null ? "" : query.address(pick),
        ideal.advice() == Ideal.Advice.TAKE_STOCK && stock.fits() ? pick.toString() : "",
        proposed == null ? "" : query.sheet());
  }

  private static String kind(Ideal ideal) {
    if (!ideal.stockFails() || ideal.advice() == Ideal.Advice.TAKE_NONE) {
      return "fits";
    }
    return ideal.proposed() != null && ideal.proposed().fits() ? "near" : "none";
  }

  private static Graph outline(Fit made, Wording wording) {
    return Graph.of(
        SpringOutline.of(made.part(), made.rodFitting(), made.tubeFitting(), wording),
        wording.text("ideal.outline"),
        wording);
  }

  private static List<Labelled> figures(Fit made, Wording wording) {
    return new PartFigures(made.part(), wording)
        .pairs().stream().map(pair -> new Labelled(pair[0], pair[1])).toList();
  }

  private static List<String> verdict(Job job, Ideal ideal, Wording wording) {
    Fit made = ideal.made();
    Fit stock = ideal.stock();
    List<String> all = new ArrayList<>();
    switch (ideal.advice()) {
      case TAKE_STOCK ->
          all.add(wording.text(stock.fits() ? "ideal.take-stock" : "ideal.take-stock.near"));
      case TAKE_NONE -> all.add(wording.text("ideal.take-none"));
      case MAKE, NO_ROOM -> {}
    }
    if (stock == null) {
      all.add(wording.text("ideal.stock.none"));
    } else if (!stock.fits()) {
      all.add(
          wording.text("ideal.stock.near", stock.count(), stock.part().number())
              + ' '
              + missed(job, stock, wording));
    } else {
      all.add(does(ideal, "ideal.stock", stock, stock.part().number(), wording));
    }
    if (made == null) {
      all.add(lacking(ideal, wording));
      return all;
    }
    all.add(
        does(ideal, "ideal.made", made, newtons(made.part().spring().force(), wording), wording));
    if (!made.fits()) {
      all.add(wording.text("ideal.made.near") + ' ' + missed(job, made, wording));
    }
    if (ideal.proposed() != null && stock != null && ideal.costsRms() > 0) {
      all.add(costs(ideal, wording));
    }
    return all;
  }

  private static String does(Ideal ideal, String key, Fit fit, String what, Wording wording) {
    return wording.text(
        key,
        fit.count(),
        what,
        most(fit.outcome().effort(), wording),
        most(Criterion.HAND_FORCE.has(ideal.bare(), fit.outcome()), wording));
  }

  /** In newtons at the hand. */
  private static String costs(Ideal ideal, Wording wording) {
    if (Math.round(ideal.costsRms()) <= 0) {
      return wording.text("ideal.costs.none");
    }
    String over = newtons(ideal.costsRms(), wording);
    return Math.round(ideal.costsMost()) > 0
        ? wording.text("ideal.costs", over, newtons(ideal.costsMost(), wording))
        : wording.text("ideal.costs.over", over);
  }

  private static String lacking(Ideal ideal, Wording wording) {
    return ideal.shortfall() == null
        ? wording.text("ideal.no-size")
        : wording.text(
            "ideal.room",
            wording.quantity(ideal.shortfall().needed(), MILLIMETRE, 0),
            wording.quantity(ideal.shortfall().has(), MILLIMETRE, 0));
  }

  private static String missed(Job job, Fit fit, Wording wording) {
    return FitText.in(wording).blockers(fit.blockedBy(), by -> by.unit(job.mechanism())) + '.';
  }

  private static String balance(Ideal ideal, Wording wording) {
    Balance line = ideal.balance();
    return line.longForce() <= 0
        ? wording.text("ideal.balance.none")
        : wording.text(
            "ideal.balance",
            ideal.count(),
            newtons(line.longForce(), wording),
            newtons(line.shortForce(), wording),
            wording.number(line.progression(), 2),
            newtons(line.handRms(), wording));
  }

  private static Graph chart(Job job, Fit made, Fit stock, Wording wording) {
    List<OverlayChart.Line> lines = new ArrayList<>();
    lines.add(line(job, made, "ideal.line.made", wording));
    if (stock != null) {
      lines.add(line(job, stock, "ideal.line.stock", wording));
    }
    return Graph.of(OverlayChart.of(lines, wording), wording.text("compare.chart"), wording);
  }

  private static OverlayChart.Line line(Job job, Fit fit, String name, Wording wording) {
    return OverlayChart.Line.hand(
        wording.text(name),
        FitCurve.of(job, fit),
        job.mechanism().movement(),
        job.requirements().maxHandForce());
  }

  private static String most(double force, Wording wording) {
    return wording.quantity(force, NEWTON, 0, CEILING);
  }

  private static String newtons(double force, Wording wording) {
    return wording.quantity(force, NEWTON, 0);
  }
}
