package org.staywright.fit.assess;

import org.staywright.part.Fitting;
import org.staywright.part.Part;

/**
 * Equal springs with their end fittings.
 *
 * @param part each of them
 * @param count of them
 * @param compressed shortest length with the end fittings, m
 * @param extended longest length with the end fittings, m
 * @param tubeFitting length of the end fitting on the tube, m
 */
public record Hung(Part part, int count, double compressed, double extended, double tubeFitting) {

  public static Hung of(Part part, int count, Fitting rod, Fitting tube) {
    double fittings = rod.lengthToCentre() + tube.lengthToCentre();
    return new Hung(
        part,
        count,
        part.spring().compressedLength() + fittings,
        part.spring().extendedLength() + fittings,
        tube.lengthToCentre());
  }

  /** As in a fit. */
  public static Hung of(Fit fit) {
    return of(fit.part(), fit.count(), fit.rodFitting(), fit.tubeFitting());
  }
}
