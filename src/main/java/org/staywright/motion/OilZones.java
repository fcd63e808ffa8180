package org.staywright.motion;

/**
 * Where the oil lies that the piston must pass, by how the spring hangs: rod down it damps the end
 * of extending, over V_oil/A_a; rod up that of compressing, over V_oil/A_b. Nearer than 30° to
 * level neither is claimed (a rule of thumb).
 *
 * @param stroke m
 * @param extension length at full extension, m
 * @param compression length at full compression, m
 */
public record OilZones(double stroke, double extension, double compression) {

  /** Sine of the steepness from which on oil is where it should be. */
  static final double STEEP = 0.5;

  public static final OilZones NONE = new OilZones(0, 0, 0);

  /**
   * @param stroke m
   * @param oil volume, m³
   * @param ring between rod and bore, m²
   * @param bore m²
   */
  public static OilZones of(double stroke, double oil, double ring, double bore) {
    return new OilZones(stroke, oil / ring, oil / bore);
  }

  /**
   * How far inside the oil the hole is: above zero where oil passes it.
   *
   * @param compression m
   * @param extending which way it moves
   * @param rodRise sine of the rod end's direction, +1 straight up, NaN where nobody knows
   */
  public double depth(double compression, boolean extending, double rodRise) {
    double zone = extending ? extension : this.compression;
    if (zone <= 0 || Double.isNaN(rodRise)) {
      return -1;
    }
    double into = extending ? zone - compression : compression - (stroke - zone);
    double steep = extending ? -rodRise - STEEP : rodRise - STEEP;
    return Math.min(into, steep);
  }
}
