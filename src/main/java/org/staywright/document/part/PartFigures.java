package org.staywright.document.part;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLILITRE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.ROOM;

import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.job.MovingPart;
import org.staywright.motion.Strut;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.GasFilled;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** A part's own figures as labels and values, those that were worked out marked. */
public final class PartFigures {

  private final Part part;
  private final Wording wording;
  private final List<String[]> pairs = new ArrayList<>();

  public PartFigures(Part part, Wording wording) {
    this.part = part;
    this.wording = wording;
  }

  /** Labels with values, as given. */
  public List<String[]> pairs() {
    PartText text = PartText.in(wording);
    Spring spring = part.spring();
    add("forceClassN", spring.force(), NEWTON, 1);
    add("forceToleranceN", "±" + quantity(part.forceTolerance(), NEWTON, 1));
    add("strokeMm", spring.stroke(), MILLIMETRE, 1);
    add("extendedLengthMm", spring.extendedLength(), MILLIMETRE, 1);
    add("compressedLengthMm", spring.compressedLength(), MILLIMETRE, 1);
    add("rodDiameterMm", spring.rodDiameter(), MILLIMETRE, 1);
    add("tubeDiameterMm", spring.tubeDiameter(), MILLIMETRE, 1);
    part.gas()
        .ifPresent(gas -> add("boreDiameterMm", gas.cylinder().boreDiameter(), MILLIMETRE, 1));
    add("rodThread", part.ends().rod());
    add("tubeThread", part.ends().tube());
    add("massKg", part.mass(), KILOGRAM, 3);
    add("finish", text.name("finish", part.finish()));
    add("mounting", text.name("mounting", part.mounting()));
    add("minTemperatureC", part.limits().coldest(), CELSIUS, 1);
    add("maxTemperatureC", part.limits().hottest(), CELSIUS, 1);
    part.gas().ifPresent(this::gas);
    add("coldFrictionFactor", wording.shortest(spring.coldFrictionFactor(), 2));
    return pairs;
  }

  private void gas(GasFilled gas) {
    add("maxPressureBar", part.limits().pressure(), BAR, 0);
    add("gasVolumeMl", gas.cylinder().gasVolume(), MILLILITRE, 1);
    add("oilVolumeMl", gas.cylinder().oilVolume(), MILLILITRE, 1);
    add("endDampingMm", damping());
    add("orificeDiameterMm", part.damping().orificeDiameter(), MILLIMETRE, 2);
    add("compressionFlowFactor", wording.shortest(part.damping().compressionFlowFactor(), 2));
    add("lossPercentPerYear", percent(part.wear().perYear()));
    add("lossPercentPer10kCycles", percent(1e4 * part.wear().perCycle()));
  }

  /** Forces at 20 °C where the trade measures them, and what makes them. */
  public List<String[]> forces() {
    Spring spring = part.spring();
    ForceLaw law = spring.law();
    double near = spring.nearGauge();
    double far = spring.farGauge();
    List<String[]> forces = new ArrayList<>();
    if (spring.force() == 0) {
      forces.add(figure("friction", newtons(spring.friction())));
      return forces;
    }
    forces.add(figure("f1", newtons(law.giving(near, ROOM))));
    forces.add(figure("f2", newtons(law.giving(far, ROOM))));
    forces.add(figure("f3", newtons(law.taking(near, ROOM))));
    forces.add(figure("f4", newtons(law.taking(far, ROOM))));
    forces.add(figure("progression", wording.number(spring.progression(), 2)));
    forces.add(figure("friction", newtons(spring.friction())));
    part.gas().ifPresent(gas -> forces.add(charge(gas)));
    forces.add(
        figure(
            "delta",
            newtons(
                law.giving(near, part.limits().hottest())
                    - law.giving(near, part.limits().coldest()))));
    if (part.gas().isPresent() && spring.sense() > 0) {
      speeds(forces);
    }
    return forces;
  }

  /** Of the free rod at 20 °C, at half stroke and at half the depth of the oil. */
  private void speeds(List<String[]> forces) {
    Strut strut = MovingPart.strut(part, ROOM);
    forces.add(figure("freeGas", speed(strut.freeSpeed(part.spring().stroke() / 2, false))));
    if (strut.zones().extension() > 0) {
      forces.add(figure("freeOil", speed(strut.freeSpeed(strut.zones().extension() / 2, true))));
    }
  }

  private String speed(double metresPerSecond) {
    return wording.quantity(metresPerSecond, Unit.MILLIMETRE_PER_SECOND, 0);
  }

  private String[] charge(GasFilled gas) {
    double gauge = gas.restPressure() - ATMOSPHERE;
    return figure(
        "chargePressure", wording.text("document.gauge", wording.quantity(gauge, BAR, 0)));
  }

  private String[] figure(String name, String value) {
    return new String[] {wording.text("part.figure." + name), value};
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }

  private String damping() {
    double zone = part.endZone();
    return zone > 0
        ? wording.text("document.damped-last", quantity(zone, MILLIMETRE, 1))
        : wording.text("document.none");
  }

  private String percent(double share) {
    return wording.shortest(Unit.PERCENT.of(share), 2) + "\u00a0%";
  }

  private String quantity(double si, Unit unit, int most) {
    return wording.measure(si, unit, most);
  }

  private void add(String name, double si, Unit unit, int most) {
    add(name, quantity(si, unit, most));
  }

  private void add(String name, String value) {
    if (value != null) {
      String mark = part.derived().contains(name) ? "\u00a0*" : "";
      pairs.add(new String[] {wording.text("part.label." + name), value + mark});
    }
  }
}
