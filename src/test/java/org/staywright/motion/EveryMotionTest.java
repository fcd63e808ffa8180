package org.staywright.motion;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.staywright.fit.SampleRange;
import org.staywright.fit.job.MovingPart;
import org.staywright.gas.BeyondEquation;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.Spring;

/** Every family of the sample range on every mechanism, let go at both ends. */
class EveryMotionTest {

  @ParameterizedTest
  @EnumSource(Family.class)
  void closesItsBooksWithinAThousandth(Family family) {
    long seed = 20261125;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    List<Part> parts = SampleRange.parts(family);
    int moved = 0;
    int done = 0;
    for (int i = 0; i < 6; i++) {
      Part part = parts.get(random.nextInt(parts.size()));
      double kelvin = 263 + 50 * random.nextDouble();
      for (Mechanism mechanism : mechanisms(part.spring(), random)) {
        for (boolean open : new boolean[] {true, false}) {
          MotionSetup scene =
              Scenes.scene(
                  mechanism,
                  MovingPart.strut(part, kelvin),
                  1 + random.nextInt(2),
                  mechanism instanceof SeatColumn
                      ? mechanism.end()
                      : part.spring().extendedLength());
          try {
            Motion motion = Motion.of(open ? scene : scene.from(scene.course().start()));
            String what = part.number() + " on a " + mechanism.code() + ": " + motion.energy();
            assertTrue(!motion.moved() || motion.energy().imbalance() < 1e-3, what);
            moved += motion.moved() ? 1 : 0;
            done++;
          } catch (BeyondEquation beyond) {
            // Slammed so hard that its gas leaves what is known of it: refused, not computed.
            assertTrue(part.family().hasGas(), beyond.toString());
          }
        }
      }
    }
    System.out.println(family + ": " + done + " motions, " + moved + " moved");
    assertTrue(done >= 24 && moved >= 8, done + " motions, " + moved + " moved");
  }

  /** Whose springs go from a tenth to nine tenths of their stroke, and about balance their load. */
  private static List<Mechanism> mechanisms(Spring spring, Random random) {
    double stroke = spring.stroke();
    double shut = spring.compressedLength() + 0.1 * stroke;
    double way = 0.8 * stroke;
    double force = Math.max(50, spring.force()) * (0.5 + 1.5 * random.nextDouble());
    double mass = force / 9.81;
    Masses masses = new Masses(mass, mass, mass);
    double arm = 0.8 * way;
    List<Mechanism> all = new ArrayList<>();
    all.add(
        new HingedFlap(
            masses,
            new Point(arm, 0),
            new Point(2 * arm, 0),
            1,
            Math.toRadians(60),
            0,
            0.01 * force * arm,
            new Mounts(new Point(arm, -shut), new Point(arm, 0), 0, Mounts.RodEnd.EITHER)));
    all.add(
        new StraightLift(
            masses,
            way,
            Math.PI / 2,
            0.01 * force,
            new Mounts(new Point(0, -shut), new Point(0, 0), 0, Mounts.RodEnd.EITHER)));
    all.add(
        new ForceProfile(
            List.of(
                new ForceProfile.Point(shut, force),
                new ForceProfile.Point(shut + way, 0.8 * force))));
    all.add(new SeatColumn(mass, 40, 120, 0.8, way));
    return all;
  }
}
