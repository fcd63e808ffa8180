package org.staywright.fit;

/**
 * What a part does in a job. SI; null where it does not apply.
 *
 * @param openingAngle end of the travel, rad or m
 * @param lengthClosed mount centre to mount centre, m
 * @param lengthOpen m
 * @param lengthMin over the travel, m
 * @param lengthMax over the travel, m
 * @param compressed shortest length of spring and fittings, m
 * @param extended longest length of spring and fittings, m
 * @param handOpenMax largest hand force opening slowly, nominal, N
 * @param handCloseMax largest hand force closing slowly, nominal, N
 * @param handRms root mean square of both over the travel, nominal, N
 * @param handOpenMaxWeak with the weakest spring, N
 * @param handCloseMaxStrong with the strongest spring, N
 * @param holdRatioOpen spring moment over gravity moment at the open end, weak
 * @param selfOpensFrom from here it rises by itself, nominal, rad or m
 * @param staysFrom from here it does not fall by itself, nominal, rad or m
 * @param closedHold moment that keeps it shut, nominal, N·m or N
 * @param closedHoldStrong the same with the strongest spring
 * @param peakPressure highest absolute gas pressure, fast and strong, Pa
 * @param peakMountLoad largest load on a mount, each spring, N
 * @param stopLoad pull on a mount when the spring ends the travel and the hand pulls on, N
 * @param bucklingFactor least buckling load over fast force
 * @param swing angle that the end fittings must give way to, rad
 * @param selfOpensFromWeak from here it rises by itself with the weakest spring, rad or m
 * @param staysPut least force at the hand that moves it where it is to stay put, nominal, N
 * @param latchPush push at the handle while shut, strongest spring, below zero where it holds
 *     itself shut, N
 * @param overCentre where a spring that presses it shut passes its dead centre, rad or m
 */
public record Figures(
    double openingAngle,
    double lengthClosed,
    double lengthOpen,
    double lengthMin,
    double lengthMax,
    double compressed,
    double extended,
    double handOpenMax,
    double handCloseMax,
    double handRms,
    double handOpenMaxWeak,
    double handCloseMaxStrong,
    Double holdRatioOpen,
    Double selfOpensFrom,
    Double staysFrom,
    double closedHold,
    double closedHoldStrong,
    double peakPressure,
    double peakMountLoad,
    double stopLoad,
    double bucklingFactor,
    double swing,
    Double selfOpensFromWeak,
    Double staysPut,
    double latchPush,
    Double overCentre)
    implements Outcome {

  @Override
  public double end() {
    return openingAngle;
  }

  @Override
  public double effort() {
    return handRms;
  }

  @Override
  public double margin(Job job) {
    return Requirement.margin(job, this);
  }

  public double compressedReserve() {
    return lengthMin - compressed;
  }

  public double extendedReserve() {
    return extended - lengthMax;
  }

  /** The hand force that the limit is held against. */
  public double handForce() {
    return Math.max(handOpenMaxWeak, handCloseMaxStrong);
  }
}
