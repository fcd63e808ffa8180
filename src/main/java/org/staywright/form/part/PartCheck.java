package org.staywright.form.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.staywright.form.table.NumberColumn;
import org.staywright.gas.BeyondEquation;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Damper;
import org.staywright.spring.GasFilled;
import org.staywright.spring.Kinds;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.Spring;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/** What the numbers of a part must have in common, so that every figure of it can be computed. */
final class PartCheck {

  /** How far extended less compressed length may be from the stroke, mm. */
  private static final double LENGTH_SLACK_MM = 1;

  /** How far the two sides of a locking piston may be from the gas volume, ml. */
  private static final double VOLUME_SLACK_ML = 0.1;

  private static final Bound NOTHING = Bound.between(0, 0, "ml");

  private final Part part;
  private final Spring spring;
  private final List<Fault> faults = new ArrayList<>();

  private PartCheck(Part part) {
    this.part = part;
    spring = part.spring();
  }

  /** All that does not go together. */
  static List<Fault> of(Part part) {
    PartCheck check = new PartCheck(part);
    check.dimensions();
    part.gas().ifPresent(check::gas);
    if (check.faults.isEmpty()) {
      part.spring().told(check.new Asked()).ifPresent(check.faults::add);
    }
    return check.faults;
  }

  private void dimensions() {
    double stroke = PartColumn.STROKE.of(part);
    double compressed = PartColumn.COMPRESSED_LENGTH.of(part);
    Bound length =
        Bound.between(
            compressed + stroke - LENGTH_SLACK_MM, compressed + stroke + LENGTH_SLACK_MM, "mm");
    require(PartColumn.EXTENDED_LENGTH, length);
    // Less stroke than twice the gauge distance has no F2; the bound of the column sees to that.
    require(PartColumn.COMPRESSED_LENGTH, new Bound(stroke, true, Double.MAX_VALUE, true, "mm"));
    if (part.family() != Family.DAMPER) {
      require(PartColumn.FORCE_CLASS, Bound.above(0, 100_000, "N"));
      if (spring.force() > 0) {
        require(PartColumn.FORCE_TOLERANCE, new Bound(0, false, spring.force(), true, "N"));
      }
    }
    double coldest = PartColumn.MIN_TEMPERATURE.of(part);
    require(PartColumn.MAX_TEMPERATURE, new Bound(Math.max(coldest, 20), false, 150, false, "°C"));
  }

  private void within(PartColumn middle, PartColumn inner, PartColumn outer) {
    require(middle, new Bound(inner.of(part), true, outer.of(part), true, "mm"));
  }

  private void gas(GasFilled filled) {
    within(PartColumn.BORE_DIAMETER, PartColumn.ROD_DIAMETER, PartColumn.TUBE_DIAMETER);
    require(PartColumn.END_DAMPING, Bound.between(0, PartColumn.STROKE.of(part), "mm"));
    double left = filled.leastGasVolume(part.limits().hottest());
    double taken = NumberColumn.tidy(Unit.MILLILITRE.of(filled.cylinder().gasVolume() - left));
    require(PartColumn.GAS_VOLUME, new Bound(taken, true, 100_000, false, "ml"));
    if (faults.isEmpty()) {
      pressure(filled);
    }
  }

  /** Filled, heated and slammed: the gas must stay where its equation of state holds. */
  private void pressure(GasFilled filled) {
    double rest = filled.restCompression();
    double hardest = filled.stroke() - rest;
    try {
      double strongest = 1 + part.forceTolerance() / spring.force();
      filled.law(2 - strongest, 1);
      filled.law(strongest, 1).fastPressure(rest, hardest, part.limits().hottest());
    } catch (BeyondEquation beyond) {
      String value = NumberColumn.text(PartColumn.FORCE_CLASS.of(part));
      String bound =
          beyond.quantity().name().toLowerCase(Locale.ROOT) + " " + beyond.bound().text();
      faults.add(new Fault(PartColumn.FORCE_CLASS.column(), value, bound, "gas-out-of-bounds"));
    }
  }

  /** What only springs of one kind are asked: a column with what bounds it. */
  private final class Asked implements Kinds<Optional<Fault>> {

    @Override
    public Optional<Fault> plain() {
      return Optional.empty();
    }

    @Override
    public Optional<Fault> locking(LockingSpring locking) {
      double sides = Unit.MILLILITRE.of(locking.cylinder().gasVolume() - locking.volumeAmiss());
      return unless(
          PartColumn.GAS_VOLUME,
          Bound.between(sides - VOLUME_SLACK_ML, sides + VOLUME_SLACK_ML, "ml"));
    }

    @Override
    public Optional<Fault> coil(CoilSpring coil) {
      double most = NumberColumn.tidy(Unit.MILLIMETRE.of(coil.usableStroke()));
      return unless(PartColumn.STROKE, Bound.between(0, most, "mm"))
          .map(fault -> new Fault(fault.where(), fault.value(), fault.bound(), "coil-solid"));
    }

    @Override
    public Optional<Fault> damper(Damper damper) {
      boolean pushes = damper.force() > 0;
      return pushes == damper.cylinder().gasVolume() > 0
          ? Optional.empty()
          : unless(PartColumn.GAS_VOLUME, pushes ? Bound.above(0, 100_000, "ml") : NOTHING);
    }
  }

  private void require(PartColumn column, Bound bound) {
    unless(column, bound).ifPresent(faults::add);
  }

  /** The fault of a number that does not keep its bound. */
  private Optional<Fault> unless(PartColumn column, Bound bound) {
    double value = column.of(part);
    return bound.holds(value)
        ? Optional.empty()
        : Optional.of(bound.fault(column.column(), NumberColumn.text(value)));
  }
}
