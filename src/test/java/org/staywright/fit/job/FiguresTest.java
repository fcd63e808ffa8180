package org.staywright.fit.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.fit.RandomRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Figuring;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.rank.PeakBound;
import org.staywright.fit.rank.Ranking;
import org.staywright.gas.Isentrope;
import org.staywright.gas.Isotherm;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.ChargedSpring;
import org.staywright.unit.Unit;

class FiguresTest {

  private static final Range RANGE = RandomRange.of(new Random(7), 3000);

  private static Fit someFit(Job job) {
    Ranking ranking = Ranking.of(RANGE, job);
    assertTrue(ranking.fitsTotal() + ranking.nearTotal() > 0, "no part to test with");
    return ranking.fits().isEmpty() ? ranking.near().get(0) : ranking.fits().get(0);
  }

  private static Job lid(HingedFlap flap, Job.OpenStop stop) {
    return Samples.job(flap, stop, RankBy.BALANCED);
  }

  private static HingedFlap flap(double openDeg, double tiltDeg, Mounts mounts) {
    return new HingedFlap(
        new Masses(18, 18.9, 17.1),
        new Point(0.41, 0.015),
        new Point(0.8, 0),
        1,
        Math.toRadians(openDeg),
        Math.toRadians(tiltDeg),
        0.5,
        mounts);
  }

  private static Mounts mounts(double offset) {
    return new Mounts(new Point(0.015, -0.065), new Point(0.36, -0.011), offset, RodEnd.EITHER);
  }

  @Test
  void constancyIsThatOfTheLengthsThatAreUsed() {
    Job job = Samples.lid();
    Fit fit = someFit(job);
    ChargedSpring law = (ChargedSpring) fit.part().spring().law();
    double extended = fit.figures().orElseThrow().lengths().extended();
    double least = law.force(extended - fit.figures().orElseThrow().lengths().max(), 293.15);
    double greatest = law.force(extended - fit.figures().orElseThrow().lengths().min(), 293.15);
    assertEquals(least / greatest, fit.constancy(), 1e-12);
    assertTrue(fit.constancy() < 1);
  }

  /**
   * The hand's work opening slowly is what mass, gas, atmosphere and friction take: the gas's share
   * from its free energy u − T·s (Span et al. 2000), not from the forces under test.
   */
  @Test
  void handWorkClosesTheEnergyBalanceOfTheWholeTravel() {
    Job job = Samples.lid();
    Fit fit = someFit(job);
    FitCurve curve = FitCurve.of(job, fit);
    Travel travel = curve.travel();
    double hand = integral(curve.nominal().open(), travel.q()) * travel.hand();

    HingedFlap flap = (HingedFlap) job.mechanism();
    double end = travel.q()[travel.last()];
    double lifted =
        flap.masses().nominal()
            * Unit.STANDARD_GRAVITY
            * (flap.centreOfMass().turned(end).y() - flap.centreOfMass().y());
    ChargedSpring spring = fit.part().spring().asGasSpring().orElseThrow().charged();
    double kelvin = job.conditions().nominal();
    double before = fit.figures().orElseThrow().lengths().extended() - travel.length()[0];
    double after =
        fit.figures().orElseThrow().lengths().extended() - travel.length()[travel.last()];
    double gas = freeEnergy(spring, after, kelvin) - freeEnergy(spring, before, kelvin);
    double volume =
        spring.spring().gasVolume(after, kelvin) - spring.spring().gasVolume(before, kelvin);
    double path = 0;
    for (int i = 1; i < travel.q().length; i++) {
      path += Math.abs(travel.length()[i] - travel.length()[i - 1]);
    }
    double friction =
        fit.count() * spring.spring().friction(kelvin) * path + travel.friction() * end;
    double taken = lifted + fit.count() * (gas + Unit.ATMOSPHERE * volume) + friction;
    // 61 samples and the trapezoidal rule: 0.2 % of the energy lifted.
    assertEquals(taken, hand, 0.002 * lifted);
  }

  private static double freeEnergy(ChargedSpring spring, double compression, double kelvin) {
    Isotherm.State state = Isotherm.at(kelvin).state(spring.density(compression, kelvin));
    return spring.gasMass() * (state.energy() - kelvin * state.entropy());
  }

  private static double integral(double[] value, double[] at) {
    double sum = 0;
    for (int i = 1; i < at.length; i++) {
      sum += (value[i] + value[i - 1]) / 2 * (at[i] - at[i - 1]);
    }
    return sum;
  }

  @Test
  void theCornersBracketTheNominalCurveBothWays() {
    Job job = Samples.lid();
    FitCurve curve = FitCurve.of(job, someFit(job));
    FitCurve.Hand nominal = curve.nominal();
    for (int i = 0; i < nominal.open().length; i++) {
      assertTrue(curve.openMost()[i] > nominal.open()[i]);
      assertTrue(nominal.open()[i] > curve.openLeast()[i]);
      assertTrue(curve.closeMost()[i] > nominal.close()[i]);
      assertTrue(nominal.close()[i] > curve.closeLeast()[i]);
    }
  }

