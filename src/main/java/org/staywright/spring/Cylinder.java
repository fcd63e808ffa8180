package org.staywright.spring;

import static org.staywright.unit.Unit.ROOM;

/**
 * Rod and tube, and what is between them: seals that rub, room for gas, oil. What a spring does
 * with it is the spring's own. Lengths are without end fittings. SI, at 20 °C.
 *
 * @param rodDiameter m
 * @param tubeDiameter outside, m
 * @param boreDiameter inside of the tube, m
 * @param stroke m
 * @param extendedLength m
 * @param compressedLength m
 * @param friction half of the hysteresis, N
 * @param coldFrictionFactor friction at −30 °C over that at 20 °C
 * @param gasVolume room for gas where it is greatest; 0 for none, m³
 * @param oilVolume m³
 */
public record Cylinder(
    double rodDiameter,
    double tubeDiameter,
    double boreDiameter,
    double stroke,
    double extendedLength,
    double compressedLength,
    double friction,
    double coldFrictionFactor,
    double gasVolume,
    double oilVolume) {

  /** Growth of the oil's volume, 1/K: common practice for mineral oil, no source. */
  public static final double OIL_EXPANSION = 0.7e-3;

  /** Of a circle, in the square of what its diameter is in. */
  public static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  /** Section of the rod, m². */
  public double rodArea() {
    return area(rodDiameter);
  }

  /** Section of the bore, which the piston fills, m². */
  public double boreArea() {
    return area(boreDiameter);
  }

  /** What the rod leaves of the bore, m². */
  public double ringArea() {
    return boreArea() - rodArea();
  }

  /** Second moment of the rod's section, m⁴. */
  public double rodInertia() {
    return Math.PI / 64 * Math.pow(rodDiameter, 4);
  }

  /** What the oil has grown by since 20 °C, m³. */
  public double oilGrowth(double kelvin) {
    return oilVolume * OIL_EXPANSION * (kelvin - ROOM);
  }

  /** The wall around the bore. */
  public ThickTube tube() {
    return new ThickTube(boreDiameter / 2, tubeDiameter / 2);
  }
}
