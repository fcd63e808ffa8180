package org.staywright.document.replace;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.staywright.caution.replace.SwapCautions;
import org.staywright.document.sheet.Grid;
import org.staywright.document.sheet.Remarks;
import org.staywright.document.sheet.Sheet;
import org.staywright.document.view.SpringOutline;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.fit.replace.Difference;
import org.staywright.fit.replace.Gauge;
import org.staywright.fit.replace.Measurements;
import org.staywright.fit.replace.Reading;
import org.staywright.fit.replace.Replacement;
import org.staywright.part.Fitting;
import org.staywright.unit.Unit;
import org.staywright.wording.PartText;
import org.staywright.wording.ReplacementText;
import org.staywright.wording.Wording;

/** What goes to the machine with the new spring: beside the old one, and how they are swapped. */
public final class ReplacementNote {

  private static final int STEPS = 8;

  /** Named even where nobody measured them. */
  private static final Set<Gauge> ALWAYS =
      EnumSet.of(
          Gauge.ROD_DIAMETER,
          Gauge.TUBE_DIAMETER,
          Gauge.STROKE,
          Gauge.EXTENDED_CENTRES,
          Gauge.COMPRESSED_CENTRES,
          Gauge.PRINTED_FORCE);

  private final Measurements old;
  private final Replacement now;
  private final Wording wording;

  private ReplacementNote(Measurements old, Replacement now, Wording wording) {
    this.old = old;
    this.now = now;
    this.wording = wording;
  }

  /**
   * @param old what was measured
   * @param now what takes its place
   */
  public static byte[] pdf(Measurements old, Replacement now, Wording wording) {
    ReplacementNote note = new ReplacementNote(old, now, wording);
    Sheet.Cover cover =
        new Sheet.Cover(
            wording.text("replace.note.title", now.part().number()), wording, old + " " + now);
    return Sheet.print(cover, note::fill);
  }

  private void fill(Sheet sheet) {
    sheet.title(
        wording.text("replace.note"),
        now.part().number(),
        wording.text(
            "replace.note.sentence",
            wording.number(old.springCount(), 0),
            PartText.in(wording).brief(now.part())));
    sheet.drawing(SpringOutline.of(now.part(), wording), 120);
    sheet.heading(wording.text("replace.note.beside"));
    sheet.grid(beside());
    sheet.heading(wording.text("replace.note.differences"));
    if (now.differences().isEmpty()) {
      sheet.note(wording.text("replace.note.none"));
    } else {
      sheet.statements(now.differences().stream().map(this::said).toList());
    }
    sheet.heading(wording.text("replace.steps"));
    sheet.steps(steps());
    sheet.heading(wording.text("document.cautions"));
    sheet.remarks(Remarks.of(SwapCautions.of(old, now), wording));
  }

  private Grid beside() {
    Grid grid =
        new Grid(
            List.of(
                new Grid.Head("", 36, false),
                new Grid.Head(wording.text("replace.note.old"), 32, false),
                new Grid.Head(wording.text("replace.note.new"), 32, false)));
    for (Gauge gauge : Gauge.values()) {
      Reading reading = old.size(gauge);
      if (reading != null || ALWAYS.contains(gauge)) {
        grid.row(List.of(name(gauge), measured(gauge, reading), quantity(gauge, now.shows(gauge))));
      }
    }
    end(grid, Difference.What.ROD_END, old.rodEnd(), now.rodFitting());
    end(grid, Difference.What.TUBE_END, old.tubeEnd(), now.tubeFitting());
    row(grid, Difference.What.ROD_THREAD, old.rodThread(), now.part().ends().rod());
    PartText parts = PartText.in(wording);
    row(
        grid,
        Difference.What.FINISH,
        old.finish() == null ? null : parts.name("finish", old.finish()),
        parts.name("finish", now.part().finish()));
    return grid;
  }

  /** A free length says whether it goes from centre to centre. */
  private String name(Gauge gauge) {
    String name = ReplacementText.in(wording).gauge(gauge);
    return switch (gauge) {
      case EXTENDED_CENTRES, COMPRESSED_CENTRES ->
          name + ", " + wording.text("replace.option.centre-to-centre");
      case EXTENDED_LENGTH, COMPRESSED_LENGTH ->
          name + ", " + wording.text("replace.option.without-fittings");
      default -> name;
    };
  }

  private String measured(Gauge gauge, Reading reading) {
    return reading == null
        ? wording.text("replace.note.unmeasured")
        : wording.text(
            "replace.note.reading",
            quantity(gauge, reading.value()),
            quantity(gauge, reading.plusMinus()));
  }

  private String quantity(Gauge gauge, double si) {
    boolean force = gauge == Gauge.PRINTED_FORCE || gauge == Gauge.FLAP_FORCE;
    return wording.measure(si, force ? Unit.NEWTON : Unit.MILLIMETRE, force ? 0 : 1);
  }

  private void end(Grid grid, Difference.What what, FittingWish wish, Fitting fitting) {
    PartText parts = PartText.in(wording);
    String before =
        wish == null
            ? null
            : wish.number() == null ? parts.name("fitting", wish.type()) : wish.number();
    String after =
        fitting == null ? "–" : fitting.number() + ", " + parts.name("fitting", fitting.type());
    row(grid, what, before, after);
  }

  private void row(Grid grid, Difference.What what, String before, String after) {
    grid.row(
        List.of(
            ReplacementText.in(wording).what(what),
            before == null ? wording.text("replace.note.unmeasured") : before,
            after));
  }

  private String[] said(Difference each) {
    ReplacementText text = ReplacementText.in(wording);
    String change = text.value(each, each.old()) + " → " + text.value(each, each.now());
    return new String[] {text.what(each.what()) + ": " + change, text.effect(each)};
  }

  private List<String> steps() {
    List<String> steps = new ArrayList<>();
    for (int i = 1; i <= STEPS; i++) {
      steps.add(wording.text("replace.step." + i));
    }
    return steps;
  }
}
