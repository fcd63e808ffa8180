package org.staywright.fit.ideal;

import static org.staywright.unit.Unit.MILLIMETRE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Path;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.Shortfall;
import org.staywright.fit.mounts.Objective;
import org.staywright.mechanism.Travel;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;

/**
 * A gas spring made to measure for a job in some number: lengths from the mounts, force and gas
 * volume sought by the hand force that they leave. Rod, tube, friction, tolerance, wear and limits
 * are those of the nearest stock part, so that it could be built as those are.
 *
 * @param count of springs
 * @param extended length with end fittings, m
 * @param fit assessed as any part; null where none has room
 * @param value what it strives for, the less the better
 * @param shortfall of room where no size has enough, else null
 */
record CustomSpring(
    int count, double extended, @Nullable Fit fit, double value, @Nullable Shortfall shortfall) {

  /** No shorter strokes are taken up. */
  private static final double LEAST_STROKE = 20e-3;

  /** A reserve that is kept exactly must not be missed by rounding, m. */
  private static final double ROUNDING = 1e-10;

  /** The search ends where its steps are this share of where it began. */
  private static final double FINE = 0.02;

  private static final double FIRST_STEP = 0.2;

  /** No weaker than so many times its tolerance. */
  private static final double LEAST_FORCES = 2;

  /** Where the search may begin, times the force that balances. */
  private static final double[] STARTS = {0.5, 0.7, 0.85, 1.15, 1.3, 1.6, 2, 3};

  private static final int MOST_STEPS = 60;

  static CustomSpring of(Job job, Range range, int count) {
    Path path = new Paths(job).of(job.mechanism().length(job.mechanism().end()));
    Travel whole = path.travel();
    Requirements asked = job.requirements();
    boolean stops = asked.openStop() == Job.OpenStop.SPRING_STOP;
    double extended =
        stops ? whole.length()[whole.last()] : whole.longest() + asked.extendedReserve() + ROUNDING;
    double compressed = whole.shortest() - asked.compressedReserve() - ROUNDING;
    if (extended - compressed < LEAST_STROKE) {
      extended = stops ? extended : compressed + LEAST_STROKE;
      compressed = extended - LEAST_STROKE;
    }
    double balanced = Balance.of(path, count, Ideal.STEEPEST).longForce();
    @Nullable CustomSpring best = null;
    @Nullable Shortfall tightest = null;
    for (Part like : sizes(range, extended - compressed, balanced)) {
      Optional<Bench> bench = Bench.of(job, range, like, count, compressed, extended);
      if (bench.isEmpty()) {
        continue;
      }
      double missing = bench.get().missing();
      if (missing > 0) {
        Shortfall shortfall = new Shortfall(compressed + missing, compressed, MILLIMETRE);
        tightest =
            tightest == null || shortfall.needed() < tightest.needed() ? shortfall : tightest;
        continue;
      }
      CustomSpring made = bench.get().sought(balanced);
      if (made.fit != null && (best == null || made.value < best.value)) {
        best = made;
      }
    }
    return best != null
        ? best
        : new CustomSpring(count, extended, null, Double.MAX_VALUE, tightest);
  }

  /** Of each rod diameter the part that is most like what is wanted. */
  private static List<Part> sizes(Range range, double stroke, double force) {
    Map<Double, Part> nearest = new TreeMap<>();
    Comparator<Part> unlike =
        Comparator.comparingDouble(
            part ->
                Math.abs(Math.log(part.spring().stroke() / stroke))
                    + Math.abs(Math.log(part.spring().force() / Math.max(1, force))));
    IntStream.range(0, range.size())
        .mapToObj(range::part)
        .filter(part -> part.family() == Family.GAS_SPRING)
        .filter(part -> part.spring() instanceof GasSpring)
        .forEach(
            part ->
                nearest.merge(
                    part.spring().rodDiameter(),
                    part,
                    (one, other) -> unlike.compare(one, other) <= 0 ? one : other));
    return new ArrayList<>(nearest.values());
  }

  /** One size, with what is fixed of its springs. */
  private record Bench(
      Job job,
      Range range,
      Part like,
      int count,
      double extended,
      double fittings,
      double stroke,
      double spare,
      double leastGas,
      double mostGas,
      Objective aim) {

    /** Empty where no end fitting of the wish takes its threads. */
    static Optional<Bench> of(
        Job job, Range range, Part like, int count, double compressed, double extended) {
      List<Fitting> rods = FittingChoice.of(range.fittings(), job.rodEnd(), like.ends().rod());
      List<Fitting> tubes = FittingChoice.of(range.fittings(), job.tubeEnd(), like.ends().tube());
      if (rods.isEmpty() || tubes.isEmpty()) {
        return Optional.empty();
      }
      double fittings = rods.get(0).lengthToCentre() + tubes.get(0).lengthToCentre();
      GasSpring spring = (GasSpring) like.spring();
      double stroke = extended - compressed;
      // Whatever is not stroke, piston, guide and seal can be room for gas.
      double spare = compressed - fittings - stroke - (spring.compressedLength() - spring.stroke());
      double behind =
          (spring.cylinder().gasVolume() + spring.cylinder().oilVolume())
                  / spring.cylinder().boreArea()
              - spring.stroke();
      double most =
          spring.cylinder().boreArea() * (stroke + behind + spare) - spring.cylinder().oilVolume();
      // Boyle: the rod may take so much of the gas until the force has risen by the steepest.
      double least = spring.cylinder().rodArea() * stroke / (1 - 1 / Ideal.STEEPEST);
      return Optional.of(
          new Bench(
              job,
              range,
              like,
              count,
              extended,
              fittings,
              stroke,
              spare,
              least,
              most,
              new Objective(job, Criteria.of(job))));
    }

    /** Length that lacks for a spring of this size, zero or less where there is room, m. */
    double missing() {
      double gas = (leastGas - mostGas) / ((GasSpring) like.spring()).cylinder().boreArea();
      return Math.max(-spare, gas);
    }

    /** Steps along force and gas volume, halved wherever none helps. */
    CustomSpring sought(double balanced) {
      double least = LEAST_FORCES * like.forceTolerance();
      double force = Math.max(least, balanced);
      double gas = 1;
      CustomSpring best = made(force, gas);
      double start = force;
      for (double factor : STARTS) {
        CustomSpring tried = made(Math.max(least, factor * start), gas);
        if (tried.value < best.value) {
          best = tried;
          force = Math.max(least, factor * start);
        }
      }
      double step = FIRST_STEP;
      for (int i = 0; i < MOST_STEPS && step > FINE * FIRST_STEP; i++) {
        double[][] around = {
          {force * (1 + step), gas},
          {Math.max(least, force / (1 + step)), gas},
          {force, Math.min(1, gas + 2 * step)},
          {force, Math.max(0, gas - 2 * step)}
        };
        boolean better = false;
        for (double[] at : around) {
          CustomSpring tried = made(at[0], at[1]);
          if (tried.value < best.value) {
            best = tried;
            force = at[0];
            gas = at[1];
            better = true;
          }
        }
        step = better ? step : step / 2;
      }
      return best;
    }

    /**
     * @param force F1, N
     * @param gas 0 for the least volume, 1 for the most
     */
    private CustomSpring made(double force, double gas) {
      Part part = part(force, leastGas + gas * (mostGas - leastGas));
      Assessment judged = Assessment.of(job, range, part, count);
      double value = Double.MAX_VALUE;
      if (judged.fit() != null) {
        // Whatever keeps the requirements comes before whatever misses one.
        value = aim.sloping(judged.fit()) + (judged.fit().fits() ? 0 : Objective.MISSED);
      }
      return new CustomSpring(count, extended, judged.fit(), value, null);
    }

    private Part part(double force, double gasVolume) {
      GasSpring alike = (GasSpring) like.spring();
      Cylinder size = alike.cylinder();
      double length = extended - fittings;
      Cylinder cylinder =
          new Cylinder(
              size.rodDiameter(),
              size.tubeDiameter(),
              size.boreDiameter(),
              stroke,
              length,
              length - stroke,
              size.friction(),
              size.coldFrictionFactor(),
              gasVolume,
              size.oilVolume());
      return new Part(
          "",
          null,
          Family.GAS_SPRING,
          like.finish(),
          new GasSpring(cylinder, force),
          like.forceTolerance() * Math.max(1, force / alike.force()),
          like.ends(),
          like.damping(),
          like.limits(),
          like.wear(),
          like.mass(),
          like.mounting(),
          new Offer(null, 0, null, 0),
          List.of());
    }
  }
}
