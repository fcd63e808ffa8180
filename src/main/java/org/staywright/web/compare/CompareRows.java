package org.staywright.web.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.staywright.fit.assess.Figure.Subject;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Weights;
import org.staywright.fit.rank.Score;
import org.staywright.part.Fitting;
import org.staywright.part.Offer;
import org.staywright.part.Price;
import org.staywright.web.compare.CompareView.Cell;
import org.staywright.web.compare.CompareView.Row;
import org.staywright.web.field.ComparedFigure;
import org.staywright.web.fit.FitRow;
import org.staywright.web.fit.FitWords;
import org.staywright.web.fit.Supply;
import org.staywright.web.job.ListView;
import org.staywright.wording.Wording;

/** Figures of several fits, row by row, the best of each row marked. */
final class CompareRows {

  private final List<Rival> rivals;
  private final Wording wording;

  CompareRows(List<Rival> rivals, Wording wording) {
    this.rivals = rivals;
    this.wording = wording;
  }

  /** What is felt and what it holds. */
  List<Row> doing() {
    return rows(rival -> words(rival).about(Subject.FEEL));
  }

  /** How it goes in and how hard it is worked. */
  List<Row> holding() {
    return rows(
        rival ->
            Stream.of(
                    words(rival).about(Subject.LENGTHS),
                    words(rival).about(Subject.STRENGTH),
                    fittings(rival.fit()))
                .flatMap(List::stream)
                .toList());
  }

  private List<ComparedFigure> fittings(Fit fit) {
    return fit.rodFitting() == null
        ? List.of()
        : List.of(
            fitting("field.fittings.rodEnd", fit.rodFitting()),
            fitting("field.fittings.tubeEnd", fit.tubeFitting()));
  }

  private ComparedFigure fitting(String key, Fitting fitting) {
    return ComparedFigure.plain(wording.text(key), FitRow.fitting(fitting, wording));
  }

  /** What it costs and when it is here. */
  List<Row> buying() {
    boolean oneCurrency =
        rivals.stream()
                .map(rival -> offer(rival).price())
                .filter(Objects::nonNull)
                .map(Price::currency)
                .distinct()
                .count()
            < 2;
    return rows(rival -> bought(rival, oneCurrency));
  }

  /** What the balanced score is made of, in points. */
  List<Row> score() {
    return rows(this::points);
  }

  private List<ComparedFigure> points(Rival rival) {
    Score score = rival.score();
    Weights weights = rival.job().weights();
    return List.of(
        points("effort", score.effort(), weights.effort()),
        points("margin", score.margin(), weights.margin()),
        points("landing", score.landing(), weights.landing()),
        points("price", score.price(), weights.price()),
        points("supply", score.supply(), weights.supply()),
        ComparedFigure.less(
            wording.text("compare.score.lost"), wording.number(-score.lost(), 1), score.lost()),
        ComparedFigure.more(
            wording.text("compare.score.total"),
            wording.number(score.total(weights), 1),
            score.total(weights)));
  }

  private ComparedFigure points(String term, double share, double weight) {
    String of = wording.number(100 * weight, 0);
    return ComparedFigure.more(
        wording.text("field.weights." + term),
        wording.text("compare.score.points", wording.number(100 * weight * share, 1), of),
        share);
  }

  private List<ComparedFigure> bought(Rival rival, boolean oneCurrency) {
    Offer offer = offer(rival);
    Price price = offer.price();
    boolean told = oneCurrency && rival.fit().setPrice() != null;
    return List.of(
        ComparedFigure.less(
            wording.text("row.price"),
            FitRow.price(rival.fit(), wording),
            told ? rival.fit().setPrice().doubleValue() : null),
        ComparedFigure.less(
            wording.text("row.lead"),
            FitRow.lead(rival.fit().leadTimeDays(), wording),
            (double) rival.fit().leadTimeDays()),
        ComparedFigure.more(
            wording.text("part.label.stock"), Supply.stock(offer, wording), (double) offer.stock()),
        ComparedFigure.plain(
            wording.text("compare.breaks"),
            price == null ? "–" : String.join("\n", ListView.steps(price, wording))),
        ComparedFigure.plain(
            wording.text("document.valid-until"),
            price == null || price.validUntil() == null ? "–" : price.validUntil().toString()),
        ComparedFigure.plain(wording.text("compare.terms"), price == null ? "–" : terms(price)));
  }

  private String terms(Price price) {
    return wording.text(
        "compare.terms.of",
        wording.number(price.minimum(), 0),
        wording.number(price.orderMultiple(), 0),
        wording.number(price.pack(), 0));
  }

  /** One for each figure that any of them has; what a rival has not is left open. */
  private List<Row> rows(Function<Rival, List<ComparedFigure>> of) {
    List<List<ComparedFigure>> columns = rivals.stream().map(of).toList();
    Set<String> labels = new LinkedHashSet<>();
    columns.forEach(column -> column.forEach(trait -> labels.add(trait.label())));
    return labels.stream().map(label -> row(label, columns)).toList();
  }

  private Row row(String label, List<List<ComparedFigure>> columns) {
    List<ComparedFigure> traits = columns.stream().map(column -> named(label, column)).toList();
    String best = best(traits);
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < traits.size(); i++) {
      String text = traits.get(i).text();
      cells.add(new Cell(rivals.get(i).letter(), text, text.equals(best)));
    }
    return new Row(label, cells);
  }

  private static ComparedFigure named(String label, List<ComparedFigure> column) {
    return column.stream()
        .filter(trait -> trait.label().equals(label))
        .findFirst()
        .orElse(ComparedFigure.plain(label, "–"));
  }

  /** What the best reads like; null where all read alike or none is better. */
  private static String best(List<ComparedFigure> traits) {
    if (traits.stream().map(ComparedFigure::text).distinct().count() < 2) {
      return null;
    }
    Optional<ComparedFigure> best =
        traits.stream()
            .filter(trait -> trait.merit() != null)
            .reduce((one, next) -> next.merit() > one.merit() ? next : one);
    return best.map(ComparedFigure::text).orElse(null);
  }

  private FitWords words(Rival rival) {
    return FitWords.of(rival.job(), rival.fit(), wording);
  }

  private static Offer offer(Rival rival) {
    return rival.fit().part().offer();
  }
}
