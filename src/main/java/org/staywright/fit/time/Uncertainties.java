package org.staywright.fit.time;

import org.staywright.fit.job.Job;
import org.staywright.part.Part;

/**
 * How far what is bought, built and used strays from what was meant: half-widths that hold 95 of a
 * hundred, so that the normal distribution's σ is half of each. SI.
 *
 * @param force of the springs, N
 * @param friction of the springs, share of it
 * @param mass share of it
 * @param centre of the mass, each of its coordinates, m
 * @param mounts each of their coordinates, m
 * @param temperature K, cut off at the coldest and hottest of the job
 * @param age years around those of the service
 */
public record Uncertainties(
    double force,
    double friction,
    double mass,
    double centre,
    double mounts,
    double temperature,
    double age) {

  /** What strays. */
  public enum Source {
    FORCE,
    FRICTION,
    MASS,
    CENTRE_OF_MASS,
    MOUNTS,
    TEMPERATURE,
    AGE
  }

  /** Share of the friction: common practice, no source. */
  public static final double FRICTION_SHARE = 0.3;

  /** m: a tape measure's work. */
  public static final double CENTRE = 5e-3;

  /** m: common practice for drilled brackets, no source. */
  public static final double MOUNTS = 1e-3;

  /** Share of the years of service. */
  public static final double AGE_SHARE = 0.2;

  /** The part's tolerance, the job's temperatures and masses, and customary values for the rest. */
  public static Uncertainties usual(Job job, Part part) {
    Job.Conditions conditions = job.conditions();
    return new Uncertainties(
        part.forceTolerance(),
        FRICTION_SHARE,
        massShare(job),
        CENTRE,
        MOUNTS,
        (conditions.hottest() - conditions.coldest()) / 2,
        AGE_SHARE * conditions.years());
  }

  private static double massShare(Job job) {
    return job.mechanism().rigid().isPresent() ? job.mechanism().shares().heaviest() - 1 : 0;
  }

  /** With those given; NaN keeps what is there. */
  public Uncertainties or(Uncertainties given) {
    return new Uncertainties(
        or(given.force, force),
        or(given.friction, friction),
        or(given.mass, mass),
        or(given.centre, centre),
        or(given.mounts, mounts),
        or(given.temperature, temperature),
        or(given.age, age));
  }

  private static double or(double given, double usual) {
    return Double.isNaN(given) ? usual : given;
  }
}
