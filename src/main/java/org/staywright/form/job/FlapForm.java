package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.NEWTON_METRE;

import java.util.List;
import org.staywright.form.job.JobShape.Section;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Seal;
import org.staywright.unit.Bound;

/** A flap on a hinge. */
final class FlapForm implements MountedForm {

  private static final String COUNTERCLOCKWISE = "counterclockwise";

  private static final Shape SHAPE =
      Shape.of(
          HingedFlap.CODE,
          required("type", Choice.of(HingedFlap.CODE)),
          required("massKg", LoadShape.MASS),
          withDefault("massTolerancePercent", LoadShape.MASS_TOLERANCE, 5),
          optional("lightestMassKg", LoadShape.MASS).in(Section.MORE_GEOMETRY),
          required("centreOfMassMm", LoadShape.POINT),
          required("handleMm", LoadShape.POINT),
          required("opens", Choice.of(COUNTERCLOCKWISE, "clockwise")),
          required("openingAngleDeg", Amount.positive(270, DEGREE)),
          withDefault("tiltDeg", Amount.between(-180, 180, DEGREE), 0),
          withDefault("hingeFrictionNm", Amount.between(0, 1000, NEWTON_METRE), 0.5)
              .in(Section.MORE_GEOMETRY),
          withDefault("sealMomentNm", Amount.between(-1000, 1000, NEWTON_METRE), 0)
              .in(Section.BEHAVIOUR),
          withDefault("sealAngleDeg", Amount.positive(90, DEGREE), 5).in(Section.BEHAVIOUR),
          optional("inertiaKgM2", new Amount(Bound.above(0, 100_000, "kg·m²"))));

  @Override
  public Shape shape() {
    return SHAPE;
  }

  @Override
  public Mechanism.Movement kind() {
    return Mechanism.Movement.TURNS;
  }

  @Override
  public List<String> geometry() {
    return List.of("/load/handleMm/x", "/load/handleMm/y", "/load/opens", "/load/openingAngleDeg");
  }

  @Override
  public HingedFlap mechanism(JobTree job) {
    return new HingedFlap(
        job.masses(),
        job.point("/load/centreOfMassMm"),
        job.point("/load/handleMm"),
        COUNTERCLOCKWISE.equals(job.text("/load/opens")) ? 1 : -1,
        job.si("/load/openingAngleDeg", DEGREE),
        job.si("/load/tiltDeg", DEGREE),
        job.number("/load/hingeFrictionNm"),
        job.mounts(),
        job.given("/load/inertiaKgM2") ? job.number("/load/inertiaKgM2") : null,
        new Seal(job.number("/load/sealMomentNm"), job.si("/load/sealAngleDeg", DEGREE)));
  }
}
