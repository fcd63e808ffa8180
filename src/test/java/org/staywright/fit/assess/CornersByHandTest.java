package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;

/**
 * Two flaps that gravity helps to open, worked by hand from the statics of a body on a hinge
 * (moments of forces on their levers, any text, e.g. J. L. Meriam and L. G. Kraige, Statics, ch.
 * 3): without friction, at one temperature, with a spring whose force hardly changes over its
 * stroke. Which corner is the worst differs from figure to figure.
 */
class CornersByHandTest {

  private static final double G = 9.80665;
  private static final double CLOSE = 2e-3;

  /** A cubic metre of gas behind the rod: the force stays within a ten-thousandth. */
  private static Fit fit(HingedFlap flap, double force, double tolerance, double[] lengths) {
    Offer offer = new Offer(null, 9, LocalDate.of(2026, 11, 20), 0);
    double stroke = lengths[1] - lengths[0];
    Part part =
        new Part(
            "CONST-1",
            null,
            Family.GAS_SPRING,
            Finish.ZINC,
            new GasSpring(
                new Cylinder(10e-3, 40e-3, 35e-3, stroke, lengths[1], lengths[0], 0, 1, 1, 0),
                force),
            tolerance,
            new Part.Ends("M8", "M8"),
            new Part.Damping(0, 1e-3, 2e-3, 4, 3),
            new Part.Limits(243.15, 353.15, 400e5),
            new Part.Wear(0, 0),
            1,
            Mounting.ROD_DOWN,
            offer,
            List.of());
    Fitting socket =
        new Fitting(
            "SOCKET-8",
            null,
            FittingType.BALL_SOCKET,
            Finish.ZINC,
            "M8",
            10e-3,
            5000,
            Math.toRadians(15),
            8e-3,
            0,
            0.02,
            offer);
    Job plain = Samples.job(flap, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    Job job =
        new Job(
            plain.name(),
            flap,
            List.of(1),
            plain.rodEnd(),
            plain.tubeEnd(),
            new Job.Conditions(293.15, 293.15, 293.15, 0, 0),
            plain.requirements(),
            plain.filters(),
            plain.rankBy(),
            20);
    Range range = Range.of(1, List.of(part), List.of(socket));
    return Assessment.of(job, range, range.part(0), 1).fit();
  }

  private static HingedFlap flap(
      double mass, Point centre, Point handle, int sense, double degrees, Mounts mounts) {
    return new HingedFlap(
        new Masses(mass, 1.1 * mass, 0.9 * mass),
        centre,
        handle,
        sense,
        Math.toRadians(degrees),
        0,
        0,
        mounts);
  }

  /**
   * A flap of 10 kg ± 10 % stands upright on its hinge and is let down by 60°, held back by a
   * spring of 50 ± 5 N from the moving mount 0.3 m up the flap to a frame mount 0.4 m in front of
   * the hinge. Handle at 0.5 m, centre at 0.25 m.
   *
   * <p>Lever of the spring: L² = 0.3² + 0.4² − 2·0.3·0.4·sin θ, dL/dθ = −0.12·cos θ/L. Shut: L =
   * 0.5 m, dL/dθ = −0.24 m. At 60°: L = √(0.25 − 0.24·0.86603) = 0.20531 m, dL/dθ = −0.06/0.20531 =
   * −0.29224 m. Gravity opens with m·g·0.25·sin θ: nothing shut, at 60° 11 kg 23.355 N·m, 9 kg
   * 19.108 N·m.
   *
   * <ul>
   *   <li>Opening is hardest shut, against the strong spring: 55·0.24/0.5 = 26.4 N.
   *   <li>Closing is hardest open, with the weak spring and the heavy flap: (23.355 −
   *       45·0.29224)/0.5 = 20.41 N.
   *   <li>Open, the strong spring closes with 55·0.29224 = 16.073 N·m against the light flap's
   *       19.108 N·m: ratio 1.1888, held by 3.035/0.5 = 6.07 N.
   *   <li>Shut, the weak spring holds with 45·0.24 = 10.8 N·m.
   *   <li>Without a spring: it falls open, at most 23.355/0.5 = 46.71 N to lift it up again, and
   *       reaches its stop with 11·9.80665·0.25·(1 − cos 60°) = 13.484 J.
   * </ul>
   */
  @Test
  void aFlapThatIsLetDown() {
    Mounts mounts = new Mounts(new Point(0.4, 0), new Point(0, 0.3), 0, RodEnd.EITHER);
    HingedFlap flap = flap(10, new Point(0, 0.25), new Point(0, 0.5), -1, 60, mounts);
    Fit fit = fit(flap, 50, 5, new double[] {0.15, 0.52});
    Figures.Hand hand = fit.figures().orElseThrow().hand();
    assertEquals(26.4, hand.openWorst().value(), CLOSE);
    assertEquals(0, hand.openWorst().travel());
    assertEquals(SpringState.STRONG, hand.openWorst().corner().spring());
    assertEquals((23.3545 - 45 * 0.292243) / 0.5, hand.closeWorst().value(), CLOSE);
    assertEquals(60, Math.toDegrees(hand.closeWorst().travel()), 1e-9);
    assertEquals(new Corner(SpringState.WEAK, LoadState.HEAVY), hand.closeWorst().corner());
    Figures.Hold hold = fit.figures().orElseThrow().hold();
    assertEquals(19.1082 / (55 * 0.292243), hold.ratio().value(), CLOSE);
    assertEquals(new Corner(SpringState.STRONG, LoadState.LIGHT), hold.ratio().corner());
    assertEquals((19.1082 - 55 * 0.292243) / 0.5, hold.open().value(), CLOSE);
    assertEquals(45 * 0.24, hold.closedLeast().value(), CLOSE);
    // The strong spring: 55 N over π/4·(10 mm)² above the air.
    Figures.Strength strength = fit.figures().orElseThrow().strength();
    assertEquals(55, strength.peakMountLoad(), 2e-2);
    assertEquals(101_325 + 55 / (Math.PI / 4 * 1e-4), strength.peakPressure(), 500);
    assertEquals(0, strength.stopLoad());
    assertEquals(0, strength.swing());
    assertEquals(-45 * 0.24 / 0.5, hold.latchPush(), 2 * CLOSE);
    Bare bare = new Paths(Samples.job(flap, Job.OpenStop.FLAP_STOP, RankBy.BALANCED)).bare();
    assertEquals(23.3545 / 0.5, bare.hand().closeWorst().value(), CLOSE);
    assertEquals(11 * G * 0.25 * 0.5, bare.drop(), 5e-3);
    assertTrue(bare.springNeeded());
  }

  /**
   * A lid of 20 kg ± 10 % that opens past the vertical, to 100°, on a spring of 400 ± 20 N from 0.2
   * m out on the lid to 0.3 m plumb below the hinge. Centre at 0.4 m, handle at 0.8 m.
   *
   * <p>L² = 0.3² + 0.2² + 2·0.3·0.2·sin θ, dL/dθ = 0.06·cos θ/L. At 100°: L = √(0.13 +
   * 0.12·0.98481) = 0.49818 m, dL/dθ = −0.06·0.17365/0.49818 = −0.020914 m: past its dead centre
   * the spring closes. Gravity opens with m·g·0.4·0.17365: 22 kg 14.986 N·m, 18 kg 12.261 N·m.
   *
   * <ul>
   *   <li>Worst for the hold are the strong spring and the light lid: 12.261/(420·0.020914) =
   *       1.3959, held by (12.261 − 8.784)/0.8 = 4.347 N.
   *   <li>Shut (θ = 0): dL/dθ = 0.06/√0.13 = 0.16641 m; the strong spring opens with 69.89 N·m, the
   *       light lid closes with 18·9.80665·0.4 = 70.61 N·m: 0.72 N·m hold it shut at worst.
   *   <li>One spring failed leaves gravity: 12.261/0.8 = 15.33 N hold it open.
   * </ul>
   */
  @Test
  void aLidPastTheVertical() {
    Mounts mounts = new Mounts(new Point(0, -0.3), new Point(0.2, 0), 0, RodEnd.EITHER);
    HingedFlap flap = flap(20, new Point(0.4, 0), new Point(0.8, 0), 1, 100, mounts);
    Fit fit = fit(flap, 400, 20, new double[] {0.3, 0.5});
    Figures.Hold hold = fit.figures().orElseThrow().hold();
    double light = 18 * G * 0.4 * 0.173648;
    assertEquals(light / (420 * 0.0209137), hold.ratio().value(), CLOSE);
    assertEquals(new Corner(SpringState.STRONG, LoadState.LIGHT), hold.ratio().corner());
    assertEquals((light - 420 * 0.0209137) / 0.8, hold.open().value(), CLOSE);
    assertEquals(18 * G * 0.4 - 420 * 0.06 / Math.sqrt(0.13), hold.closedLeast().value(), 0.02);
    assertEquals(light / 0.8, fit.figures().orElseThrow().oneFailed().hold(), CLOSE);
  }

  /** The same lid on a spring that still opens at 100°: then nothing closes in any corner. */
  @Test
  void whereNothingClosesThereIsNoRatioButNewtons() {
    Mounts mounts = new Mounts(new Point(0.1, -0.3), new Point(0.2, 0), 0, RodEnd.EITHER);
    HingedFlap flap = flap(20, new Point(0.4, 0), new Point(0.8, 0), 1, 100, mounts);
    Fit fit = fit(flap, 200, 10, new double[] {0.28, 0.52});
    assertNull(fit.figures().orElseThrow().hold().ratio());
    double light = 18 * G * 0.4 * 0.173648;
    double lever = flap.lever(Math.toRadians(100));
    assertTrue(lever > 0);
    assertEquals(
        (light + 190 * lever) / 0.8, fit.figures().orElseThrow().hold().open().value(), CLOSE);
  }
}
