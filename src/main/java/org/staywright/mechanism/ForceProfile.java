package org.staywright.mechanism;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * A table, from elsewhere, of the force a set of springs must push with over its length, so that no
 * mechanism is out of reach; q is the length itself, m, and the hand works along the spring.
 *
 * @param points by rising length, at least two
 */
public record ForceProfile(List<Point> points) implements Mechanism {

  public static final String CODE = "force-profile";

  /**
   * @param length mount centre to mount centre, m
   * @param force that the set must push with, N
   */
  public record Point(double length, double force) {}

  public ForceProfile {
    points = List.copyOf(points);
  }

  @Override
  public <T> T side(Sides<T> sides) {
    return sides.profile().apply(this);
  }

  @Override
  public Movement movement() {
    return Movement.SHIFTS;
  }

  @Override
  public String code() {
    return CODE;
  }

  @Override
  public double start() {
    return points.get(0).length();
  }

  @Override
  public double end() {
    return points.get(points.size() - 1).length();
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    if (points.size() < 2) {
      faults.add(new Fault("points", points.size(), "≥ 2", "profile-too-short"));
    }
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).length() > points.get(i - 1).length())) {
        faults.add(
            new Fault(
                "points/" + i,
                points.get(i).length(),
                "> " + millimetres(points.get(i - 1).length()) + " mm",
                "profile-not-rising"));
      }
    }
    return faults;
  }

  /** Without the noise of conversion. */
  private static String millimetres(double metres) {
    return new BigDecimal(Unit.MILLIMETRE.of(metres), new MathContext(9))
        .stripTrailingZeros()
        .toPlainString();
  }

  @Override
  public double length(double q) {
    return q;
  }

  @Override
  public Travel travel(double to) {
    PolynomialSplineFunction force =
        new LinearInterpolator()
            .interpolate(
                points.stream().mapToDouble(Point::length).toArray(),
                points.stream().mapToDouble(Point::force).toArray());
    double last = end();
    return Travel.sampled(
        start(),
        to,
        q -> q,
        q -> 1,
        q -> -force.value(Math.min(q, last)),
        q -> -force.value(Math.min(q, last)),
        q -> -force.value(Math.min(q, last)),
        1,
        0);
  }

  @Override
  public double lateralOffset() {
    return 0;
  }

  @Override
  public RodEnd rodEnd() {
    return RodEnd.EITHER;
  }

  /** A table does not tell which way the spring hangs. */
  @Override
  public OptionalDouble rise(double q) {
    return OptionalDouble.empty();
  }
}
