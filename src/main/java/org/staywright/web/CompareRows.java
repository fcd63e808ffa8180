package org.staywright.web;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Fitting;
import org.staywright.part.Offer;
import org.staywright.part.Price;
import org.staywright.unit.Unit;
import org.staywright.web.CompareView.Cell;
import org.staywright.web.CompareView.Row;
import org.staywright.wording.Wording;

/** Figures of several fits, row by row, the best of each row marked. */
final class CompareRows {

  private enum Better {
    LESS,
    MORE,
    NEITHER
  }

  private final List<Rival> rivals;
  private final Wording wording;
  private final List<Row> rows = new ArrayList<>();

  private CompareRows(List<Rival> rivals, Wording wording) {
    this.rivals = rivals;
    this.wording = wording;
  }

  /** What is felt at the hand and what it holds. */
  static List<Row> doing(List<Rival> rivals, Wording wording) {
    CompareRows all = new CompareRows(rivals, wording);
    all.hand("fit.figure.hand-open", Figures::handOpenMax);
    all.hand("fit.figure.hand-close", Figures::handCloseMax);
    all.hand("fit.figure.hand-open-weak", Figures::handOpenMaxWeak);
    all.hand("fit.figure.hand-close-strong", Figures::handCloseMaxStrong);
    all.figure("fit.figure.hand-rms", Figures::handRms, NEWTON, 0, Better.LESS);
    all.figure("fit.figure.hold-ratio", Figures::holdRatioOpen, null, 2, Better.MORE);
    all.travel("fit.figure.self-opens", Figures::selfOpensFrom);
    all.travel("fit.figure.self-opens-weak", Figures::selfOpensFromWeak);
    all.travel("fit.figure.stays", Figures::staysFrom);
    all.figure("fit.figure.latch-push", Figures::latchPush, NEWTON, 0, Better.LESS);
    return all.rows;
  }

  /** How it goes in and how hard it is worked. */
  static List<Row> holding(List<Rival> rivals, Wording wording) {
    CompareRows all = new CompareRows(rivals, wording);
    all.travel("fit.figure.opening-angle", Figures::openingAngle);
    all.figure("fit.figure.compressed", Figures::compressed, MILLIMETRE, 1, Better.NEITHER);
    all.figure("fit.figure.extended", Figures::extended, MILLIMETRE, 1, Better.NEITHER);
    all.figure(
        "fit.figure.compressed-reserve", Figures::compressedReserve, MILLIMETRE, 1, Better.MORE);
    all.figure("fit.figure.extended-reserve", Figures::extendedReserve, MILLIMETRE, 1, Better.MORE);
    all.figure("fit.figure.peak-pressure", Figures::peakPressure, BAR, 0, Better.LESS);
    all.figure("fit.figure.peak-mount-load", Figures::peakMountLoad, NEWTON, 0, Better.LESS);
    all.figure("fit.figure.buckling", Figures::bucklingFactor, null, 1, Better.MORE);
    all.fitting("page.field.fittings.rodEnd", Fit::rodFitting);
    all.fitting("page.field.fittings.tubeEnd", Fit::tubeFitting);
    return all.rows;
  }

  /** What it costs and when it is here. */
  static List<Row> buying(List<Rival> rivals, Wording wording) {
    CompareRows all = new CompareRows(rivals, wording);
    all.row(
        "page.row.price",
        rival -> FitRow.price(rival.fit(), wording),
        rival -> rival.fit().setPrice() == null ? null : rival.fit().setPrice().doubleValue(),
        all.oneCurrency() ? Better.LESS : Better.NEITHER);
    all.row(
        "page.row.lead",
        rival -> FitRow.lead(rival.fit().leadTimeDays(), wording),
        rival -> (double) rival.fit().leadTimeDays(),
        Better.LESS);
    all.row(
        "part.label.stock",
        rival -> ListView.stock(offer(rival), wording),
        rival -> (double) offer(rival).stock(),
        Better.MORE);
    all.text(
        "compare.breaks",
        rival ->
            price(rival) == null ? "–" : String.join("\n", ListView.steps(price(rival), wording)));
    all.text(
        "document.valid-until",
        rival ->
            price(rival) == null || price(rival).validUntil() == null
                ? "–"
                : price(rival).validUntil().toString());
    all.text("compare.terms", rival -> price(rival) == null ? "–" : all.terms(price(rival)));
    return all.rows;
  }

  private String terms(Price price) {
    return wording.text(
        "compare.terms.of",
        wording.number(price.minimum(), 0),
        wording.number(price.orderMultiple(), 0),
        wording.number(price.pack(), 0));
  }

  private boolean oneCurrency() {
    return rivals.stream()
            .map(CompareRows::price)
            .filter(Objects::nonNull)
            .map(Price::currency)
            .distinct()
            .count()
        < 2;
  }

  private void figure(
      String key, Function<Figures, Double> of, Unit unit, int decimals, Better better) {
    Function<Rival, Double> value = rival -> of.apply(rival.fit().figures());
    row(
        key,
        rival -> {
          Double si = value.apply(rival);
          return si == null
              ? wording.text("page.fit.nowhere")
              : unit == null ? wording.number(si, decimals) : wording.quantity(si, unit, decimals);
        },
        value,
        better);
  }

  /** The nearer to balance the better: below zero it moves by itself. */
  private void hand(String key, ToDoubleFunction<Figures> of) {
    ToDoubleFunction<Rival> value = rival -> of.applyAsDouble(rival.fit().figures());
    row(
        key,
        rival -> wording.quantity(value.applyAsDouble(rival), NEWTON, 0),
        rival -> Math.abs(value.applyAsDouble(rival)),
        Better.LESS);
  }

  /** A place on the way, in the unit of its mechanism. */
  private void travel(String key, Function<Figures, Double> of) {
    text(
        key,
        rival -> {
          Double si = of.apply(rival.fit().figures());
          boolean turns = rival.job().mechanism().kind() == Mechanism.Kind.TURNS;
          return si == null
              ? wording.text("page.fit.nowhere")
              : wording.quantity(si, turns ? DEGREE : MILLIMETRE, turns ? 0 : 1);
        });
  }

  private void fitting(String key, Function<Fit, Fitting> of) {
    text(key, rival -> FitRow.fitting(of.apply(rival.fit()), wording));
  }

  private void text(String key, Function<Rival, String> shown) {
    row(key, shown, rival -> null, Better.NEITHER);
  }

  private void row(
      String key, Function<Rival, String> shown, Function<Rival, Double> value, Better better) {
    List<String> texts = rivals.stream().map(shown).toList();
    String best = better == Better.NEITHER ? null : best(texts, value, better);
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      cells.add(new Cell(rivals.get(i).letter(), texts.get(i), texts.get(i).equals(best)));
    }
    rows.add(new Row(wording.text(key), cells));
  }

  /** What the best reads like; null where all read alike. */
  private String best(List<String> texts, Function<Rival, Double> value, Better better) {
    if (texts.stream().distinct().count() < 2) {
      return null;
    }
    int best = -1;
    for (int i = 0; i < texts.size(); i++) {
      Double next = value.apply(rivals.get(i));
      Double most = best < 0 ? null : value.apply(rivals.get(best));
      if (next != null && (most == null || (better == Better.LESS ? next < most : next > most))) {
        best = i;
      }
    }
    return best < 0 ? null : texts.get(best);
  }

  private static Offer offer(Rival rival) {
    return rival.fit().part().offer();
  }

  private static Price price(Rival rival) {
    return offer(rival).price();
  }
}
