package org.staywright.form.part;

import org.staywright.part.Part;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Cylinder;
import org.staywright.spring.Damper;
import org.staywright.spring.Digression;
import org.staywright.spring.GasSpring;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.Spring;
import org.staywright.spring.TractionSpring;
import org.staywright.unit.Unit;

/** Makes a part in SI of the numbers of its row. */
final class PartOf {

  private static final double CYCLES = 10_000;

  private final PartRow row;

  PartOf(PartRow row) {
    this.row = row;
  }

  Part part() {
    return new Part(
        row.number(),
        row.description(),
        row.family(),
        row.finish(),
        spring(),
        get(PartColumn.FORCE_TOLERANCE),
        row.ends(),
        row.family().hasGas() ? damping() : null,
        limits(),
        wear(),
        get(PartColumn.MASS),
        row.mounting(),
        row.offer(),
        row.derived());
  }

  private Spring spring() {
    return switch (row.family()) {
      case GAS_SPRING -> gasSpring();
      case LOCKING_STRUT, SEAT_COLUMN ->
          new LockingSpring(
              gasSpring(),
              si(PartColumn.FULL_SIDE_DEAD_VOLUME, Unit.MILLILITRE),
              si(PartColumn.ROD_SIDE_DEAD_VOLUME, Unit.MILLILITRE),
              row.locking(),
              get(PartColumn.LOCK_FORCE));
      case TRACTION_SPRING -> new TractionSpring(cylinder(), get(PartColumn.FORCE_CLASS));
      case DAMPER -> damper();
      case COIL_SPRING -> coilSpring();
    };
  }

  private GasSpring gasSpring() {
    return new GasSpring(cylinder(), get(PartColumn.FORCE_CLASS));
  }

  private Cylinder cylinder() {
    return new Cylinder(
        metres(PartColumn.ROD_DIAMETER),
        metres(PartColumn.TUBE_DIAMETER),
        metres(PartColumn.BORE_DIAMETER),
        metres(PartColumn.STROKE),
        metres(PartColumn.EXTENDED_LENGTH),
        metres(PartColumn.COMPRESSED_LENGTH),
        get(PartColumn.FRICTION),
        get(PartColumn.COLD_FRICTION_FACTOR),
        si(PartColumn.GAS_VOLUME, Unit.MILLILITRE),
        si(PartColumn.OIL_VOLUME, Unit.MILLILITRE));
  }

  private Damper damper() {
    double speed = metres(PartColumn.DAMPING_SPEED);
    return new Damper(
        cylinder(),
        get(PartColumn.FORCE_CLASS),
        new Digression(
            get(PartColumn.COMPRESSING_DAMPING), speed, get(PartColumn.COMPRESSING_EXPONENT)),
        new Digression(
            get(PartColumn.EXTENDING_DAMPING), speed, get(PartColumn.EXTENDING_EXPONENT)));
  }

  private CoilSpring coilSpring() {
    return new CoilSpring(
        metres(PartColumn.ROD_DIAMETER),
        metres(PartColumn.TUBE_DIAMETER),
        metres(PartColumn.WIRE_DIAMETER),
        get(PartColumn.ACTIVE_COILS),
        metres(PartColumn.FREE_LENGTH),
        si(PartColumn.SHEAR_MODULUS, Unit.MEGAPASCAL),
        si(PartColumn.TENSILE_STRENGTH, Unit.MEGAPASCAL),
        metres(PartColumn.STROKE),
        metres(PartColumn.EXTENDED_LENGTH),
        metres(PartColumn.COMPRESSED_LENGTH),
        get(PartColumn.FORCE_CLASS),
        get(PartColumn.FRICTION));
  }

  private Part.Damping damping() {
    return new Part.Damping(
        metres(PartColumn.END_DAMPING),
        metres(PartColumn.ORIFICE_DIAMETER),
        metres(PartColumn.ORIFICE_LENGTH),
        get(PartColumn.COMPRESSION_FLOW_FACTOR),
        get(PartColumn.WALL_TIME_CONSTANT));
  }

  private Part.Limits limits() {
    return new Part.Limits(
        si(PartColumn.MIN_TEMPERATURE, Unit.CELSIUS),
        si(PartColumn.MAX_TEMPERATURE, Unit.CELSIUS),
        row.family().hasGas() ? si(PartColumn.MAX_PRESSURE, Unit.BAR) : Double.POSITIVE_INFINITY);
  }

  private Part.Wear wear() {
    return row.family().hasGas()
        ? new Part.Wear(
            si(PartColumn.LOSS_PER_YEAR, Unit.PERCENT),
            si(PartColumn.LOSS_PER_10K_CYCLES, Unit.PERCENT) / CYCLES)
        : Part.Wear.NONE;
  }

  private double get(PartColumn column) {
    return row.numbers().get(column);
  }

  private double metres(PartColumn column) {
    return si(column, Unit.MILLIMETRE);
  }

  private double si(PartColumn column, Unit unit) {
    return unit.si(get(column));
  }
}
