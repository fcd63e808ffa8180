package org.staywright.spring;

/**
 * Stress in a thick closed tube under pressure from inside and outside.
 *
 * <p>G. Lamé's equations, as in any text on strength of materials (E. J. Hearn, Mechanics of
 * Materials 1, ch. 10): σ = A ± B/r².
 *
 * @param innerRadius m
 * @param outerRadius m
 */
public record ThickTube(double innerRadius, double outerRadius) {

  /** Hoop stress, tension positive, Pa. */
  public double hoop(double inside, double outside, double radius) {
    return constant(inside, outside) + slope(inside, outside) / (radius * radius);
  }

  /** Radial stress, tension positive, Pa. */
  public double radial(double inside, double outside, double radius) {
    return constant(inside, outside) - slope(inside, outside) / (radius * radius);
  }

  /** Axial stress with closed ends, Pa. */
  public double axial(double inside, double outside) {
    return constant(inside, outside);
  }

  /**
   * Gauge pressure inside at which the bore begins to yield by the greatest shear stress (Tresca):
   * hoop less radial stress reaches the limit.
   *
   * @param limit yield, or for a burst estimate tensile strength, Pa
   */
  public double pressureAt(double limit) {
    double ratio = innerRadius / outerRadius;
    return limit / 2 * (1 - ratio * ratio);
  }

  /** Area of the wall's section, m². */
  public double section() {
    return Math.PI * (outerRadius * outerRadius - innerRadius * innerRadius);
  }

  /** Second moment of the wall's section, m⁴. */
  public double inertia() {
    return Math.PI / 4 * (Math.pow(outerRadius, 4) - Math.pow(innerRadius, 4));
  }

  /**
   * Growth of the bore's section with pressure, as a share of itself, 1/Pa: 2/E·((k² + 1)/(k² − 1)
   * + ν), k = r_o/r_i.
   *
   * @param young modulus of the wall, Pa
   * @param poisson ratio of the wall
   */
  public double yielding(double young, double poisson) {
    double square = Math.pow(outerRadius / innerRadius, 2);
    return 2 / young * ((square + 1) / (square - 1) + poisson);
  }

  private double constant(double inside, double outside) {
    double a2 = innerRadius * innerRadius;
    double b2 = outerRadius * outerRadius;
    return (inside * a2 - outside * b2) / (b2 - a2);
  }

  private double slope(double inside, double outside) {
    double a2 = innerRadius * innerRadius;
    double b2 = outerRadius * outerRadius;
    return (inside - outside) * a2 * b2 / (b2 - a2);
  }
}
