package org.staywright.spring;

/** A force over the speed of compression. */
@FunctionalInterface
public interface SpeedLaw {

  /**
   * @param speed of compression, m/s, below zero where the spring grows longer
   * @return what it pushes its ends apart with, N: against the motion either way
   */
  double force(double speed);
}
