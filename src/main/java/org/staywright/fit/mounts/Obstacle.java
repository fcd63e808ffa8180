package org.staywright.fit.mounts;

import org.staywright.part.Coded;

/**
 * Why a search for mounts found no fit.
 *
 * @param code what stands in the way
 * @param needed length or change of length that the best mounts tried ask for, m; NaN without
 * @param has what the part that comes nearest offers, m; NaN without
 */
public record Obstacle(Code code, double needed, double has) {

  /** What can stand in the way. */
  public enum Code implements Coded {
    /** No part passes the filters, the temperatures, the end fittings and the ageing. */
    NO_PART,
    /** Keep-outs cover the zones, or the mounts can only coincide. */
    NO_PLACE,
    /** The mounts are nearer to each other than the shortest spring allows. */
    MOUNTS_TOO_NEAR,
    /** The mounts are farther apart than the longest spring reaches. */
    MOUNTS_TOO_FAR,
    /** The length changes by more than any stroke at that length. */
    TOO_MUCH_STROKE,
    /** Parts span, but each misses a requirement; the nearest are listed. */
    REQUIREMENTS,
    /** Parts span, but pressure, buckling, fittings or swing rule them out. */
    STRENGTH,
    /** The search was stopped before it came to anything that fits. */
    STOPPED
  }

  static Obstacle of(Code code) {
    return new Obstacle(code, Double.NaN, Double.NaN);
  }
}
