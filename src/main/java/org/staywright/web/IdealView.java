package org.staywright.web;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.staywright.caution.Cautions;
import org.staywright.document.OverlayChart;
import org.staywright.document.PartFigures;
import org.staywright.document.SpringOutline;
import org.staywright.fit.Balance;
import org.staywright.fit.Fit;
import org.staywright.fit.FitCurve;
import org.staywright.fit.Ideal;
import org.staywright.fit.Job;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * The spring that would be made for a job beside the best of stock, in words.
 *
 * @param kind how the verdict looks
 * @param verdict first what stock costs at the hand, or why there is none
 * @param balance what springs would do in even balance
 * @param rows figures side by side, empty where nothing can be made
 * @param chart of both at the hand, null where nothing can be made
 * @param outline of the spring to be made, null for none
 * @param made its figures
 * @param cautions it calls for
 * @param stock address of all about the stock part, "" for none
 * @param sheet address of the specification, "" where nothing is to be made
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
    String sheet) {

  static IdealView of(JobQuery query, Job job, Ideal ideal, Wording wording) {
    Fit made = ideal.made();
    Fit stock = ideal.stock();
    return new IdealView(
        !ideal.stockFails() ? "fits" : made != null && made.fits() ? "near" : "none",
        verdict(job, ideal, wording),
        balance(ideal, wording),
        made == null ? List.of() : new IdealRows(made, stock, wording).rows(),
        made == null ? null : chart(job, made, stock, wording),
        made == null
            ? null
            : Graph.of(
                SpringOutline.of(made.part(), made.rodFitting(), made.tubeFitting(), wording),
                wording.text("ideal.outline"),
                wording),
        made == null
            ? List.of()
            : new PartFigures(made.part(), wording)
                .pairs().stream().map(pair -> new Labelled(pair[0], pair[1])).toList(),
        made == null ? List.of() : CautionView.of(Cautions.of(job, made), wording),
        stock == null
            ? ""
            : query.address(new Pick(stock.count(), stock.part().number(), !stock.fits())),
        ideal.advice() == Ideal.Advice.MAKE ? query.sheet() : "");
  }

  private static List<String> verdict(Job job, Ideal ideal, Wording wording) {
    Fit made = ideal.made();
    Fit stock = ideal.stock();
    List<String> all = new ArrayList<>();
    if (stock == null) {
      all.add(wording.text("ideal.stock.none"));
    } else if (!stock.fits()) {
      all.add(
          wording.text("ideal.stock.near", stock.count(), stock.part().number())
              + ' '
              + missed(job, stock, wording));
    } else {
      all.add(does("ideal.stock", stock, stock.part().number(), wording));
    }
    if (made == null) {
      all.add(lacking(ideal, wording));
      return all;
    }
    all.add(does("ideal.made", made, newtons(made.part().spring().force(), wording), wording));
    if (!made.fits()) {
      all.add(wording.text("ideal.made.near") + ' ' + missed(job, made, wording));
    }
    if (stock != null) {
      all.add(costs(ideal, wording));
    }
    return all;
  }

  private static String does(String key, Fit fit, String what, Wording wording) {
    return wording.text(
        key,
        fit.count(),
        what,
        newtons(fit.figures().hand().rms(), wording),
        newtons(fit.figures().hand().worst(), wording));
  }

  /** In newtons at the hand; what rounds to none is none. */
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
    return fit.blockedBy().stream()
        .map(by -> FitText.in(wording).blocker(by, by.unit(job.mechanism())))
        .collect(Collectors.joining(" "));
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
        job.mechanism().kind(),
        job.requirements().maxHandForce());
  }

  private static String newtons(double force, Wording wording) {
    return wording.quantity(force, NEWTON, 0);
  }
}
