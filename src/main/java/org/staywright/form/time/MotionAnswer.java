package org.staywright.form.time;

import static org.staywright.unit.Unit.CELSIUS;

import org.staywright.mechanism.Mechanism;
import org.staywright.motion.Motion;

/** A motion as it is sent: travel and speed over time. */
public record MotionAnswer(
    double[] timeS,
    double[] travel,
    TravelUnit travelUnit,
    double[] speed,
    double[] gasTemperatureC,
    double endTimeS,
    double endSpeed,
    double stopEnergyJ,
    double peakMountLoadN,
    boolean choked,
    Motion.End endedAt) {

  public static MotionAnswer of(Mechanism mechanism, Motion motion) {
    TravelUnit unit = TravelUnit.of(mechanism);
    return new MotionAnswer(
        motion.time(),
        unit.of(motion.q()),
        unit,
        unit.of(motion.speed()),
        CELSIUS.of(motion.gasKelvin()),
        motion.endTime(),
        unit.of(motion.endSpeed()),
        motion.stopEnergy(),
        motion.peakLoad(),
        motion.choked(),
        motion.end());
  }
}
