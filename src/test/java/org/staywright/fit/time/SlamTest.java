package org.staywright.fit.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.InTime;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.motion.Gain;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;

class SlamTest {

  private static final Range RANGE = SampleRange.read();

  private static Job way(String name) {
    try (var in = SlamTest.class.getResourceAsStream("/ways/" + name + ".json")) {
      return JobForm.read(JsonText.read(in.readAllBytes()).tree(), RANGE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every motion there is, without looking at bounds. */
  private static double hardest(Job job, Fit fit, boolean opening) {
    InTime inTime = new InTime(job, fit);
    double most = 0;
    for (Corner corner : Corner.ALL) {
      Requirements asked = job.requirements();
      double force = opening ? asked.handOpenLimit() : -asked.handCloseLimit();
      MotionSetup alone = opening ? inTime.shut(corner) : inTime.scene(corner);
      for (Hand hand : List.of(new Hand.LetsGo(force), Hand.NONE)) {
        MotionSetup scene = alone.with(fit.count(), hand);
        Motion motion = Motion.of(scene);
        if (motion.end() == Motion.End.STOP && motion.endSpeed() > 0 == opening) {
          double bound = Gain.most(scene, opening);
          assertTrue(
              motion.stopEnergy() <= bound * (1 + 1e-6), motion.stopEnergy() + " J over " + bound);
          most = Math.max(most, motion.stopEnergy());
        }
      }
    }
    return most;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "folding-bed",
        "hinge-at-bottom",
        "hinge-at-top",
        "level-lid",
        "lift-on-a-line",
        "overhead",
        "upright-guard"
      })
  void isTheHardestOfAllMotionsThoughItRunsOnlyWhatItMust(String way) {
    Job job = way(way);
    Ranking ranking = Ranking.of(RANGE, job);
    for (Fit fit : ranking.fits().stream().limit(3).toList()) {
      for (boolean opening : new boolean[] {true, false}) {
        double hardest = hardest(job, fit, opening);
        Optional<Slam> slam = Slam.of(job, fit, opening);
        assertEquals(hardest >= Slam.HARD, slam.isPresent(), fit.part() + " " + hardest + " J");
        slam.ifPresent(
            found -> assertEquals(hardest, found.energy(), 1e-9 * hardest, fit.part().number()));
      }
    }
  }

  /**
   * Nothing damps a coil: by the work–energy theorem (any text on mechanics) it comes down with the
   * work of weight, spring, friction and of the hand as far as that pushes.
   */
  @Test
  void withoutDampingItIsTheWorkDone() {
    Part coil =
        SampleRange.parts(Family.COIL_SPRING).stream()
            .filter(part -> part.spring().stroke() > 0.1)
            .findFirst()
            .orElseThrow();
    double way = 0.9 * coil.spring().stroke();
    double shut = coil.spring().compressedLength() + 0.02 * coil.spring().stroke();
    double friction = 5;
    double most = 2.5 * (coil.spring().law().force(coil.spring().stroke(), 293.15) + 20);
    double mass = most / 9.80665 / 0.95;
    StraightLift lift =
        new StraightLift(
            new Masses(mass, 1.05 * mass, 0.95 * mass),
            way,
            Math.PI / 2,
            friction,
            new Mounts(new Point(0, 0), new Point(0, shut), 0, RodEnd.EITHER));
    Job job = Samples.job(lift, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    double extended = coil.spring().extendedLength();
    Figures figures =
        new Figures(
            new Figures.Lengths(0, way, 0, 0, 0, 0, 0, extended),
            null,
            null,
            null,
            null,
            null,
            null);
    Fit fit = new Fit(coil, 1, null, null, RodEnd.FRAME, figures, List.of(), null, 0, 0);
    Slam slam = Slam.of(job, fit, false).orElseThrow();
    assertEquals(new Corner(SpringState.WEAK, LoadState.HEAVY), slam.corner());
    double cold = job.conditions().coldest();
    DoubleUnaryOperator spring = SpringState.WEAK.law(coil, job.conditions()).slow(cold);
    double rub = coil.spring().friction(cold) + friction;
    double weight = 1.05 * mass * 9.80665;
    int steps = 20_000;
    double energy = 0;
    double pushed = 0;
    double pace = 1.05 * mass * Hand.LetsGo.PACE * Hand.LetsGo.PACE / 2;
    for (int i = 0; i < steps; i++) {
      double q = way - way * (i + 0.5) / steps;
      double hand = energy < pace ? 50 : 0;
      pushed += hand * way / steps;
      double net = weight - spring.applyAsDouble(extended - shut - q) - rub + hand;
      energy += net * way / steps;
    }
    assertTrue(pushed > 0);
    assertEquals(energy, slam.energy(), 1e-3 * energy);
    assertEquals(Math.sqrt(2 * energy / (1.05 * mass)), slam.speed(), 1e-3 * slam.speed());
  }

  @Test
  void anAgedSpringLetsAHeavyLidFallShut() {
    Job lid = Samples.lid();
    Fit fit =
        Ranking.of(RANGE, lid).fits().stream()
            .filter(each -> Slam.of(lid, each, false).isPresent())
            .findFirst()
            .orElseThrow();
    Slam slam = Slam.of(lid, fit, false).orElseThrow();
    assertEquals(new Corner(SpringState.WEAK, LoadState.HEAVY), slam.corner());
    // The handle's speed and the energy are of one motion: E = ½·I·(v/r)².
    double inertia = 1.05 * lid.mechanism().inertia().orElseThrow();
    assertEquals(slam.energy(), inertia * Math.pow(slam.speed() / 0.8, 2) / 2, 1e-6);
  }

  @Test
  void whatNobodyKnowsTheMassOfSaysNothing() {
    Job table = Samples.randomProfile(new java.util.Random(3));
    Fit fit = Ranking.of(RANGE, Samples.lid()).fits().get(0);
    assertTrue(Stream.of(true, false).noneMatch(end -> Slam.of(table, fit, end).isPresent()));
  }
}
