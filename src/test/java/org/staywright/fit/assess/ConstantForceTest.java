package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.mounts.Arrangement;
import org.staywright.fit.mounts.MountSearch;
import org.staywright.fit.mounts.Progress;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
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
import org.staywright.spring.GasSpring;

/**
 * A spring of constant force, as so much gas gives it, below the hinge of a level flap: balance in
 * closed form.
 *
 * <p>Moving mount at (p, 0), frame mount at (0, −h), flap opened by θ from level: L² = h² + p² +
 * 2hp sin θ by the law of cosines, lever dL/dθ = hp cos θ / L, gravity's moment mgc cos θ. Balance
 * where F·hp/L = mgc; derived here from moment equilibrium about the hinge.
 */
class ConstantForceTest {

  private static final double FORCE = 400;
  private static final double MASS = 10;
  private static final double CENTRE = 0.5;
  private static final double HANDLE = 1;
  private static final double MOVING = 0.3;
  private static final double LOWEST = 0.3;
  private static final double HIGHEST = 0.1;

  @Test
  void balancesAtOneAngle() {
    // Nearly no travel: one angle alone. F·hp/√(h² + p²) = mgc gives h = kp/√(p² − k²), k = mgc/F.
    double k = MASS * STANDARD_GRAVITY * CENTRE / FORCE;
    double exact = k * MOVING / Math.sqrt(MOVING * MOVING - k * k);
    Arrangement best = best(Math.toRadians(0.5));
    assertEquals(exact, -best.mounts().frame().y(), 0.02 * exact);
    assertEquals(0, best.fit().figures().orElseThrow().hand().rms(), 0.5);
  }

  @Test
  void balancesBestOverATravel() {
    double end = Math.toRadians(60);
    double least = Double.POSITIVE_INFINITY;
    double depth = 0;
    for (double h = HIGHEST; h <= LOWEST; h += 1e-5) {
      double rms = rms(h, end);
      if (rms < least) {
        least = rms;
        depth = h;
      }
    }
    Arrangement best = best(end);
    assertEquals(depth, -best.mounts().frame().y(), 0.02 * depth);
    assertEquals(least, best.fit().figures().orElseThrow().hand().rms(), 0.02 * least);
  }

  /** Of the hand force cos θ·(mgc − F·hp/L)/r over 61 angles. */
  private static double rms(double h, double end) {
    double sum = 0;
    for (int i = 0; i <= 60; i++) {
      double angle = end * i / 60;
      double length = Math.sqrt(h * h + MOVING * MOVING + 2 * h * MOVING * Math.sin(angle));
      double moment = MASS * STANDARD_GRAVITY * CENTRE - FORCE * h * MOVING / length;
      double hand = Math.cos(angle) * moment / HANDLE;
      sum += hand * hand;
    }
    return Math.sqrt(sum / 61);
  }

  private static Arrangement best(double end) {
    HingedFlap flap =
        new HingedFlap(
            new Masses(MASS, MASS, MASS),
            new Point(CENTRE, 0),
            new Point(HANDLE, 0),
            1,
            end,
            0,
            0,
            new Mounts(new Point(0, -0.2), new Point(MOVING, 0), 0, RodEnd.EITHER));
    Job plain = Samples.job(flap, Job.OpenStop.FLAP_STOP, RankBy.LEAST_EFFORT);
    Job job =
        new Job(
            plain.name(),
            flap,
            List.of(1),
            plain.rodEnd(),
            plain.tubeEnd(),
            new Job.Conditions(293.15, 293.15, 293.15, 0, 0),
            Requirements.of(1000, 0, 0, 0, Job.OpenStop.FLAP_STOP),
            plain.filters(),
            plain.rankBy(),
            20);
    Zone line = new Zone(0, 0, -LOWEST, -HIGHEST);
    Zone point = new Zone(MOVING, MOVING, 0, 0);
    Zones zones = new Zones(line, point, List.of(), 0, RodEnd.EITHER);
    return MountSearch.of(range(), job, zones, 1, Progress.UNSEEN).arrangements().get(0);
  }

  /** A cubic metre of gas behind a rod of 10 mm: the force stays. */
  private static Range range() {
    Offer offer = new Offer(null, 9, LocalDate.of(2026, 11, 20), 0);
    GasSpring spring = new GasSpring(10e-3, 40e-3, 35e-3, 0.35, 0.65, 0.28, FORCE, 0, 1, 1, 0);
    Part part =
        new Part(
            "CONST-1",
            null,
            Family.GAS_SPRING,
            Finish.ZINC,
            spring,
            0,
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
            0.3,
            10e-3,
            0,
            0.02,
            offer);
    return Range.of(1, List.of(part), List.of(socket));
  }
}
