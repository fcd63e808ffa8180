package org.staywright.document;

import static org.staywright.spring.Spring.GAUGE_POINT;
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
import org.staywright.part.Part;
import org.staywright.spring.ChargedSpring;
import org.staywright.spring.GasSpring;
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
    GasSpring spring = part.spring();
    add("forceClassN", spring.force(), NEWTON, 1);
    add("forceToleranceN", "±" + quantity(part.forceTolerance(), NEWTON, 1));
    add("strokeMm", spring.stroke(), MILLIMETRE, 1);
    add("extendedLengthMm", spring.extendedLength(), MILLIMETRE, 1);
    add("compressedLengthMm", spring.compressedLength(), MILLIMETRE, 1);
    add("rodDiameterMm", spring.rodDiameter(), MILLIMETRE, 1);
    add("tubeDiameterMm", spring.tubeDiameter(), MILLIMETRE, 1);
    add("boreDiameterMm", spring.boreDiameter(), MILLIMETRE, 1);
    add("rodThread", part.ends().rod());
    add("tubeThread", part.ends().tube());
    add("massKg", part.mass(), KILOGRAM, 3);
    add("finish", text.name("finish", part.finish()));
    add("mounting", text.name("mounting", part.mounting()));
    add("minTemperatureC", part.limits().coldest(), CELSIUS, 1);
    add("maxTemperatureC", part.limits().hottest(), CELSIUS, 1);
    add("maxPressureBar", part.limits().pressure(), BAR, 0);
    add("gasVolumeMl", spring.gasVolume(), MILLILITRE, 1);
    add("oilVolumeMl", spring.oilVolume(), MILLILITRE, 1);
    add("endDampingMm", damping());
    add("orificeDiameterMm", part.damping().orificeDiameter(), MILLIMETRE, 2);
    add("compressionFlowFactor", wording.shortest(part.damping().compressionFlowFactor(), 2));
    add("coldFrictionFactor", wording.shortest(spring.coldFrictionFactor(), 2));
    add("lossPercentPerYear", percent(part.wear().perYear()));
    add("lossPercentPer10kCycles", percent(1e4 * part.wear().perCycle()));
    return pairs;
  }

  /** Forces at 20 °C where the trade measures them, and what makes them. */
  public List<String[]> forces() {
    GasSpring spring = part.spring();
    ChargedSpring charged = spring.charged();
    double near = GAUGE_POINT;
    double far = spring.stroke() - GAUGE_POINT;
    double gauge = charged.pressure(0, ROOM) - ATMOSPHERE;
    return List.of(
        figure("f1", newtons(charged.extending(near, ROOM))),
        figure("f2", newtons(charged.extending(far, ROOM))),
        figure("f3", newtons(charged.compressing(near, ROOM))),
        figure("f4", newtons(charged.compressing(far, ROOM))),
        figure("progression", wording.number(spring.progression(), 2)),
        figure("friction", newtons(spring.friction())),
        figure("chargePressure", wording.text("document.gauge", wording.quantity(gauge, BAR, 0))),
        figure(
            "delta",
            newtons(
                charged.extending(near, part.limits().hottest())
                    - charged.extending(near, part.limits().coldest()))));
  }

  private String[] figure(String name, String value) {
    return new String[] {wording.text("part.figure." + name), value};
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }

  private String damping() {
    double zone = part.damping().endZone();
    return zone > 0
        ? wording.text("document.damped-last", quantity(zone, MILLIMETRE, 1))
        : wording.text("document.none");
  }

  private String percent(double share) {
    return wording.shortest(Unit.PERCENT.of(share), 2) + "\u00a0%";
  }

  private String quantity(double si, Unit unit, int most) {
    return wording.shortest(unit.of(si), most) + "\u00a0" + unit.symbol();
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
