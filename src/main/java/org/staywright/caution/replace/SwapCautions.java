package org.staywright.caution.replace;

import static org.staywright.caution.Caution.COMMON_PRACTICE;
import static org.staywright.unit.Unit.ROOM;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.Caution.Severity;
import org.staywright.caution.part.Disposal;
import org.staywright.fit.replace.Gauge;
import org.staywright.fit.replace.Measurements;
import org.staywright.fit.replace.Reading;
import org.staywright.fit.replace.Replacement;
import org.staywright.part.Mounting;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;

/** What may go wrong when a part takes the place of an old spring, the nearest harm first. */
public final class SwapCautions {

  /** Differences of travel that no hinge minds, m. */
  private static final double SAME = 2e-3;

  private final Measurements old;
  private final Replacement now;
  private final List<Caution> all = new ArrayList<>();

  private SwapCautions(Measurements old, Replacement now) {
    this.old = old;
    this.now = now;
  }

  public static List<Caution> of(Measurements old, Replacement now) {
    SwapCautions swap = new SwapCautions(old, now);
    swap.closed();
    swap.open();
    swap.hanging();
    swap.force();
    swap.handling();
    return swap.all.stream().sorted((a, b) -> a.severity().compareTo(b.severity())).toList();
  }

  /** Longer when compressed than there is room: it bottoms and prises the mounts off. */
  private void closed() {
    Reading room = old.size(Gauge.CENTRES_CLOSED);
    Reading before = old.size(Gauge.COMPRESSED_CENTRES);
    if (room != null && now.compressed() > room.value() - room.plusMinus()) {
      add(
          "swap-no-room",
          Severity.DANGER,
          millimetres(now.compressed()),
          millimetres(room.value()));
    } else if (room == null && before != null && now.compressed() > before.value() + SAME) {
      double more = now.compressed() - before.value();
      add("swap-longer-closed", Severity.WARNING, millimetres(more));
    } else if (room == null) {
      add("swap-room-unknown", Severity.WARNING, millimetres(now.compressed()));
    }
  }

  /** A longer spring opens the hinge farther than it may go, unless a stop ends the travel. */
  private void open() {
    Reading place = old.size(Gauge.CENTRES_OPEN);
    Reading before = old.size(Gauge.EXTENDED_CENTRES);
    Reading stroke = old.size(Gauge.STROKE);
    double longer =
        before != null
            ? now.extended() - before.value() - before.plusMinus()
            : stroke != null
                ? now.part().spring().stroke() - stroke.value() - stroke.plusMinus()
                : 0;
    if (longer > SAME) {
      add("swap-longer-stroke", Severity.WARNING, millimetres(longer));
    } else if (place != null && now.extended() < place.value()) {
      add("swap-opens-less", Severity.NOTE, millimetres(place.value() - now.extended()));
    }
  }

  /** Longer than its mounts stand apart open, it must be pressed onto them. */
  private void hanging() {
    Reading place = old.size(Gauge.CENTRES_OPEN);
    Spring spring = now.part().spring();
    double longer = place == null ? 0 : now.extended() - place.value();
    if (spring.sense() > 0 && longer > SAME && longer < spring.stroke()) {
      double strong = 1 + now.part().forceTolerance() / spring.force();
      double press = spring.law(strong, 1).taking(longer, ROOM);
      add("swap-hang-on", Severity.WARNING, millimetres(longer), Figure.most(press, Unit.NEWTON));
    }
  }

  private void force() {
    Double printed = old.printedForce();
    double force = now.part().spring().force();
    if (printed != null && force > 1.02 * printed) {
      add("swap-more-force", Severity.WARNING, newtons(force - printed), newtons(printed));
    }
    Reading flap = old.size(Gauge.FLAP_FORCE);
    if (flap != null && force < flap.value() - flap.plusMinus()) {
      add("swap-too-weak", Severity.DANGER, newtons(force), newtons(flap.value()));
    } else if (flap != null && force > flap.value() + flap.plusMinus()) {
      add("swap-too-strong", Severity.WARNING, newtons(force), newtons(flap.value()));
    }
    add("swap-class-changed", Severity.NOTE);
  }

  private void handling() {
    add("never-open", Severity.DANGER);
    add("prop-first", Severity.DANGER);
    add("swap-still-charged", Severity.DANGER);
    add("swap-brackets", Severity.WARNING);
    if (now.part().mounting() == Mounting.ROD_DOWN) {
      add("rod-down", Severity.NOTE);
    } else {
      add("swap-rod-down", Severity.NOTE);
    }
    if (old.springCount() > 1) {
      add("swap-pair", Severity.WARNING);
    } else {
      add("swap-only-one", Severity.NOTE);
    }
    new Disposal().of(now.part()).ifPresent(all::add);
    add("local-codes", Severity.NOTE);
  }

  private void add(String code, Severity severity, Figure... figures) {
    all.add(new Caution(code, severity, List.of(figures), COMMON_PRACTICE));
  }

  private static Figure millimetres(double metres) {
    return new Figure(metres, Unit.MILLIMETRE, 0);
  }

  private static Figure newtons(double force) {
    return new Figure(force, Unit.NEWTON, 0);
  }
}
