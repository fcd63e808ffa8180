package org.staywright.spring;

import static org.staywright.spring.SteppedColumn.YOUNG;

/**
 * The side of a rigid lock that oil fills: the oil, the tube around it and the rod give way one
 * after the other. The other side's help is left out.
 *
 * <p>Oil: K = A²·B/V by the definition of the bulk modulus B; the tube's growth is added to the
 * oil's compression after G. Lamé (see {@link ThickTube#yielding}); the rod is a bar in pressure.
 *
 * @param area of the piston on that side, m²
 * @param volume of oil that is caught, m³
 * @param tube around it
 * @param rodLength m
 * @param rodArea m²
 */
public record LockedOil(
    double area, double volume, ThickTube tube, double rodLength, double rodArea) {

  /**
   * Bulk modulus of the oil, free of air, Pa: the low end of 1.5 to 1.9 GPa that hydraulic oils
   * have (University of Minnesota, course Fundamentals of Fluid Power, lecture on compressibility).
   */
  public static final double BULK_MODULUS = 1.5e9;

  /** Poisson's ratio of steel (EN 1993-1-1, 3.2.6). */
  private static final double POISSON = 0.3;

  /** The rod is taken as long as the tube. */
  static LockedOil of(Cylinder cylinder, double area, double volume) {
    return new LockedOil(
        area, volume, cylinder.tube(), cylinder.compressedLength(), cylinder.rodArea());
  }

  /** N/m. */
  public double stiffness() {
    double oilAndTube = volume / (area * area) * (1 / BULK_MODULUS + tube.yielding(YOUNG, POISSON));
    double rod = rodLength / (YOUNG * rodArea);
    return 1 / (oilAndTube + rod);
  }
}
