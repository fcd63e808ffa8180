package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.List;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.StraightLift;

/** A guided load on a straight line. */
final class LiftForm implements MountedForm {

  private static final Shape SHAPE =
      Shape.of(
          StraightLift.CODE,
          required("type", Choice.of(StraightLift.CODE)),
          required("massKg", LoadShape.MASS),
          withDefault("massTolerancePercent", LoadShape.MASS_TOLERANCE, 5),
          optional("lightestMassKg", LoadShape.MASS),
          required("travelMm", Amount.positive(5000, MILLIMETRE)),
          required("directionDeg", Amount.between(-360, 360, DEGREE)),
          withDefault("frictionN", Amount.between(0, 5000, NEWTON), 0));

  @Override
  public Shape shape() {
    return SHAPE;
  }

  @Override
  public Mechanism.Movement kind() {
    return Mechanism.Movement.SHIFTS;
  }

  @Override
  public List<String> geometry() {
    return List.of("/load/travelMm", "/load/directionDeg");
  }

  @Override
  public StraightLift mechanism(JobTree job) {
    return new StraightLift(
        job.masses(),
        job.si("/load/travelMm", MILLIMETRE),
        job.si("/load/directionDeg", DEGREE),
        job.number("/load/frictionN"),
        job.mounts());
  }
}
