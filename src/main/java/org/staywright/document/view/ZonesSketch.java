package org.staywright.document.view;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** Where mounts may sit and where not, and those that were found there, in a side view. */
final class ZonesSketch {

  private final Zones zones;
  private final List<Mounts> found;

  /**
   * @param found numbered from 1 in the drawing
   */
  ZonesSketch(Zones zones, List<Mounts> found) {
    this.zones = zones;
    this.found = found;
  }

  /** All that is to be seen of it, mm. */
  Box bounds() {
    return Box.around(
        Stream.concat(Stream.of(zones.frame(), zones.moving()), zones.keepOut().stream())
            .flatMap(zone -> corners(zone).stream())
            .toList());
  }

  /** The zone of the moving mount where the load has taken it, mm. */
  void ghost(Sketch sketch, UnaryOperator<Point> carried) {
    sketch.polygon(Role.GHOST, corners(zones.moving()).stream().map(carried).toList());
  }

  void draw(Sketch sketch) {
    draw(sketch, Role.ZONE, zones.frame());
    draw(sketch, Role.ZONE, zones.moving());
    zones.keepOut().forEach(zone -> draw(sketch, Role.KEEP_OUT, zone));
    for (Mounts mounts : found) {
      Point frame = millimetres(mounts.frame());
      Point moving = millimetres(mounts.moving());
      sketch.line(Role.REACH, frame, moving);
      sketch.circle(Role.OUTLINE, frame, 0.2 * sketch.em());
      sketch.circle(Role.OUTLINE, moving, 0.2 * sketch.em());
    }
  }

  /** A point has a mark of its own: as a rectangle nothing of it would be seen. */
  private static void draw(Sketch sketch, Role role, Zone zone) {
    sketch.polygon(role, corners(zone));
    if (zone.left() == zone.right() && zone.bottom() == zone.top()) {
      sketch.circle(role, millimetres(zone.centre()), 0.4 * sketch.em());
    }
  }

  /**
   * @param moving key of what the moving mount is called
   */
  void label(Labels labels, String moving, Wording wording) {
    for (int i = 0; i < found.size(); i++) {
      Point frame = millimetres(found.get(i).frame());
      Point other = millimetres(found.get(i).moving());
      // Spread along the springs, so that numbers of neighbours do not meet.
      double share = (i + 1.0) / (found.size() + 1);
      Point way = other.minus(frame);
      Point at = Sketch.plus(frame, new Point(share * way.x(), share * way.y()));
      labels.place(Role.REACH, at, 0, Size.SMALL, wording.number(i + 1, 0));
    }
    label(labels, Role.ZONE, zones.frame(), wording.text("document.frame-mount"));
    label(labels, Role.ZONE, zones.moving(), wording.text(moving));
    zones
        .keepOut()
        .forEach(zone -> label(labels, Role.KEEP_OUT, zone, wording.text("document.keep-out")));
  }

  private static void label(Labels labels, Role role, Zone zone, String text) {
    List<Point> corners = corners(zone);
    labels.place(role, corners.get(1), 0, Size.SMALL, text);
  }

  private static List<Point> corners(Zone zone) {
    return Stream.of(
            new Point(zone.left(), zone.bottom()),
            new Point(zone.right(), zone.bottom()),
            new Point(zone.right(), zone.top()),
            new Point(zone.left(), zone.top()))
        .map(ZonesSketch::millimetres)
        .toList();
  }

  private static Point millimetres(Point metres) {
    return new Point(Unit.MILLIMETRE.of(metres.x()), Unit.MILLIMETRE.of(metres.y()));
  }
}
