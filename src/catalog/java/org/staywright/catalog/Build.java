package org.staywright.catalog;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Part;
import org.staywright.part.PartNumber;
import org.staywright.spring.GasFilled;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;

/** What all the invented families have in common: how a part is put together from its spring. */
final class Build {

  /** Forces of gas are held within this share, 15 N at least. */
  private static final double TOLERANCE = 0.05;

  private static final double LEAST_TOLERANCE = 15;

  /** The same for coils and for what a damper pushes. */
  private static final double COARSE_TOLERANCE = 0.1;

  /** Density of steel, kg/m³ (EN 1993-1-1). */
  private static final double STEEL = 7850;

  /** What piston, guide, seals and thread add. */
  private static final double MORE_THAN_STEEL = 1.15;

  private static final double COLDEST = 243.15;
  private static final double HOTTEST = 353.15;

  private Build() {}

  /**
   * A part that gas drives.
   *
   * @param orificeMm hole in its piston or valve
   * @param dear how many times a plain gas spring it costs
   */
  static Part gas(
      int serial,
      Family family,
      String description,
      String thread,
      GasFilled spring,
      double orificeMm,
      double dear) {
    double wallTime = Math.rint(Unit.MILLIMETRE.of(spring.cylinder().boreDiameter()) / 4);
    Part.Damping damping = new Part.Damping(0, mm(orificeMm), mm(2), 4, wallTime);
    Part.Limits limits = new Part.Limits(COLDEST, HOTTEST, Unit.BAR.si(400));
    Part.Wear wear = new Part.Wear(0.02, 1.5e-6);
    double mass = mass(spring, spring.tube().section());
    return part(serial, family, description, thread, spring, damping, limits, wear, mass, dear);
  }

  /** A part without an orifice of its own. */
  static Part plain(
      int serial,
      Family family,
      String description,
      String thread,
      Spring spring,
      double massKg,
      double dear) {
    Part.Limits limits = new Part.Limits(COLDEST, HOTTEST, Double.POSITIVE_INFINITY);
    double mass = round(massKg, 3);
    return part(
        serial, family, description, thread, spring, null, limits, Part.Wear.NONE, mass, dear);
  }

  private static Part part(
      int serial,
      Family family,
      String description,
      String thread,
      Spring spring,
      Part.Damping damping,
      Part.Limits limits,
      Part.Wear wear,
      double mass,
      double dear) {
    String number = PartNumber.of(serial);
    return new Part(
        number,
        description,
        family,
        Finish.ZINC,
        spring,
        tolerance(family, spring.force()),
        new Part.Ends(thread, thread),
        damping,
        limits,
        wear,
        mass,
        Mounting.ANY,
        Invented.offer(number, mass, spring.force(), dear),
        List.of());
  }

  private static double tolerance(Family family, double force) {
    return family.hasGas()
        ? Math.ceil(Math.max(LEAST_TOLERANCE, TOLERANCE * force))
        : round(COARSE_TOLERANCE * force, 1);
  }

  /** Rod and tube of steel, kg; wall: section of the tube, m². */
  static double mass(Spring spring, double wall) {
    double rod = Math.PI / 4 * Math.pow(spring.rodDiameter(), 2);
    return round(MORE_THAN_STEEL * STEEL * (rod + wall) * spring.compressedLength(), 3);
  }

  static double mm(double value) {
    return Unit.MILLIMETRE.si(NumberColumn.tidy(value));
  }

  static double ml(double value) {
    return Unit.MILLILITRE.si(NumberColumn.tidy(value));
  }

  /** mm². */
  static double area(double diameterMm) {
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  static double round(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  static String text(double value) {
    return NumberColumn.text(value);
  }
}
