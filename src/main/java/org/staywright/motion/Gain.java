package org.staywright.motion;

import java.util.function.DoubleUnaryOperator;

/**
 * A bound on the energy with which a load comes to an end of its travel: that of the pace at which
 * a hand lets it go, and the greatest work that springs, load and friction still do on its way from
 * there. Damping is left out, and the gas keeps the wall's temperature, so that it pushes more
 * while it expands and resists less while it is squeezed than it will; a tenth is added for gas
 * that was squeezed first and is warm. No bound for a hand that pushes on.
 */
public final class Gain {

  private static final int STEPS = 60;

  /** Our choice; the tests hold it against motions. */
  private static final double WARM = 1.1;

  private Gain() {}

  /**
   * @param opening towards which end
   * @return J
   */
  public static double most(MotionSetup scene, boolean opening) {
    TravelSpline course = scene.course();
    double pace = scene.hand().force() == 0 ? 0 : Hand.LetsGo.PACE / course.hand();
    double step = (course.end() - course.start()) / STEPS;
    double far = opening ? course.end() : course.start();
    int direction = opening ? 1 : -1;
    DoubleUnaryOperator slow = scene.strut().law().slow(scene.strut().kelvin());
    double work = 0;
    double most = 0;
    double later = net(scene, slow, direction, far);
    for (int i = 1; i <= STEPS; i++) {
      double net = net(scene, slow, direction, far - direction * i * step);
      work += (net + later) / 2 * step;
      most = Math.max(most, work);
      later = net;
    }
    return WARM * (scene.inertia() * pace * pace / 2 + most);
  }

  private static double net(MotionSetup scene, DoubleUnaryOperator slow, int direction, double q) {
    double push =
        scene.springs() == 0 ? 0 : scene.springs() * slow.applyAsDouble(scene.compression(q));
    TravelSpline course = scene.course();
    return direction * (push * course.lever(q) + course.load(q)) - scene.friction(q);
  }
}
