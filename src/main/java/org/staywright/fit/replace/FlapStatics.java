package org.staywright.fit.replace;

/**
 * Moments of a flap about its hinge, were every reading right. Slopes are those of the line from
 * hinge to handle above level, rad.
 *
 * <p>Equilibrium of moments and the law of cosines (any text on engineering mechanics, e.g. J. L.
 * Meriam and L. G. Kraige, Statics, ch. 3).
 *
 * @param first slope of a reading
 * @param firstMoment of the weight there, N·m, positive where it closes
 * @param second slope of another reading
 * @param secondMoment likewise
 * @param frame from the hinge to the spring's mount on the frame, m
 * @param moving from the hinge to the mount on the flap, m
 * @param spread angle between these two, flap open, rad; NaN where no triangle has such sides
 * @param open slope, rad
 */
record FlapStatics(
    double first,
    double firstMoment,
    double second,
    double secondMoment,
    double frame,
    double moving,
    double spread,
    double open) {

  static FlapStatics of(FlapSurvey survey) {
    double arm = survey.arm().value();
    double frame = survey.frameMount().value();
    double moving = survey.movingMount().value();
    double apart = survey.centresOpen().value();
    double cosine = (frame * frame + moving * moving - apart * apart) / (2 * frame * moving);
    return new FlapStatics(
        survey.first().slope().value(),
        arm * survey.first().force().value(),
        survey.second().slope().value(),
        arm * survey.second().force().value(),
        frame,
        moving,
        Math.acos(cosine),
        survey.open().value());
  }

  /**
   * Moment of the weight, N·m, positive where it closes: m·g·(x_c cos φ − y_c sin φ), the one such
   * wave that goes through both readings.
   */
  double weight(double slope) {
    return (firstMoment * Math.sin(second - slope) + secondMoment * Math.sin(slope - first))
        / Math.sin(second - first);
  }

  /** Between the mounts, m. */
  double length(double slope) {
    return Math.sqrt(frame * frame + moving * moving - 2 * frame * moving * Math.cos(angle(slope)));
  }

  /** dL/dφ: lever of the spring about the hinge, m; below zero where it pulls the flap shut. */
  double lever(double slope) {
    return frame * moving * Math.sin(angle(slope)) / length(slope);
  }

  private double angle(double slope) {
    return spread - (open - slope);
  }

  /** What each spring must push so that none of the weight is left to the hand, N. */
  double balance(double slope, int springs) {
    return weight(slope) / (springs * lever(slope));
  }
}
