package org.staywright.document.part;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.MEGAPASCAL;
import static org.staywright.unit.Unit.MILLILITRE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.MILLIMETRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_PER_MILLIMETRE;
import static org.staywright.unit.Unit.PERCENT;
import static org.staywright.unit.Unit.ROOM;

import java.util.ArrayList;
import java.util.List;
import org.staywright.part.Part;
import org.staywright.part.Strength;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Damper;
import org.staywright.spring.Digression;
import org.staywright.spring.GasFilled;
import org.staywright.spring.Kinds;
import org.staywright.spring.LockedSpring;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** What only the springs of one family have, and what each must bear, as labels and values. */
public final class FamilyFigures implements Kinds<List<String[]>> {

  /** Speeds at which a damper is told, m/s. */
  private static final double[] SPEEDS = {0.05, 0.1, 0.2};

  /** Of the softest place, relative. */
  private static final double ACCURACY = 1e-4;

  private final Wording wording;
  private final List<String[]> pairs = new ArrayList<>();

  private FamilyFigures(Wording wording) {
    this.wording = wording;
  }

  /** What sets the family apart; empty for an open gas spring and one that pulls. */
  public static List<String[]> of(Part part, Wording wording) {
    return part.spring().told(new FamilyFigures(wording));
  }

  /** How near to constant it comes, and what makes it so. */
  public static List<String[]> evenness(Part part, Wording wording) {
    FamilyFigures figures = new FamilyFigures(wording);
    if (part.spring().force() > 0) {
      double constancy = part.spring().law().constancy(0, part.spring().stroke(), ROOM);
      figures.add("constancy", wording.number(constancy, 2));
      part.gas().ifPresent(figures::swept);
    }
    return figures.pairs;
  }

  /** What it must bear at its worst. */
  public static List<String[]> strength(Part part, Wording wording) {
    FamilyFigures figures = new FamilyFigures(wording);
    Strength.of(part).ifPresent(strength -> figures.strength(part, strength));
    return figures.pairs;
  }

  private void swept(GasFilled gas) {
    double swept = Math.abs(gas.drivingArea()) * gas.stroke();
    add("swept", swept, MILLILITRE, 1);
    add(
        "sweptShare",
        wording.number(PERCENT.of(swept / gas.cylinder().gasVolume()), 0) + "\u00a0%");
  }

  private void strength(Part part, Strength strength) {
    if (!Double.isNaN(strength.burstFactor())) {
      add("peakPressure", strength.peakPressure(), BAR, 0);
      add("burstFactor", wording.number(strength.burstFactor(), 1));
    }
    add("peakLoad", strength.peakLoad(), NEWTON, 0);
    add(
        "bucklingFactor",
        Double.isInfinite(strength.bucklingFactor())
            ? wording.text("document.never-buckles")
            : wording.number(strength.bucklingFactor(), 1));
    part.lock().ifPresent(lock -> add("lockForce", lock.lockForce(), NEWTON, 0));
  }

  @Override
  public List<String[]> plain() {
    return pairs;
  }

  @Override
  public List<String[]> locking(LockingSpring locking) {
    add("locking", wording.text("part.locking." + locking.locking().code()));
    add("fullSideDeadVolumeMl", locking.fullSideDeadVolume(), MILLILITRE, 1);
    add("rodSideDeadVolumeMl", locking.rodSideDeadVolume(), MILLILITRE, 1);
    double gas = locking.charged().gasMass();
    double softest = LockedSpring.softest(locking, gas, ROOM, ACCURACY);
    stiffness("stiffnessOut", locking, 0);
    stiffness("stiffnessIn", locking, locking.stroke());
    stiffness("stiffnessSoftest", locking, softest);
    add("softest", softest, MILLIMETRE, 0);
    return pairs;
  }

  private void stiffness(String name, LockingSpring locking, double compression) {
    double stiffness = locking.locked(compression, ROOM).stiffness();
    add(name, stiffness, NEWTON_PER_MILLIMETRE, NEWTON_PER_MILLIMETRE.of(stiffness) < 100 ? 1 : 0);
  }

  @Override
  public List<String[]> damper(Damper damper) {
    for (double speed : SPEEDS) {
      resistance("in", speed, damper.force(speed));
    }
    add("compressingExponent", exponent(damper.compressing()));
    for (double speed : SPEEDS) {
      resistance("out", speed, -damper.force(-speed));
    }
    add("extendingExponent", exponent(damper.extending()));
    return pairs;
  }

  private void resistance(String way, double speed, double force) {
    String at = wording.quantity(speed, MILLIMETRE_PER_SECOND, 0);
    String label = wording.text("part.figure.damping." + way, at);
    pairs.add(new String[] {label, wording.quantity(force, NEWTON, 0)});
  }

  private String exponent(Digression digression) {
    return wording.shortest(digression.exponent(), 2);
  }

  @Override
  public List<String[]> coil(CoilSpring coil) {
    double last = coil.law().force(coil.stroke(), ROOM);
    add("wireDiameterMm", coil.wireDiameter(), MILLIMETRE, 2);
    add("activeCoils", wording.shortest(coil.activeCoils(), 2));
    add("freeLengthMm", coil.freeLength(), MILLIMETRE, 1);
    add("solidLength", coil.solidLength(), MILLIMETRE, 1);
    add("leastGaps", coil.leastGaps(), MILLIMETRE, 1);
    add("rate", coil.rate(), NEWTON_PER_MILLIMETRE, 2);
    add("coilStress", coil.stress(last), MEGAPASCAL, 0);
    add("coilStressCorrected", coil.correctedStress(last), MEGAPASCAL, 0);
    add("coilStressPermissible", coil.permissibleStress(), MEGAPASCAL, 0);
    return pairs;
  }

  private void add(String name, double si, Unit unit, int decimals) {
    add(name, wording.quantity(si, unit, decimals));
  }

  private void add(String name, String value) {
    pairs.add(new String[] {wording.text("part.figure." + name), value});
  }
}
