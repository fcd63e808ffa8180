package org.staywright.spring;

import org.staywright.gas.Isotherm;
import org.staywright.unit.Unit;

/** The gas volume that a stated progression calls for. SI. */
public final class GasRoom {

  private static final Isotherm ROOM = Isotherm.at(Unit.ROOM);

  private GasRoom() {}

  /**
   * Gas volume at the beginning of the stroke, m³. The gas mass is the same at both gauge points, 5
   * mm from either end of the stroke: ρ₁·(V₀ − A·5 mm) = ρ₂·(V₀ − A·(s − 5 mm)), the densities at
   * 20 °C from (p − pₐ)·A = F + f, nitrogen by its equation of state (Span et al. 2000).
   *
   * @param area that the gas acts on, m²
   * @param stroke m
   * @param force F1, N
   * @param friction half of the hysteresis, N
   * @param progression F2/F1
   */
  public static double of(
      double area, double stroke, double force, double friction, double progression) {
    double near = Spring.GAUGE_POINT;
    double far = stroke - Spring.GAUGE_POINT;
    double first = density(force + friction, area);
    double second = density(force * progression + friction, area);
    return area * (second * far - first * near) / (second - first);
  }

  private static double density(double gasForce, double area) {
    return ROOM.density(gasForce / area + Unit.ATMOSPHERE);
  }
}
