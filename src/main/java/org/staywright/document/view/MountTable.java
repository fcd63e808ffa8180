package org.staywright.document.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.staywright.document.sheet.Sheet;
import org.staywright.fit.job.Beside;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.SeatColumn;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** Where the mounts are at both ends of the travel, as a fitter marks them. */
public final class MountTable {

  private final Mechanism mechanism;
  private final double end;
  private final Wording wording;
  private final List<String[]> pairs = new ArrayList<>();

  /**
   * @param end of the travel, rad or m
   */
  public MountTable(Mechanism mechanism, double end, Wording wording) {
    this.mechanism = mechanism;
    this.end = end;
    this.wording = wording;
  }

  /**
   * Labels and values; without mounts there are lengths alone.
   *
   * @param beside parts on mounts of their own
   */
  public List<Sheet.Facts> facts(Mounts.RodEnd rodEnd, List<Beside> beside) {
    List<Sheet.Facts> facts = new ArrayList<>();
    String heading = wording.text("document.mounts");
    facts.add(new Sheet.Facts(heading, mechanism.handOrSeat(moved -> springs(rodEnd), this::seat)));
    for (Beside each : beside) {
      String what = wording.text("document.mounts.beside", new BesideText(wording).counted(each));
      facts.add(new Sheet.Facts(what, beside(each)));
    }
    return facts;
  }

  private List<String[]> springs(Mounts.RodEnd rodEnd) {
    mechanism.rigid().ifPresent(this::points);
    add("length." + start(), millimetres(mechanism.length(mechanism.start())));
    add("length." + stop(), millimetres(mechanism.length(end)));
    if (mechanism.lateralOffset() > 0) {
      add("lateral", millimetres(mechanism.lateralOffset()));
    }
    if (rodEnd != Mounts.RodEnd.EITHER) {
      add("rod", wording.text("document.mounts.rod." + rodEnd.name().toLowerCase(Locale.ROOT)));
    }
    return told();
  }

  private List<String[]> beside(Beside each) {
    each.mechanism().rigid().ifPresent(this::points);
    return told();
  }

  private List<String[]> told() {
    List<String[]> told = List.copyOf(pairs);
    pairs.clear();
    return told;
  }

  /** A column has no mounts: what it carries, and how far it moves. */
  private List<String[]> seat(SeatColumn seat) {
    add("travel", millimetres(end));
    add("seat", wording.measure(seat.seatMass(), Unit.KILOGRAM, 1));
    add("lightest", wording.measure(seat.lightest(), Unit.KILOGRAM, 1));
    add("heaviest", wording.measure(seat.heaviest(), Unit.KILOGRAM, 1));
    add("share", wording.number(100 * seat.share(), 0) + " %");
    add("thrust", wording.quantity(seat.heavy(), Unit.NEWTON, 0));
    return told();
  }

  public String about() {
    return wording.text(
        "document.mounts.about"
            + mechanism.as(load -> turns() ? "" : ".shifts", table -> ".lengths", seat -> ".seat"));
  }

  private void points(Rigid load) {
    add("frame", point(load.mounts().frame()));
    add("moving." + start(), point(load.mounts().moving()));
    add("moving." + stop(), point(load.pose(end).of(load.mounts().moving())));
  }

  private String start() {
    return turns() ? "closed" : mechanism.rigid().isPresent() ? "lowest" : "shortest";
  }

  private String stop() {
    return turns() ? "open" : mechanism.rigid().isPresent() ? "highest" : "longest";
  }

  private boolean turns() {
    return mechanism.movement() == Mechanism.Movement.TURNS;
  }

  private String point(Point point) {
    return wording.text(
        "document.point",
        wording.bare(point.x(), Unit.MILLIMETRE, 1),
        wording.bare(point.y(), Unit.MILLIMETRE, 1));
  }

  private String millimetres(double metres) {
    return wording.quantity(metres, Unit.MILLIMETRE, 1);
  }

  private void add(String name, String value) {
    pairs.add(new String[] {wording.text("document.mounts." + name), value});
  }
}
