package org.staywright.fit.replace;

/**
 * The old spring as none of the range: every size as likely as any other between a tenth and ten
 * times what was read, every word one of two. Our assumption, no source.
 */
final class Outside {

  /** How often a spring in the hand is not of the range, before anything is measured. */
  static final double PRIOR = 0.01;

  /** ln 100: a tenth to ten times. */
  private static final double SPAN = Math.log(100);

  private Outside() {}

  /** Logarithm of the likelihood of all that was measured. */
  static double log(Measurements old) {
    double log = 0;
    for (Reading reading : old.sizes().values()) {
      log += spread(reading);
    }
    log += old.ball() == null ? 0 : spread(old.ball());
    log += old.scale() == null ? 0 : spread(old.scale().force());
    Object[] words = {
      old.finish(), old.endDamped(), old.rodThread(), old.rodEnd(), old.tubeEnd(), old.family()
    };
    for (Object word : words) {
      log += word == null ? 0 : Math.log(0.5);
    }
    return log;
  }

  private static double spread(Reading reading) {
    return -Math.log(Math.max(reading.value(), reading.sigma()) * SPAN);
  }
}
