package org.staywright.web.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.chart.OverlayChart;
import org.staywright.document.draw.Drawing;
import org.staywright.web.chart.Graph;
import org.staywright.web.fit.CautionView;
import org.staywright.web.fit.FitRow;
import org.staywright.web.fit.FitWords;
import org.staywright.web.fit.Weighing;
import org.staywright.web.query.JobQuery;
import org.staywright.wording.Wording;

/**
 * Several fits side by side.
 *
 * @param columns one each
 * @param tables figures row by row, by subject
 * @param chart their curves, null where their travels are of different kinds
 * @param some cautions that not all call for, each with who does
 * @param all cautions that all call for
 * @param left out of the comparison, with the reason
 * @param weighing of their score, null for saved choices
 * @param job that they are for, for what is done next with it; empty for saved choices
 * @param back address of what they were taken from
 */
public record CompareView(
    List<Column> columns,
    List<Table> tables,
    Graph chart,
    List<Some> some,
    List<CautionView> all,
    List<String> left,
    Weighing weighing,
    List<JobQuery.Pair> job,
    String back) {

  /**
   * @param letter it is called by
   * @param row the same as in a ranking
   * @param saved number of the saved job, "" for none
   * @param name of that job
   * @param sentences what it does, none where it misses something
   */
  public record Column(
      String letter, FitRow row, String saved, String name, List<String> sentences) {

    /** How the verdict looks. */
    public String kind() {
      return row.blockers().isEmpty() && row.marks().isEmpty() ? "fits" : "near";
    }
  }

  /**
   * @param title in words
   * @param rows of figures
   */
  public record Table(String title, List<Row> rows) {}

  /**
   * @param label of the figure
   * @param cells one a column
   */
  public record Row(String label, List<Cell> cells) {}

  /**
   * @param letter of its column
   * @param text with its unit
   * @param best whether none is better
   */
  public record Cell(String letter, String text, boolean best) {}

  /**
   * @param letters who calls for it
   * @param caution in words
   */
  public record Some(String letters, CautionView caution) {}

  static CompareView of(
      List<Rival> rivals,
      List<String> left,
      Weighing weighing,
      List<JobQuery.Pair> job,
      String back,
      Wording wording) {
    Map<CautionView, List<String>> cautions = new LinkedHashMap<>();
    for (Rival rival : rivals) {
      for (CautionView caution :
          CautionView.of(Cautions.of(rival.job(), rival.fit()), rival.wording(wording))) {
        cautions.computeIfAbsent(caution, each -> new ArrayList<>()).add(rival.letter());
      }
    }
    List<Some> some = new ArrayList<>();
    List<CautionView> all = new ArrayList<>();
    cautions.forEach(
        (caution, letters) -> {
          if (letters.size() == rivals.size()) {
            all.add(caution);
          } else {
            some.add(new Some(String.join(", ", letters), caution));
          }
        });
    return new CompareView(
        rivals.stream().map(rival -> column(rival, wording)).toList(),
        rivals.isEmpty() ? List.of() : tables(rivals, shared(rivals, wording)),
        graph(rivals, wording),
        some,
        all,
        left,
        weighing,
        job,
        back);
  }

  private static Column column(Rival rival, Wording plain) {
    Wording wording = rival.wording(plain);
    return new Column(
        rival.letter(),
        FitRow.of(1, rival.job(), rival.fit(), wording),
        rival.saved(),
        rival.job().name(),
        rival.fit().fits()
            ? FitWords.of(rival.job(), rival.fit(), wording).sentences()
            : List.of());
  }

  /** The words of their mechanism, where all have the same. */
  private static Wording shared(List<Rival> rivals, Wording wording) {
    boolean alike =
        rivals.stream().map(rival -> rival.job().mechanism().code()).distinct().count() == 1;
    return alike ? rivals.get(0).wording(wording) : wording;
  }

  private static List<Table> tables(List<Rival> rivals, Wording wording) {
    CompareRows rows = new CompareRows(rivals, wording);
    List<Table> tables = new ArrayList<>();
    tables.add(new Table(wording.text("compare.doing"), rows.doing()));
    tables.add(new Table(wording.text("compare.buying"), rows.buying()));
    tables.add(new Table(wording.text("compare.holding"), rows.holding()));
    if (rivals.stream().allMatch(rival -> rival.score() != null)) {
      tables.add(new Table(wording.text("compare.score"), rows.score()));
    }
    return tables;
  }

  private static Graph graph(List<Rival> rivals, Wording plain) {
    Drawing chart = chart(rivals, plain);
    Wording wording = rivals.isEmpty() ? plain : shared(rivals, plain);
    return chart == null ? null : Graph.of(chart, wording.text("compare.chart"), wording);
  }

  /** Their curves in one frame, null where they share none. */
  static Drawing chart(List<Rival> rivals, Wording plain) {
    if (rivals.isEmpty()) {
      return null;
    }
    Wording wording = shared(rivals, plain);
    List<OverlayChart.Line> lines =
        rivals.stream()
            .map(each -> FitWords.of(each.job(), each.fit(), wording).line(each.letter()))
            .toList();
    return OverlayChart.shareable(lines) ? OverlayChart.of(lines, wording) : null;
  }
}
