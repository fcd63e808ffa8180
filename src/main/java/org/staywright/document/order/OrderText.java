package org.staywright.document.order;

import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.staywright.document.part.LineFigures;
import org.staywright.document.view.BesideText;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.job.Beside;
import org.staywright.job.order.Alternate;
import org.staywright.job.order.Item;
import org.staywright.job.order.ListedJob;
import org.staywright.job.order.Misfit;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.OrderedFit;
import org.staywright.job.order.Outfit;
import org.staywright.job.order.PartsList;
import org.staywright.job.order.Wanted;
import org.staywright.part.Price;
import org.staywright.unit.Unit;
import org.staywright.wording.FitText;
import org.staywright.wording.HandText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** Sentences of orders, the same in every form of a list. */
public final class OrderText {

  private final Wording wording;
  private final PartText parts;

  public OrderText(Wording wording) {
    this.wording = wording;
    this.parts = PartText.in(wording);
  }

  /** What a supplier can act on. */
  public String describe(Item item) {
    return item.part() != null ? parts.specify(item.part()) : parts.specify(item.fitting());
  }

  /** Of a job, or that it has none. */
  public String name(String job) {
    return job == null || job.isBlank() ? wording.text("document.unnamed") : job;
  }

  /** A set with all that acts along, by numbers. */
  public String set(Outfit set) {
    String all = wording.text("document.job-sheet.set", set.count(), set.part().number());
    for (Beside each : set.beside()) {
      all += " + " + new BesideText(wording).counted(each);
    }
    return all;
  }

  /** What belongs to a list but is not in the range. */
  public List<String> unmatched(PartsList list) {
    return list.unmatched().stream()
        .map(
            missing ->
                wording.text(
                    "document.note.unmatched",
                    parts.name("fitting", missing.type()),
                    missing.beside()))
        .toList();
  }

  /** For every job whose part does not fit, why. */
  public List<String> marks(PartsList list) {
    return list.jobs().stream().map(this::mark).filter(Objects::nonNull).toList();
  }

  /** Null where the part fits. */
  String mark(ListedJob job) {
    Wanted wanted = job.wanted();
    return wanted.misfit() == null
        ? null
        : wording.text(
            "document.chosen-although",
            name(wanted.job()),
            wanted.outfit().part().number(),
            reasons(wanted.misfit()));
  }

  /** Of every job whose load hardly stays where it is to be, or does not, with what. */
  public List<String> weak(PartsList list) {
    return list.jobs().stream().flatMap(job -> weak(job).stream()).toList();
  }

  List<String> weak(ListedJob job) {
    OrderedFit judged = job.wanted().judged();
    if (judged == null) {
      return List.of();
    }
    Unit way = Figure.OPENING_ANGLE.unit(judged.kind());
    Wording words = wording.about(judged.mechanism());
    return HandText.of(judged.fit(), judged.figures(), judged.asked(), way, words).marks().stream()
        .map(mark -> wording.text("document.weak", name(job.wanted().job()), mark))
        .toList();
  }

  public String reasons(Misfit misfit) {
    FitText text = FitText.in(wording.about(misfit.mechanism()));
    return misfit.rejection() != null
        ? wording.text("document.chosen-although.rejected", text.rejection(misfit.rejection()))
        : misfit.blockers().stream()
            .map(b -> text.blocker(b, b.criterion().unit(misfit.kind())))
            .collect(Collectors.joining("; "));
  }

  /** What a buyer should know of a line beside its figures. */
  public List<String> notes(OrderLine line) {
    List<String> notes = new ArrayList<>();
    if (line.matched() > 1) {
      notes.add(wording.text("document.note.batch", line.matched()));
    }
    terms(line, notes);
    LineFigures figures = LineFigures.of(line);
    if (line.item().part() != null) {
      if (line.alternate() != null) {
        notes.add(alternate(line.alternate()));
      }
      if (figures.charge() != null) {
        notes.add(transport(figures));
      }
      if (figures.shelfYears() != null) {
        String years = wording.shortest(figures.shelfYears().doubleValue(), 1);
        notes.add(wording.text("document.note.shelf", years));
      }
    }
    return notes;
  }

  private void terms(OrderLine line, List<String> notes) {
    Price price = line.item().offer().price();
    if (price == null) {
      return;
    }
    String least = wording.number(price.minimum(), 0);
    String multiple = wording.number(price.orderMultiple(), 0);
    String pack = wording.number(price.pack(), 0);
    if (line.quantity() > line.needed()) {
      String needed = wording.number(line.needed(), 0);
      notes.add(wording.text("document.note.rounded", needed, least, multiple, pack));
    } else if (price.minimum() > 1 || price.orderMultiple() > 1 || price.pack() > 1) {
      notes.add(wording.text("document.note.terms", least, multiple, pack));
    }
  }

  private String alternate(Alternate alternate) {
    String stock = wording.number(alternate.stock(), 0);
    if (alternate.handOpen() == null) {
      return wording.text("document.note.alternate.column", alternate.part(), stock);
    }
    boolean compared = alternate.openMore() != null && alternate.closeMore() != null;
    return wording
        .about(alternate.mechanism())
        .text(
            "document.note.alternate" + (compared ? "" : ".alone"),
            alternate.part(),
            stock,
            most(alternate.handOpen()),
            most(alternate.handClose()),
            compared ? signed(alternate.openMore()) : "",
            compared ? signed(alternate.closeMore()) : "");
  }

  /** Rounded up, so that it is not exceeded; below zero nothing is asked of the hand. */
  private String most(double newtons) {
    return wording.quantity(Math.max(0, newtons), NEWTON, 0, RoundingMode.CEILING);
  }

  private String signed(double newtons) {
    String shown = wording.quantity(newtons, NEWTON, 1);
    return newtons < 0 || shown.startsWith(wording.number(0, 1)) ? shown : "+" + shown;
  }

  private String transport(LineFigures figures) {
    return wording.text(
        "document.note.transport." + (figures.withinTransport() ? "met" : "missed"),
        wording.shortest(figures.gasSpace().doubleValue(), 4),
        wording.shortest(figures.charge().doubleValue(), 1),
        wording.shortest(figures.product().doubleValue(), 2),
        figures.burstFactor());
  }
}
