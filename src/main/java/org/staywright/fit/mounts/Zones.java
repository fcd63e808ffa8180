package org.staywright.fit.mounts;

import java.util.List;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;

/**
 * Where the mounts of a job may sit, the load at the start of its travel.
 *
 * @param frame for the mount on what stands still
 * @param moving for the mount on what moves
 * @param keepOut where neither may sit
 * @param lateralOffset how far the mounts stand apart across the side view, m
 * @param rodEnd which of the two is to carry the rod
 */
public record Zones(
    Zone frame, Zone moving, List<Zone> keepOut, double lateralOffset, RodEnd rodEnd) {

  public Zones {
    keepOut = List.copyOf(keepOut);
  }

  /** Coordinates that are not fixed: 0 for two points, 4 for two rectangles. */
  public int free() {
    return (frame.wide() ? 1 : 0)
        + (frame.high() ? 1 : 0)
        + (moving.wide() ? 1 : 0)
        + (moving.high() ? 1 : 0);
  }

  /** The mounts by the shares of the free coordinates, 0…1 each. */
  public Mounts at(double[] share) {
    int next = 0;
    double frameX = frame.wide() ? share[next++] : 0;
    double frameY = frame.high() ? share[next++] : 0;
    double movingX = moving.wide() ? share[next++] : 0;
    double movingY = moving.high() ? share[next] : 0;
    return new Mounts(frame.at(frameX, frameY), moving.at(movingX, movingY), lateralOffset, rodEnd);
  }

  /** The mounts in the middle of their zones. */
  public Mounts middle() {
    return new Mounts(frame.centre(), moving.centre(), lateralOffset, rodEnd);
  }

  /** True where no keep-out is in the way. */
  boolean open(Mounts mounts) {
    return open(mounts.frame()) && open(mounts.moving());
  }

  private boolean open(Point point) {
    return keepOut.stream().noneMatch(zone -> zone.holds(point));
  }
}
