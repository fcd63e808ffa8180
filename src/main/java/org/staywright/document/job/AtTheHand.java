package org.staywright.document.job;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.staywright.document.sheet.Grid;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Figures.Hand;
import org.staywright.unit.Unit;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/** What the hand has to do with the spring made for a job, with the best of stock, with none. */
final class AtTheHand {

  private static final List<Map.Entry<Figure, ToDoubleFunction<Hand>>> ROWS =
      List.of(
          Map.entry(Figure.HAND_RMS, Hand::rms),
          Map.entry(Figure.HAND_OPEN_WORST, hand -> hand.openWorst().value()),
          Map.entry(Figure.HAND_CLOSE_WORST, hand -> hand.closeWorst().value()));

  private AtTheHand() {}

  /**
   * @param wording in the words of the job's mechanism
   */
  static Grid grid(Ideal ideal, Wording wording) {
    List<Grid.Head> heads = new ArrayList<>();
    List<Fit> fits = new ArrayList<>();
    heads.add(new Grid.Head("", 40, false));
    String force = wording.quantity(ideal.made().part().spring().force(), Unit.NEWTON, 0);
    heads.add(head("ideal.sheet.column.made", ideal.made(), force, wording));
    fits.add(ideal.made());
    if (ideal.stock() != null) {
      heads.add(
          head("ideal.sheet.column.stock", ideal.stock(), ideal.stock().part().number(), wording));
      fits.add(ideal.stock());
    }
    heads.add(new Grid.Head(wording.text("ideal.sheet.column.none"), 20, true));
    Grid grid = new Grid(heads);
    FigureText text = FigureText.in(wording);
    for (Map.Entry<Figure, ToDoubleFunction<Hand>> row : ROWS) {
      List<String> cells = new ArrayList<>();
      cells.add(text.label(row.getKey(), 0.0));
      for (Fit fit : fits) {
        cells.add(most(row.getKey().value(fit), row.getKey(), wording));
      }
      double none = row.getValue().applyAsDouble(ideal.bare().hand());
      cells.add(most(none, row.getKey(), wording));
      grid.row(cells);
    }
    return grid;
  }

  /** Never less than it is; of the mean so many decimals that a gain can be seen. */
  private static String most(double newtons, Figure figure, Wording wording) {
    int decimals = figure == Figure.HAND_RMS ? 1 : 0;
    return newtons > 0
        ? wording.quantity(newtons, Unit.NEWTON, decimals, RoundingMode.CEILING)
        : wording.text("document.by-itself");
  }

  private static Grid.Head head(String key, Fit fit, String what, Wording wording) {
    return new Grid.Head(wording.text(key, fit.count(), what), 20, true);
  }
}
