package org.staywright.caution.fit;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.staywright.caution.Caution;
import org.staywright.fit.RandomRange;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.spring.Spring;

/** A fit with a few figures of its own; the others call for nothing. */
public final class Trial {

  public static final Part PART = RandomRange.part(new Random(1));

  public Part part = PART;
  public int count = 1;
  public RodEnd rod = RodEnd.FRAME;
  public double lengthOpen;
  public double extended;
  public double heldOpen = 50;
  public double heldWithOneFailed = -1;
  public double handWithOneFailed;
  double closedHold = 30;
  public double latchPush = -20;
  public double shuts = -1;
  public double peakPressure = 1e6;
  double peakMountLoad = 700;
  public double bucklingFactor = 4;
  public double swing;
  public boolean undampedStop;

  public List<Caution> of(Job job) {
    return Cautions.of(job, fit(job));
  }

  public Fit fit(Job job) {
    Extreme none = new Extreme(0, 0, Corner.ALL.get(0));
    double end = job.mechanism().end();
    Figures figures =
        new Figures(
            new Figures.Lengths(0, end, 0, lengthOpen, 0, lengthOpen, 0, extended),
            new Figures.Hand(0, 0, 0, none, none, null, null, null, null),
            new Figures.Hold(
                null, extreme(heldOpen), 0, extreme(closedHold), latchPush, shuts, null),
            new Figures.Landing(null, undampedStop),
            new Figures.Strength(peakPressure, peakMountLoad, 0, bucklingFactor, swing),
            new Figures.OneFailed(heldWithOneFailed, handWithOneFailed),
            new Figures.Hanging(0, 0.0));
    return new Fit(part, count, null, null, rod, figures, List.of(), null, 0, 0);
  }

  private static Extreme extreme(double value) {
    return new Extreme(value, 0, Corner.ALL.get(0));
  }

  /** A gas spring whose last 30 mm are damped by oil. */
  public static Part damped() {
    return part(PART.family(), PART.spring(), new Part.Damping(30e-3, 0.6e-3, 2e-3, 4, 3));
  }

  public static Part part(Family family, Spring spring) {
    return part(family, spring, PART.damping());
  }

  private static Part part(Family family, Spring spring, Part.Damping damping) {
    boolean gas = family.hasGas();
    return new Part(
        "T-0001",
        null,
        family,
        Finish.ZINC,
        spring,
        15,
        new Part.Ends("M8", "M8"),
        damping,
        new Part.Limits(243.15, 353.15, gas ? 400e5 : Double.POSITIVE_INFINITY),
        gas ? new Part.Wear(0.02, 1.5e-6) : Part.Wear.NONE,
        0.3,
        gas ? Mounting.ROD_DOWN : Mounting.ANY,
        new Offer(null, 1, LocalDate.of(2026, 11, 20), 5),
        List.of());
  }

  public static boolean has(List<Caution> cautions, String code) {
    return cautions.stream().anyMatch(caution -> caution.code().equals(code));
  }

  public static Caution named(List<Caution> cautions, String code) {
    return cautions.stream()
        .filter(caution -> caution.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(code + " not in " + cautions));
  }

  /** A figure of a caution, SI. */
  public static double figure(List<Caution> cautions, String code, int index) {
    return named(cautions, code).figures().get(index).si();
  }
}
