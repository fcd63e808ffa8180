package org.staywright.document.view;

import java.util.List;
import org.staywright.document.draw.Dimensions;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.Point;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * A spring with its dimensions, mm, extended above and compressed below, both to one scale. The
 * tube's end lies at x = 0.
 */
public final class SpringOutline {

  /** Type sizes along the extended spring. */
  private static final double ACROSS = 48;

  /** Type sizes across the tube, at most. */
  private static final double THICK = 5;

  /** Thread drawn beyond its shoulder, over the rod's diameter: only for the eye. */
  private static final double THREAD = 1.2;

  private final Part part;
  private final Fitting rodFitting;
  private final Fitting tubeFitting;
  private final Wording wording;
  private final double rod;
  private final double tube;
  private final double compressed;
  private final double extended;
  private final double rodReach;
  private final double tubeReach;
  private final double em;
  private final Sketch sketch;
  private final Dimensions dimensions;

  private SpringOutline(Part part, Fitting rodFitting, Fitting tubeFitting, Wording wording) {
    this.part = part;
    this.rodFitting = rodFitting;
    this.tubeFitting = tubeFitting;
    this.wording = wording;
    this.rod = mm(part.spring().rodDiameter());
    this.tube = mm(part.spring().tubeDiameter());
    this.compressed = mm(part.spring().compressedLength());
    this.extended = mm(part.spring().extendedLength());
    this.rodReach = reach(rodFitting);
    this.tubeReach = reach(tubeFitting);
    // A stubby one is drawn as high as its type allows, not as long.
    double stubby = mm(part.spring().tubeDiameter()) / THICK;
    this.em = Math.max((extended + rodReach + tubeReach) / ACROSS, stubby);
    this.sketch = new Sketch(em);
    this.dimensions = new Dimensions(sketch);
  }

  /** The bare spring. */
  public static Drawing of(Part part, Wording wording) {
    return of(part, null, null, wording);
  }

  /** With end fittings; null for a bare thread. */
  public static Drawing of(Part part, Fitting rodFitting, Fitting tubeFitting, Wording wording) {
    return new SpringOutline(part, rodFitting, tubeFitting, wording).draw();
  }

  private Drawing draw() {
    double half = Math.max(tube / 2, eye(rodFitting));
    half = Math.max(half, eye(tubeFitting));
    body(0, extended);
    dimensions.along(compressed, extended, rod / 2, half + 2.4 * em, figure("stroke", stroke()));
    dimensions.across(compressed + 0.3 * stroke(), 0, rod, "⌀" + number(rod));
    dimensions.across(0.35 * compressed, 0, tube, "⌀" + number(tube));
    ends(half);
    double below = lengths(0, half, extended, "extended");

    double lower = below - 1.8 * em - half;
    body(lower, compressed);
    lengths(lower, half, compressed, "compressed");
    return sketch.drawing(
        wording.text("document.outline", part.number()),
        wording.text(
            "document.outline.about",
            number(extended),
            number(compressed),
            number(stroke()),
            number(rod),
            number(tube)),
        0.5 * em);
  }

  /** The length without and, where fittings are given, between their centres. */
  private double lengths(double y, double half, double length, String name) {
    double line = y - half - 2.2 * em;
    dimensions.along(0, length, y - tube / 2, line, figure(name, length));
    if (rodFitting == null && tubeFitting == null) {
      return line;
    }
    double outer = line - 2 * em;
    String text = wording.text("document.outline.centres", number(length + rodReach + tubeReach));
    dimensions.along(-tubeReach, length + rodReach, y - half, outer, text);
    return outer;
  }

  private void ends(double half) {
    double y = half + 0.9 * em;
    text(new Point(extended + 0.5 * em, y), Anchor.START, part.ends().rod());
    text(new Point(-0.3 * em, y), Anchor.END, part.ends().tube());
  }

  private void text(Point at, Anchor anchor, String text) {
    if (text != null) {
      sketch.text(Role.LABEL, at, anchor, Size.SMALL, text);
    }
  }

  /** The spring at a length, its axis at a height. */
  private void body(double y, double length) {
    double thread = THREAD * rod;
    thread(y, length, length + (rodFitting == null ? thread : Math.min(thread, rodReach)));
    thread(y, 0, -(tubeFitting == null ? thread : Math.min(thread, tubeReach)));
    fitting(rodFitting, y, length, 1);
    fitting(tubeFitting, y, 0, -1);
    if (length > compressed) {
      sketch.rectangle(Role.OUTLINE, compressed, y - rod / 2, length, y + rod / 2);
    }
    double cut = 0.12 * tube;
    double half = tube / 2;
    sketch.polygon(
        Role.METAL,
        List.of(
            new Point(0, y - half + cut),
            new Point(cut, y - half),
            new Point(compressed - cut, y - half),
            new Point(compressed, y - half + cut),
            new Point(compressed, y + half - cut),
            new Point(compressed - cut, y + half),
            new Point(cut, y + half),
            new Point(0, y + half - cut)));
    double over = 1.2 * em;
    sketch.line(
        Role.CENTRE_LINE,
        -Math.max(thread, tubeReach + eye(tubeFitting)) - over,
        y,
        length + Math.max(thread, rodReach + eye(rodFitting)) + over,
        y);
  }

  /** Crest in full, root in thin lines (ISO 6410-1). */
  private void thread(double y, double from, double to) {
    double crest = 0.48 * rod;
    double root = 0.4 * rod;
    sketch.rectangle(Role.OUTLINE, Math.min(from, to), y - crest, Math.max(from, to), y + crest);
    sketch.line(Role.DIMENSION, from, y + root, to, y + root);
    sketch.line(Role.DIMENSION, from, y - root, to, y - root);
  }

  private void fitting(Fitting fitting, double y, double shoulder, int side) {
    if (fitting == null) {
      return;
    }
    double centre = shoulder + side * reach(fitting);
    double eye = eye(fitting);
    double neck = 0.75 * rod;
    sketch.rectangle(
        Role.OUTLINE, Math.min(shoulder, centre), y - neck, Math.max(shoulder, centre), y + neck);
    if (fitting.type() == FittingType.CLEVIS) {
      sketch.rectangle(Role.OUTLINE, centre - eye, y - eye, centre + eye, y + eye);
    } else {
      sketch.circle(Role.OUTLINE, new Point(centre, y), eye);
    }
    sketch.circle(Role.OUTLINE, new Point(centre, y), joint(fitting) / 2);
    sketch.line(Role.CENTRE_LINE, centre, y - eye - 0.5 * em, centre, y + eye + 0.5 * em);
  }

  private static double reach(Fitting fitting) {
    return fitting == null ? 0 : mm(fitting.lengthToCentre());
  }

  /** Ball or pin, mm. */
  private static double joint(Fitting fitting) {
    return mm(Math.max(fitting.ballDiameter(), fitting.pinDiameter()));
  }

  /** Half the height of the part around ball or pin: only for the eye, no dimension. */
  private static double eye(Fitting fitting) {
    return fitting == null ? 0 : 0.85 * joint(fitting);
  }

  private double stroke() {
    return mm(part.spring().stroke());
  }

  private String figure(String name, double value) {
    return wording.text("document.outline." + name, number(value));
  }

  private String number(double millimetres) {
    return wording.shortest(Unit.MILLIMETRE.si(millimetres), Unit.MILLIMETRE, 1);
  }

  private static double mm(double metres) {
    return Unit.MILLIMETRE.of(metres);
  }
}
