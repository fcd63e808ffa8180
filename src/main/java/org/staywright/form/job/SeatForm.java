package org.staywright.form.job;

import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;

import java.util.ArrayList;
import java.util.List;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.SeatColumn;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;

/** A seat on one column. */
final class SeatForm implements LoadForm {

  private static final String LIGHTEST = "/load/sitterMassKg/min";
  private static final String HEAVIEST = "/load/sitterMassKg/max";

  private static final Amount SITTER = Amount.between(1, 500, KILOGRAM);

  private static final Shape SHAPE =
      Shape.of(
          SeatColumn.CODE,
          required("type", Choice.of(SeatColumn.CODE)),
          required("seatMassKg", Amount.positive(200, KILOGRAM)),
          required(
              "sitterMassKg", Shape.of("sitter", required("min", SITTER), required("max", SITTER))),
          withDefault("seatShare", new Amount(Bound.between(0.1, 1, "")), 0.8),
          required("heightTravelMm", Amount.between(20, 1000, MILLIMETRE)));

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
  public boolean handMoved() {
    return false;
  }

  @Override
  public List<Fault> faults(JobTree job) {
    List<Fault> faults = new ArrayList<>();
    if (job.given("/mounts")) {
      faults.add(job.fault("/mounts", "", "no-mounts-under-a-seat"));
    }
    if (job.given(LIGHTEST) && job.given(HEAVIEST) && job.number(LIGHTEST) > job.number(HEAVIEST)) {
      faults.add(job.fault(LIGHTEST, "≤ max = " + job.root().at(HEAVIEST), "out-of-order"));
    }
    return faults;
  }

  @Override
  public SeatColumn mechanism(JobTree job) {
    return new SeatColumn(
        job.si("/load/seatMassKg", KILOGRAM),
        job.si(LIGHTEST, KILOGRAM),
        job.si(HEAVIEST, KILOGRAM),
        job.number("/load/seatShare"),
        job.si("/load/heightTravelMm", MILLIMETRE));
  }
}
