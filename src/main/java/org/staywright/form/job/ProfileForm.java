package org.staywright.form.job;

import static org.staywright.form.schema.Field.required;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Fault;

/** A table of the force that is asked for over the spring's length. */
final class ProfileForm implements LoadForm {

  static final Amount LENGTH = Amount.positive(10_000, MILLIMETRE);

  /** Below zero the springs would have to pull. */
  static final Amount FORCE = Amount.between(-20_000, 20_000, NEWTON);

  static final Shape POINT =
      Shape.of("profile-point", required("lengthMm", LENGTH), required("forceN", FORCE));

  static final Many POINTS = new Many(POINT, 2, 500);

  private static final Shape SHAPE =
      Shape.of(
          ForceProfile.CODE,
          required("type", Choice.of(ForceProfile.CODE)),
          required("points", POINTS));

  @Override
  public Shape shape() {
    return SHAPE;
  }

  @Override
  public Mechanism.Movement kind() {
    return Mechanism.Movement.SHIFTS;
  }

  @Override
  public boolean mounted() {
    return false;
  }

  @Override
  public List<Fault> faults(JobTree job) {
    List<Fault> faults = new ArrayList<>();
    if (job.given("/mounts")) {
      faults.add(job.fault("/mounts", "", "no-mounts-here"));
    }
    String stop = "/requirements/openStop";
    if (OpenStop.SPRING_STOP.code().equals(job.text(stop))) {
      faults.add(job.fault(stop, OpenStop.FLAP_STOP.code(), "no-spring-stop-here"));
    }
    int points = job.size("/load/points");
    if (points >= POINTS.least()
        && IntStream.range(0, points).allMatch(i -> job.given(length(i)))) {
      mechanism(job).faults().stream().map(job::placed).forEach(faults::add);
    }
    return faults;
  }

  private static String length(int point) {
    return "/load/points/" + point + "/lengthMm";
  }

  @Override
  public ForceProfile mechanism(JobTree job) {
    return new ForceProfile(
        IntStream.range(0, job.size("/load/points"))
            .mapToObj(
                i ->
                    new ForceProfile.Point(
                        job.si(length(i), MILLIMETRE), job.number("/load/points/" + i + "/forceN")))
            .toList());
  }
}
