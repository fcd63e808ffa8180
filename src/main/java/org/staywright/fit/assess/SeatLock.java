package org.staywright.fit.assess;

import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.part.Part;
import org.staywright.spring.ChargedSpring;
import org.staywright.spring.LockedSpring;
import org.staywright.spring.LockingSpring;

/**
 * A column under a seat, as it may turn out, and how far it gives where it is locked.
 *
 * @param column its dimensions
 * @param specimen with the gas that is in it
 * @param kelvin of all there is
 */
record SeatLock(LockingSpring column, ChargedSpring specimen, double kelvin) {

  static SeatLock of(Job job, Part part, SpringState state) {
    return new SeatLock(
        (LockingSpring) part.spring(),
        (ChargedSpring) state.law(part, job.conditions()),
        state.kelvin(job.conditions()));
  }

  LockedSpring at(double compression) {
    return new LockedSpring(column, specimen.gasMass(), compression, kelvin);
  }

  /** Before heat has passed, under all that weighs on the column, N. */
  double givesAtOnce(double compression, double weight) {
    return at(compression).fastDeflection(weight - open(compression));
  }

  /** When its gas is as warm as before. */
  double givesInTheEnd(double compression, double weight) {
    return at(compression).slowDeflection(weight - open(compression));
  }

  private double open(double compression) {
    return specimen.force(compression, kelvin);
  }
}
