package org.staywright.form.job;

import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.PERCENT;

import org.staywright.form.job.JobShape.Section;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;

/** What the types of load have in common. */
public final class LoadShape {

  static final Amount MASS = Amount.positive(2000, KILOGRAM);
  static final Amount MASS_TOLERANCE = Amount.between(0, 50, PERCENT);

  private static final Amount COORDINATE = Amount.between(-10_000, 10_000, MILLIMETRE);

  static final Shape POINT =
      Shape.of("point", required("x", COORDINATE), required("y", COORDINATE));

  public static final Shape MOUNTS =
      Shape.of(
          "mounts",
          required("frameMm", POINT),
          required("movingMm", POINT),
          withDefault("rodEndAt", Choice.of("frame", "moving", "either"), "either")
              .in(Section.MORE_GEOMETRY),
          withDefault("lateralOffsetMm", Amount.between(0, 1000, MILLIMETRE), 0)
              .in(Section.MORE_GEOMETRY));

  private LoadShape() {}
}
