package org.staywright.fit.mounts;

import static org.staywright.unit.Unit.MILLIMETRE;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.Travel;

/**
 * Zones to begin a search with, where mounts often find room. Whatever mounts there are lie in
 * them, so that a search does no worse. Rules of thumb of ours, from no source: on a flap the
 * moving mount sits between an eighth and just over half of the way to the handle; the frame mount
 * sits behind the closed flap where a hand must lift it, and beyond the hinge where it falls open.
 */
public final class Room {

  /** A patch beside a flap: along it from the hinge and behind it, shares of its length. */
  private record Patch(double from, double to, double near, double far) {}

  private static final Patch ON_THE_FLAP = new Patch(0.12, 0.55, 0, 0.08);
  private static final Patch BEHIND = new Patch(-0.1, 0.3, 0.08, 0.5);
  private static final Patch BEYOND_THE_HINGE = new Patch(-0.85, -0.35, -0.15, 0.15);

  /** Around the mounts of a lift, shares of its travel. */
  private static final double AROUND_FRAME = 0.35;

  private static final double AROUND_LOAD = 0.15;

  /** Zones end on whole steps of this, m: they are only where to begin. */
  private static final double STEP = 5e-3;

  private Room() {}

  public static Zones of(Rigid mechanism) {
    Mounts mounts = mechanism.mounts();
    Zone frame =
        mechanism.as(
            flap -> patch(flap, fallsOpen(flap) ? BEYOND_THE_HINGE : BEHIND),
            lift -> around(mounts.frame(), AROUND_FRAME * lift.end()));
    Zone moving =
        mechanism.as(
            flap -> patch(flap, ON_THE_FLAP),
            lift -> around(mounts.moving(), AROUND_LOAD * lift.end()));
    return new Zones(
        whole(frame, mounts.frame()),
        whole(moving, mounts.moving()),
        List.of(),
        mounts.lateralOffset(),
        mounts.rodEnd());
  }

  /** Whether its weight opens it over the whole travel more than it closes it. */
  private static boolean fallsOpen(HingedFlap flap) {
    Travel travel = flap.travel(flap.end());
    return DoubleStream.of(travel.load()).sum() > 0;
  }

  /** The upright rectangle around a patch of a flap that may stand at any angle. */
  private static Zone patch(HingedFlap flap, Patch patch) {
    List<Point> corners =
        Stream.of(
                corner(flap, patch.from(), patch.near()),
                corner(flap, patch.from(), patch.far()),
                corner(flap, patch.to(), patch.near()),
                corner(flap, patch.to(), patch.far()))
            .toList();
    return new Zone(
        corners.stream().mapToDouble(Point::x).min().orElseThrow(),
        corners.stream().mapToDouble(Point::x).max().orElseThrow(),
        corners.stream().mapToDouble(Point::y).min().orElseThrow(),
        corners.stream().mapToDouble(Point::y).max().orElseThrow());
  }

  private static Point corner(HingedFlap flap, double along, double behind) {
    Point tip = flap.handle();
    Point back = tip.turned(-flap.sense() * Math.PI / 2);
    return new Point(along * tip.x() + behind * back.x(), along * tip.y() + behind * back.y());
  }

  private static Zone around(Point mount, double by) {
    return new Zone(mount.x() - by, mount.x() + by, mount.y() - by, mount.y() + by);
  }

  private static Zone whole(Zone zone, Point mount) {
    return new Zone(
        down(Math.min(zone.left(), mount.x())),
        up(Math.max(zone.right(), mount.x())),
        down(Math.min(zone.bottom(), mount.y())),
        up(Math.max(zone.top(), mount.y())));
  }

  private static double up(double metres) {
    return 0 - down(-metres);
  }

  /** By way of millimetres, so that no noise of the conversion makes a step of it. */
  private static double down(double metres) {
    double step = MILLIMETRE.of(STEP);
    return MILLIMETRE.si(Math.floor(MILLIMETRE.of(metres) / step + 1e-9) * step);
  }
}
