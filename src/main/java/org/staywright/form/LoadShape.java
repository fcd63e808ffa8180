package org.staywright.form;

import static org.staywright.form.Field.required;
import static org.staywright.form.Field.withDefault;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.PERCENT;

import org.staywright.form.Kind.Amount;
import org.staywright.form.Kind.Choice;

/** What the types of load have in common. */
final class LoadShape {

  static final Amount MASS = Amount.positive(2000, KILOGRAM);
  static final Amount MASS_TOLERANCE = Amount.between(0, 50, PERCENT);

  private static final Amount COORDINATE = Amount.between(-10_000, 10_000, MILLIMETRE);

  static final Shape POINT =
      Shape.of("point", required("x", COORDINATE), required("y", COORDINATE));

  static final Shape MOUNTS =
      Shape.of(
          "mounts",
          required("frameMm", POINT),
          required("movingMm", POINT),
          withDefault("rodEndAt", Choice.of("frame", "moving", "either"), "either"),
          withDefault("lateralOffsetMm", Amount.between(0, 1000, MILLIMETRE), 0));

  private LoadShape() {}
}