  /** Past the vertical, and the mass on its far side in every corner. */
  @Test
  void theHoldRatioIsLeftOutWhereNothingClosesInAnyCorner() {
    assertNotNull(
        someFit(lid(flap(80, 0, mounts(0)), Job.OpenStop.FLAP_STOP))
            .figures()
            .orElseThrow()
            .hold()
            .ratio());
    assertNull(
        someFit(lid(flap(95, 0, mounts(0)), Job.OpenStop.FLAP_STOP))
            .figures()
            .orElseThrow()
            .hold()
            .ratio());
  }

  @Test
  void springStopEndsTheTravelWhereTheSpringIsFullyExtended() {
    Job job = lid(flap(80, 0, mounts(0)), Job.OpenStop.SPRING_STOP);
    for (Fit fit : Ranking.of(RANGE, job).fits()) {
      Figures figures = fit.figures().orElseThrow();
      assertEquals(figures.lengths().extended(), figures.lengths().open(), 1e-9);
      assertEquals(80, Math.toDegrees(figures.end()), 5);
      assertTrue(figures.strength().stopLoad() >= 0);
    }
  }

  /**
   * Statics of the stop by hand: what springs and over-centre weight bring beyond the friction of
   * the hinge, over the lever, shared by two.
   */
  @Test
  void stopLoadIsWhatIsLeftOfSpringsAndWeightOverTheLever() {
    Job job = lid(flap(90, -10, mounts(0)), Job.OpenStop.SPRING_STOP);
    Travel travel = job.mechanism().travel(job.mechanism().end());
    // Open at 90° and tilted by −10°: the centre of mass stands at (−15, 410) mm.
    double arm = -0.015 * Math.cos(Math.toRadians(10)) + 0.41 * Math.sin(Math.toRadians(10));
    double weight = -arm * Unit.STANDARD_GRAVITY;
    double heaviest = Math.max(18.9 * weight, 17.1 * weight);
    double lever = Math.abs(travel.lever()[travel.last()]);
    double expected = Math.max(0, 90 + heaviest - 0.5) / (2 * lever);
    assertEquals(expected, Figuring.stopLoad(job, travel, 2, 70, 90), 1e-6 * 400);
  }

  @Test
  void mountsFarApartAcrossTheSideViewSwingTheFittingsTooFar() {
    Ranking straight = Ranking.of(RANGE, lid(flap(80, 0, mounts(0)), Job.OpenStop.FLAP_STOP));
    Ranking askew = Ranking.of(RANGE, lid(flap(80, 0, mounts(0.15)), Job.OpenStop.FLAP_STOP));
    assertEquals(0, straight.rejected().get(Rejection.SWING));
    assertTrue(askew.rejected().get(Rejection.SWING) > 0);
    assertEquals(0, askew.fitsTotal());
  }

  @Test
  void eitherEndPutsTheRodDownWhenClosed() {
    assertEquals(
        RodEnd.FRAME, someFit(lid(flap(80, 0, mounts(0)), Job.OpenStop.FLAP_STOP)).rodEndAt());
  }

  /** The bound that spares the exact fast stroke must never lie below it. */
  @Test
  void peakBoundIsNeverBelowTheFastStroke() {
    for (double celsius : new double[] {-40, 20, 80}) {
      Isotherm isotherm = Isotherm.at(celsius + 273.15);
      for (double start = 5; start < PeakBound.DENSEST / 1.8; start *= 1.15) {
        for (double ratio = 1.02; ratio < 1.8; ratio += 0.06) {
          double end = start * ratio;
          double kappa = isotherm.state(end).isentropicExponent();
          double bound = isotherm.pressure(start) * Math.pow(ratio, kappa);
          double exact = Isentrope.pressure(start, isotherm.kelvin(), end);
          assertTrue(
              bound >= exact,
              () -> "at " + celsius + " °C, " + end + " kg/m³: " + bound + " < " + exact);
        }
      }
    }
  }

  @Test
  void agedPartsThatKeepUnderATenthOfTheirGasAreOut() {
    Job lid = Samples.lid();
    Job old =
        new Job(
            lid.name(),
            lid.mechanism(),
            lid.springCounts(),
            lid.rodEnd(),
            lid.tubeEnd(),
            new Job.Conditions(263.15, 293.15, 313.15, 48, 0),
            lid.requirements(),
            lid.filters(),
            lid.rankBy(),
            lid.limit());
    Ranking ranking = Ranking.of(RANGE, old);
    assertEquals(0, ranking.fitsTotal() + ranking.nearTotal());
    assertTrue(ranking.rejected().get(Rejection.AGEING) > 0);
  }

  @Test
  void anEmptyRangeRanksNothingAndBalances() {
    Ranking ranking = Ranking.of(Range.of(1, List.<Part>of(), List.of()), Samples.lid());
    assertEquals(0, ranking.considered());
    assertTrue(ranking.fits().isEmpty() && ranking.near().isEmpty());
  }
}
