package org.staywright.catalog;

import static org.staywright.catalog.Build.area;
import static org.staywright.catalog.Build.ml;
import static org.staywright.catalog.Build.mm;
import static org.staywright.catalog.Build.round;
import static org.staywright.catalog.Build.text;

import java.util.ArrayList;
import java.util.List;
import org.staywright.catalog.SpringSize.Span;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.Cylinder;
import org.staywright.spring.TractionSpring;

/** The invented traction springs. Their gas needs a tube that is longer than the stroke. */
final class TractionPlan {

  private static final int FIRST_SERIAL = 200_000;
  private static final double DEAR = 2.1;

  /** Room on the rod's side beyond the stroke, in strokes. */
  private static final double RESERVE = 1.8;

  private record Size(
      double rodMm, double tubeMm, double boreMm, String thread, Span forceN, Span strokeMm) {}

  private static final List<Size> SIZES =
      List.of(
          new Size(6, 15, 12.6, "M6", new Span(63, 400), new Span(40, 160)),
          new Size(8, 18, 15.6, "M8", new Span(100, 710), new Span(50, 250)),
          new Size(10, 22, 19, "M8", new Span(160, 1000), new Span(63, 315)),
          new Size(10, 28, 24, "M10", new Span(250, 1600), new Span(80, 400)));

  private TractionPlan() {}

  static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    int serial = FIRST_SERIAL;
    for (Size size : SIZES) {
      for (double stroke : PreferredNumbers.of("R10", size.strokeMm)) {
        for (double force : PreferredNumbers.of("R10", size.forceN)) {
          Part part = part(serial++, size, stroke, force);
          if (new RowFigures(part, FittingPlan.socketLength(size.thread)).pass()) {
            parts.add(part);
          }
        }
      }
    }
    return parts;
  }

  private static Part part(int serial, Size size, double stroke, double force) {
    double reserve = Math.ceil(RESERVE * stroke);
    double ring = area(size.boreMm) - area(size.rodMm);
    double compressed = stroke + reserve + 60;
    TractionSpring spring =
        new TractionSpring(
            new Cylinder(
                mm(size.rodMm),
                mm(size.tubeMm),
                mm(size.boreMm),
                mm(stroke),
                mm(compressed + stroke),
                mm(compressed),
                Math.rint(8 + 0.04 * force),
                1.5,
                ml(round(ring * (stroke + reserve) / 1000, 2)),
                ml(0.5)),
            force);
    String description =
        "Traction spring %s/%s, stroke %s mm, %s N"
            .formatted(text(size.rodMm), text(size.tubeMm), text(stroke), text(force));
    return Build.gas(serial, Family.TRACTION_SPRING, description, size.thread, spring, 0.8, DEAR);
  }
}
