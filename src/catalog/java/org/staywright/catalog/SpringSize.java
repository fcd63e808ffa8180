package org.staywright.catalog;

import java.util.List;

/**
 * One size of the invented range of gas springs: a rod in a tube, and what is made of it. Rods,
 * tubes and bores follow the precision tubes of EN 10305; a rod's thread is cut on the rod itself
 * and so is no larger than it.
 *
 * @param rodMm rod diameter
 * @param tubeMm tube diameter outside
 * @param boreMm tube diameter inside
 * @param thread at both ends
 * @param forceN least and greatest force class
 * @param strokeMm least and greatest stroke
 * @param endMm length of the bore beyond the stroke that is not filled by the piston
 * @param fixedMm compressed length less stroke
 * @param lubricantMl oil of a spring without end damping
 * @param frictionN friction without pressure
 * @param orificeMm hole in the piston, by which the free rod comes out at 0.15 to 0.30 m/s in gas
 * @param massKg at the least and the greatest stroke
 * @param chargeBar highest charge
 * @param wallTimeS time constant of the heat exchange
 * @param lossPercent gas lost in a year
 */
record SpringSize(
    double rodMm,
    double tubeMm,
    double boreMm,
    String thread,
    Span forceN,
    Span strokeMm,
    double endMm,
    double fixedMm,
    double lubricantMl,
    double frictionN,
    double orificeMm,
    Span massKg,
    double chargeBar,
    double wallTimeS,
    double lossPercent) {

  /** From the least to the greatest. */
  record Span(double low, double high) {

    boolean holds(double value) {
      return low <= value && value <= high;
    }
  }

  /** The table the range starts from: invented, but such springs could be built. */
  static final List<SpringSize> ALL =
      List.of(
          size(4, 12, 10, "M4", 40, 180, 20, 160, 6, 45, 0.2, 4, 0.4, 0.04, 0.09, 155, 1.5, 3),
          size(6, 15, 12.6, "M6", 63, 400, 40, 250, 7, 52, 0.4, 8, 0.4, 0.08, 0.21, 155, 2, 2.5),
          size(8, 18, 15.6, "M8", 100, 710, 60, 400, 8, 60, 0.7, 11, 0.45, 0.13, 0.44, 150, 3, 2),
          size(10, 22, 19, "M8", 160, 1000, 80, 500, 9, 68, 1.2, 14, 0.55, 0.25, 0.83, 135, 4, 2),
          size(12, 25, 22, "M10", 250, 1400, 100, 630, 10, 76, 1.8, 18, 0.6, 0.37, 1.3, 135, 5, 2),
          size(16, 32, 28, "M12", 450, 2500, 100, 800, 12, 95, 4, 28, 0.7, 0.66, 2.8, 135, 7, 1.5),
          size(20, 40, 35, "M14", 710, 4000, 125, 800, 14, 115, 7, 40, 0.9, 1.2, 4.4, 135, 9, 1.5));

  private static SpringSize size(
      double rod,
      double tube,
      double bore,
      String thread,
      double forceLow,
      double forceHigh,
      double strokeLow,
      double strokeHigh,
      double end,
      double fixed,
      double lubricant,
      double friction,
      double orifice,
      double massLow,
      double massHigh,
      double charge,
      double wallTime,
      double loss) {
    return new SpringSize(
        rod,
        tube,
        bore,
        thread,
        new Span(forceLow, forceHigh),
        new Span(strokeLow, strokeHigh),
        end,
        fixed,
        lubricant,
        friction,
        orifice,
        new Span(massLow, massHigh),
        charge,
        wallTime,
        loss);
  }
}
