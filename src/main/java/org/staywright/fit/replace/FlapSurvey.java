package org.staywright.fit.replace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import org.staywright.unit.Fault;

/**
 * What a tape, a level and a luggage scale tell of a flap whose springs are off. SI; slopes are
 * those of the line from hinge to handle above level, rad; the flap opens upwards.
 *
 * @param springs that carry it together
 * @param arm from the hinge to where the scale is hooked in
 * @param closed slope
 * @param open slope
 * @param first reading of the scale
 * @param second reading, at another slope
 * @param frameMount from the hinge to the spring's mount on the frame
 * @param movingMount from the hinge to the mount on the flap
 * @param centresOpen between the mounts, flap open
 * @param centresClosed between the mounts, flap closed; null where not measured
 * @param rises slope from which the flap rose by itself while its springs were good, null where
 *     nobody remembers
 */
public record FlapSurvey(
    int springs,
    Reading arm,
    Reading closed,
    Reading open,
    FlapReading first,
    FlapReading second,
    Reading frameMount,
    Reading movingMount,
    Reading centresOpen,
    @Nullable Reading centresClosed,
    @Nullable Reading rises) {

  private static final double LEAST_OPENING = Math.toRadians(10);

  /** Readings nearer to each other than this tell hardly more than one. */
  private static final double APART = Math.toRadians(15);

  /** A scale may carry a flap a little beyond where it rests. */
  private static final double BEYOND = Math.toRadians(3);

  /** Lengths may disagree by so much beyond their stated half-widths, m. */
  private static final double SLACK = 10e-3;

  /** Every reading off by chance, as its half-width has it. */
  FlapSurvey drawn(RandomGenerator random) {
    return new FlapSurvey(
        springs,
        arm.drawn(random),
        closed.drawn(random),
        open.drawn(random),
        first.drawn(random),
        second.drawn(random),
        frameMount.drawn(random),
        movingMount.drawn(random),
        centresOpen.drawn(random),
        centresClosed == null ? null : centresClosed.drawn(random),
        rises == null ? null : rises.drawn(random));
  }

  /**
   * What contradicts what, each at the field that is to be looked at first; none where all may be.
   */
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    if (open.value() - closed.value() < LEAST_OPENING) {
      faults.add(new Fault("openSlopeDeg", degrees(open), "≥ closedSlopeDeg + 10", "out-of-order"));
    } else {
      within("first/slopeDeg", first.slope()).ifPresent(faults::add);
      within("second/slopeDeg", second.slope()).ifPresent(faults::add);
      if (rises != null) {
        within("risesFromDeg", rises).ifPresent(faults::add);
      }
      if (Math.abs(first.slope().value() - second.slope().value()) < APART) {
        faults.add(new Fault("second/slopeDeg", null, "15…165°", "slopes-too-near"));
      }
    }
    triangle().ifPresent(faults::add);
    if (faults.isEmpty()) {
      closedLength().ifPresent(faults::add);
      balance().ifPresent(faults::add);
    }
    return faults;
  }

  private Optional<Fault> within(String field, Reading slope) {
    boolean in = slope.value() >= closed.value() - BEYOND && slope.value() <= open.value() + BEYOND;
    return in
        ? Optional.empty()
        : Optional.of(
            new Fault(field, degrees(slope), "closedSlopeDeg … openSlopeDeg", "out-of-order"));
  }

  /** Hinge and both mounts: no side is longer than the others together. */
  private Optional<Fault> triangle() {
    double doubt =
        frameMount.plusMinus() + movingMount.plusMinus() + centresOpen.plusMinus() + SLACK;
    double most = frameMount.value() + movingMount.value();
    double least = Math.abs(frameMount.value() - movingMount.value());
    if (centresOpen.value() > most + doubt) {
      return Optional.of(
          contradiction("centresOpenMm", centresOpen, "≤ frameMountMm + movingMountMm"));
    }
    return centresOpen.value() < least - doubt
        ? Optional.of(
            contradiction("centresOpenMm", centresOpen, "≥ |frameMountMm − movingMountMm|"))
        : Optional.empty();
  }

  /** Turned back by the opening angle, the open mounts must stand as they were measured closed. */
  private Optional<Fault> closedLength() {
    FlapStatics flap = FlapStatics.of(this);
    if (centresClosed == null || Double.isNaN(flap.spread())) {
      return Optional.empty();
    }
    double turning = open.plusMinus() + closed.plusMinus();
    double levers = Math.min(frameMount.value(), movingMount.value());
    double doubt =
        frameMount.plusMinus()
            + movingMount.plusMinus()
            + centresOpen.plusMinus()
            + centresClosed.plusMinus()
            + levers * turning
            + SLACK;
    double expected = flap.length(closed.value());
    boolean agrees = Math.abs(centresClosed.value() - expected) <= doubt;
    String bound = "≈ " + Math.round(1e3 * expected) + " ± " + Math.round(1e3 * doubt) + " mm";
    return agrees
        ? Optional.empty()
        : Optional.of(contradiction("centresClosedMm", centresClosed, bound));
  }

  private static Fault contradiction(String field, Reading length, String bound) {
    return new Fault(field, Math.round(1e4 * length.value()) / 10.0, bound, "contradicts");
  }

  private static double degrees(Reading slope) {
    return Math.round(10 * Math.toDegrees(slope.value())) / 10.0;
  }

  /** Somewhere the springs must have something to carry. */
  private Optional<Fault> balance() {
    FlapStatics flap = FlapStatics.of(this);
    if (rises != null) {
      boolean carries = flap.weight(rises.value()) > 0 && !(flap.lever(rises.value()) <= 0);
      return carries
          ? Optional.empty()
          : Optional.of(
              new Fault("risesFromDeg", null, "closedSlopeDeg … openSlopeDeg", "nothing-to-carry"));
    }
    return flap.weight(open.value()) > 0
        ? Optional.empty()
        : Optional.of(new Fault("risesFromDeg", null, "≥ closedSlopeDeg", "gravity-keeps-open"));
  }
}
