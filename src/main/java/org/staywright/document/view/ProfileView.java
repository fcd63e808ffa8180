package org.staywright.document.view;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.document.draw.Track;
import org.staywright.fit.assess.FitCurve;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Motion;
import org.staywright.wording.Wording;

/**
 * The force that is asked for over the spring's length, and beside it what a set of springs pushes:
 * coming out and pushed in, nominal in lines, a band each from the least to the most in any corner.
 */
final class ProfileView {

  private static final double WIDTH = 23;
  private static final double HEIGHT = 17;

  /** More points than these would be a row of marks and no curve. */
  private static final int MARKED = 60;

  /** Least distance of the names at the ends of the curves, in type sizes. */
  private static final double APART = 1.3;

  private final ForceProfile profile;
  private final FitCurve curve;
  private final Wording wording;
  private final double[] length;
  private final double[] asked;
  private final Plot plot;

  private ProfileView(ForceProfile profile, FitCurve curve, Wording wording) {
    this.profile = profile;
    this.curve = curve;
    this.wording = wording;
    Travel travel = profile.travel(profile.end());
    length = MILLIMETRE.of(travel.length());
    // What is asked for is what the load takes: Q = −force.
    asked = Arrays.stream(travel.load()).map(load -> -load).toArray();
    double[] all = all().toArray();
    double low = Math.min(0, Arrays.stream(all).min().orElseThrow());
    double high = Arrays.stream(all).max().orElseThrow();
    plot =
        new Plot(
            Axis.within(length[0], length[length.length - 1], 5),
            Axis.around(low, high, 6),
            WIDTH,
            HEIGHT);
  }

  /**
   * @param curve hand forces with a set of springs, null for none
   */
  static Drawing of(ForceProfile profile, FitCurve curve, Wording wording) {
    return new ProfileView(profile, curve, wording).draw();
  }

  /** The force that is asked for, and a mark that runs along it. */
  static Drawing of(ForceProfile profile, Motion motion, Wording wording) {
    return new ProfileView(profile, null, wording).draw(motion);
  }

  private Drawing draw(Motion motion) {
    Drawing still = draw();
    List<Point> places = Arrays.stream(motion.q()).mapToObj(this::place).toList();
    Sketch sketch = plot.sketch();
    Point from = places.get(0);
    List<Point> shifts = places.stream().map(each -> each.minus(from)).toList();
    Track track = new Track(from, new double[shifts.size()], shifts);
    Labels labels = new Labels(sketch);
    for (int i : Stills.of(motion)) {
      sketch.circle(Role.GHOST, places.get(i), 0.45);
      labels.place(Role.LABEL, places.get(i), 0.5, Size.SMALL, Stills.time(motion, i, wording));
    }
    sketch.moving(track, () -> sketch.circle(Role.FLAP, from, 0.45));
    return new Drawing(
        still.title(), still.description(), still.box(), still.em(), sketch.shapes(), null);
  }

  /** On the curve of what is asked for, at a length in m. */
  private Point place(double metres) {
    double mm = MILLIMETRE.of(metres);
    double share = (mm - length[0]) / (length[length.length - 1] - length[0]);
    double step = Math.max(0, Math.min(1, share)) * (length.length - 1);
    int i = (int) Math.min(length.length - 2, Math.floor(step));
    return plot.place(mm, asked[i] + (step - i) * (asked[i + 1] - asked[i]));
  }

  private Drawing draw() {
    plot.frame(
        wording,
        wording.text("document.mount-length"),
        MILLIMETRE,
        wording.text("document.force"),
        NEWTON);
    List<Name> names = new ArrayList<>();
    if (curve != null) {
      String out = wording.text("document.coming-out");
      String in = wording.text("document.pushed-in");
      band(Role.BAND_2, Role.CURVE_2, out, out(curve.openMost()), out(curve.openLeast()));
      band(Role.BAND_3, Role.CURVE_3, in, in(curve.closeLeast()), in(curve.closeMost()));
      plot.curve(Role.CURVE_2, nominal(out), length, out(curve.nominal().open()));
      plot.curve(Role.CURVE_3, nominal(in), length, in(curve.nominal().close()));
      plot.caption(wording.text("document.profile-view.bands"));
      names.add(name(Role.CURVE_2, out(curve.nominal().open()), out));
      names.add(name(Role.CURVE_3, in(curve.nominal().close()), in));
    }
    plot.curve(Role.CURVE_1, wording.text("document.asked"), length, asked);
    if (profile.points().size() <= MARKED) {
      for (ForceProfile.Point point : profile.points()) {
        Point at = plot.place(MILLIMETRE.of(point.length()), point.force());
        plot.sketch().circle(Role.MARK, at, 0.22);
      }
    }
    names.add(name(Role.CURVE_1, asked, wording.text("document.asked")));
    write(names);
    int last = length.length - 1;
    return plot.drawing(
        "asked-force",
        wording.text("document.profile-view"),
        wording.text(
            "document.profile-view.about",
            wording.quantity(asked[0], NEWTON, 0),
            wording.quantity(profile.start(), MILLIMETRE, 0),
            wording.quantity(asked[last], NEWTON, 0),
            wording.quantity(profile.end(), MILLIMETRE, 0)));
  }

  private String nominal(String way) {
    return wording.text("document.nominal", way);
  }

  private void band(Role band, Role role, String way, double[] least, double[] most) {
    int lower = edge(role, "document.least", way, least);
    plot.band(band, lower, edge(role, "document.most", way, most));
  }

  private int edge(Role role, String key, String way, double[] forces) {
    return plot.told(role, wording.text(key, way), Readings.Look.EDGE, length, forces);
  }

  /** The hand adds what the springs lack: n·(F − f) = asked − hand. */
  private double[] out(double[] hand) {
    double[] force = new double[hand.length];
    Arrays.setAll(force, i -> asked[i] - hand[i]);
    return force;
  }

  /** The hand overcomes what they have too much: n·(F + f) = asked + hand. */
  private double[] in(double[] hand) {
    double[] force = new double[hand.length];
    Arrays.setAll(force, i -> asked[i] + hand[i]);
    return force;
  }

  private DoubleStream all() {
    Stream<double[]> pushed =
        curve == null
            ? Stream.of()
            : Stream.of(
                out(curve.openMost()),
                out(curve.openLeast()),
                in(curve.closeLeast()),
                in(curve.closeMost()));
    return Stream.concat(Stream.of(asked), pushed).flatMapToDouble(Arrays::stream);
  }

  /** A curve's name at its right end. */
  private record Name(Role role, double y, String text) {}

  private Name name(Role role, double[] forces, String text) {
    double end = plot.place(length[0], forces[forces.length - 1]).y();
    return new Name(role, end, text);
  }

  /** From below upwards, each clear of the one before. */
  private void write(List<Name> names) {
    names.sort(Comparator.comparingDouble(Name::y));
    double least = Double.NEGATIVE_INFINITY;
    for (Name name : names) {
      double y = Math.max(least, name.y());
      least = y + APART;
      Point at = new Point(plot.width() + 0.6, y);
      plot.sketch().text(name.role(), at, Anchor.START, Size.NORMAL, name.text());
    }
  }
}
