package org.staywright.motion;

/**
 * How a mechanism moved after it was let go. The arrays are shared and only read.
 *
 * @param time evenly spaced, s
 * @param q rad or m
 * @param speed rad/s or m/s, above zero where it opens
 * @param gasKelvin temperature of the gas, K
 * @param end what ended it
 * @param stopEnergy kinetic energy when it met a stop, J; 0 without one
 * @param peakLoad largest force of one spring on its mounts, damping and friction counted in, N
 * @param hottest temperature of the gas, K
 * @param choked whether the orifice came to the speed of sound, which bounds the speed
 * @param exhausted whether it was given up for the work it took rather than for its time
 * @param energy its accounts
 */
public record Motion(
    double[] time,
    double[] q,
    double[] speed,
    double[] gasKelvin,
    End end,
    double stopEnergy,
    double peakLoad,
    double hottest,
    boolean choked,
    boolean exhausted,
    Energy energy) {

  /** Points of the curves. */
  public static final int SAMPLES = 121;

  /** What ended a motion. */
  public enum End {
    STOP,
    REST,
    TIME
  }

  /** Lets a scene go. */
  public static Motion of(MotionSetup scene) {
    return new Run(scene).motion();
  }

  public int last() {
    return time.length - 1;
  }

  public double endTime() {
    return time[last()];
  }

  /** Speed at the end, just before the stop, rad/s or m/s. */
  public double endSpeed() {
    return speed[last()];
  }

  public double endQ() {
    return q[last()];
  }

  /** Whether it went anywhere. */
  public boolean moved() {
    return endTime() > 0;
  }

  /** Greatest size of the speed, rad/s or m/s. */
  public double greatestSpeed() {
    double most = 0;
    for (double value : speed) {
      most = Math.max(most, Math.abs(value));
    }
    return most;
  }
}
