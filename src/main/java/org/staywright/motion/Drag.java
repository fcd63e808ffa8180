package org.staywright.motion;

/** What resists a mechanism by its speed besides its springs. */
@FunctionalInterface
public interface Drag {

  Drag NONE = (q, speed) -> 0;

  /**
   * @param q rad or m
   * @param speed rad/s or m/s, either way
   * @return against the motion, not below zero, N·m or N
   */
  double at(double q, double speed);
}
