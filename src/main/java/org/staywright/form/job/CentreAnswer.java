package org.staywright.form.job;

import static org.staywright.unit.Unit.MILLIMETRE;

import org.staywright.mechanism.Body;
import org.staywright.mechanism.Point;

/** Where the centre of mass lies, as a job has it. */
public record CentreAnswer(double massKg, Coordinates centreOfMassMm) {

  /** Of a point in the side view, in the unit of its field. */
  public record Coordinates(double x, double y) {

    static Coordinates millimetres(Point point) {
      return new Coordinates(MILLIMETRE.of(point.x()), MILLIMETRE.of(point.y()));
    }
  }

  public static CentreAnswer of(Body body) {
    return new CentreAnswer(body.mass(), Coordinates.millimetres(body.centre()));
  }
}
