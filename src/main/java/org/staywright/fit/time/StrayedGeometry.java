package org.staywright.fit.time;

import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import org.jspecify.annotations.Nullable;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Pose;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.Travel;

/** A load and its mounts a little off from where they were meant, at every sample of the travel. */
final class StrayedGeometry {

  private final Travel travel;
  private final @Nullable Rigid rigid;
  private final Pose[] pose;
  private final double[] length;
  private final double[] lever;
  private final double[] load;
  private final double[] besides;

  private StrayedGeometry(Travel travel, @Nullable Rigid rigid) {
    this.travel = travel;
    this.rigid = rigid;
    int samples = travel.q().length;
    besides = new double[samples];
    pose = new Pose[rigid == null ? 0 : samples];
    for (int i = 0; rigid != null && i < samples; i++) {
      pose[i] = rigid.pose(travel.q()[i]);
      besides[i] = rigid.besides(travel.q()[i]);
    }
    length = travel.length().clone();
    lever = travel.lever().clone();
    load = new double[samples];
  }

  /** A load that is no rigid body in the plane keeps its geometry; only what it weighs strays. */
  static StrayedGeometry of(Mechanism mechanism, Travel travel) {
    return new StrayedGeometry(travel, mechanism.rigid().orElse(null));
  }

  /**
   * @param mass factor on it
   * @param centreX of the mass off by, m
   * @param frameX of the frame mount off by, m
   * @param movingX of the moving mount off by, m
   */
  void place(
      double mass,
      double centreX,
      double centreY,
      double frameX,
      double frameY,
      double movingX,
      double movingY) {
    if (rigid == null) {
      for (int i = 0; i < load.length; i++) {
        load[i] = mass * travel.load()[i];
      }
      return;
    }
    Point frame = rigid.mounts().frame();
    Point moving = rigid.mounts().moving();
    Point centre = rigid.centreOfMass();
    Point up = rigid.up();
    double offset = rigid.lateralOffset();
    double weight = mass * rigid.masses().nominal() * STANDARD_GRAVITY;
    double px = moving.x() + movingX;
    double py = moving.y() + movingY;
    double cx = centre.x() + centreX;
    double cy = centre.y() + centreY;
    for (int i = 0; i < load.length; i++) {
      Pose at = pose[i];
      double rx = at.cos() * px - at.sin() * py;
      double ry = at.sin() * px + at.cos() * py;
      double dx = rx + at.x() - frame.x() - frameX;
      double dy = ry + at.y() - frame.y() - frameY;
      length[i] = Math.sqrt(dx * dx + dy * dy + offset * offset);
      lever[i] =
          (dx * (at.along() - at.turning() * ry) + dy * (at.upward() + at.turning() * rx))
              / length[i];
      double bx = at.cos() * cx - at.sin() * cy;
      double by = at.sin() * cx + at.cos() * cy;
      load[i] =
          besides[i]
              - weight
                  * (up.x() * (at.along() - at.turning() * by)
                      + up.y() * (at.upward() + at.turning() * bx));
    }
  }

  int last() {
    return length.length - 1;
  }

  /** Mount centre to mount centre, m. */
  double length(int sample) {
    return length[sample];
  }

  /** dL/dq, m/rad or 1. */
  double lever(int sample) {
    return lever[sample];
  }

  /** Q, N·m or N. */
  double load(int sample) {
    return load[sample];
  }

  /** N·m or N. */
  double friction() {
    return travel.friction();
  }

  /** Lever of the hand, m or 1. */
  double hand() {
    return travel.hand();
  }
}
