package org.staywright.motion;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;
import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;

/** Motion against the closed forms and measurements of textbooks. */
public final class MotionChecks {

  private MotionChecks() {}

  public static List<Check> all() {
    List<Check> checks = new ArrayList<>();
    Motion fall = Motion.of(Scenes.fall(3, 1));
    double time = Math.sqrt(2 / STANDARD_GRAVITY);
    checks.add(exact("free fall from 1 m: √(2h/g)", time, fall.endTime(), "s"));
    double speed = Math.sqrt(2 * STANDARD_GRAVITY);
    checks.add(exact("the same: √(2gh)", speed, -fall.endSpeed(), "m/s"));
    double small = 2 * Math.PI * Math.sqrt(2 / (3 * STANDARD_GRAVITY));
    checks.add(
        exact("rod of 1 m hung at its end, swinging by 1°: 2π√(2L/3g)", small, swing(1), "s"));
    // T/T₀ = 2K/π with the complete elliptic integral K(m = sin²(θ/2)).
    checks.add(
        Check.printed(
            "the same by 90°: period over that of a small swing",
            "1.18034",
            swing(90) / small,
            "",
            0.001,
            "2K/π, K(m = 1/2) = 1.854075 (M. Abramowitz, I. A. Stegun, Table 17.1, from memory)"));
    Motion hum = Motion.of(Scenes.oscillator(2, 800, 0.01));
    int at = hum.last();
    double where = 0.01 * Math.cos(20 * hum.time()[at]);
    checks.add(exact("2 kg on 800 N/m after 16 periods: A·cos(ωt)", where, hum.q()[at] - 1, "m"));
    checks.add(damped());
    checks.add(dragged());
    checks.add(ruchardt());
    return checks;
  }

  /** Within the error of small swings, a hundredth of a percent. */
  private static Check exact(String what, double closed, double ours, String unit) {
    String value = String.format(Locale.ROOT, "%.7g", closed);
    return Check.percent(what, value, ours, unit, 0.01, "closed form, any text on mechanics");
  }

  /** The period by the quarter from rest to hanging straight down, s. */
  private static double swing(double degrees) {
    return 4 * Motion.of(Scenes.pendulum(1, degrees)).endTime();
  }

  /** 2 kg on 800 N/m with a damper of 8 N·s/m: A·e^(−βt)·(cos ωt + β/ω·sin ωt), β = c/2m. */
  private static Check damped() {
    Motion motion = Motion.of(Scenes.damped(2, 800, 8, 0.01));
    double decay = 8 / (2 * 2.0);
    double omega = Math.sqrt(800 / 2.0 - decay * decay);
    int at = motion.last() / 3;
    double time = motion.time()[at];
    double closed =
        0.01
            * Math.exp(-decay * time)
            * (Math.cos(omega * time) + decay / omega * Math.sin(omega * time));
    return exact(
        "the same with a damper of 8 N·s/m, a third of the way", closed, motion.q()[at] - 1, "m");
  }

  /** 3 kg let fall 1 m against 10 N·s/m beside: v = (m·g/c)·(1 − e^(−c·t/m)). */
  private static Check dragged() {
    Motion motion = Motion.of(Scenes.dragged(3, 1, 10));
    double closed = 3 * STANDARD_GRAVITY / 10 * (1 - Math.exp(-10 * motion.endTime() / 3));
    return exact(
        "3 kg falling against 10 N·s/m beside: speed at 1 m", closed, -motion.endSpeed(), "m/s");
  }

  /**
   * A ball in the neck of a flask of nitrogen: from half a period of its swing c_p/c_v =
   * m·V·ω²/(p·A²).
   */
  private static Check ruchardt() {
    double mass = 16.6e-3;
    double volume = 10e-3;
    double rise = 1e-3;
    double neck = Math.PI / 4 * 16e-3 * 16e-3;
    GasSpring flask =
        new GasSpring(
            new Cylinder(16e-3, 20e-3, 18e-3, 0.4, 1, 0.6, 0, 1, volume, 0),
            mass * STANDARD_GRAVITY);
    StraightLift ball =
        new StraightLift(
            new Masses(mass, mass, mass),
            4 * rise,
            Math.PI / 2,
            0,
            // It balances where F1 is measured and is let go a little lower.
            new Mounts(new Point(0, 0), new Point(0, 1 - 5e-3 - rise), 0, Mounts.RodEnd.EITHER));
    MotionSetup scene = Scenes.scene(ball, Scenes.bare(flask), 1, 1);
    Motion motion =
        Motion.of(
            new MotionSetup(
                scene.course(), mass, scene.strut(), 1, 1, scene.rodRise(), Hand.NONE, 0, 1));
    double omega = Math.PI / turn(motion);
    double pressure = ATMOSPHERE + mass * STANDARD_GRAVITY / neck;
    double room = flask.gasVolume(5e-3, ROOM);
    return Check.absolute(
        "Rüchardt's experiment with nitrogen: c_p/c_v",
        "1.407",
        mass * room * omega * omega / (pressure * neck * neck),
        "",
        0.02,
        "1 + 2/f, f = 4.92 ± 0.24 measured (C. Shearwood, P. A. Sloan, arXiv 2209.03323)");
  }

  /** When it first turns back, s. */
  private static double turn(Motion motion) {
    int i = 1;
    while (motion.speed()[i] >= 0) {
      i++;
    }
    double before = motion.speed()[i - 1];
    double step = motion.time()[1];
    return motion.time()[i - 1] + step * before / (before - motion.speed()[i]);
  }

  /** What passes the orifice: discharge and laminar loss. */
  public static List<Check> flow() {
    String britannica = "Encyclopaedia Britannica, 11th ed., Hydraulics (bitlit.ru p.55)";
    List<Check> checks = new ArrayList<>();
    checks.add(discharge("1", "0.62", 0.01, britannica));
    checks.add(discharge("4", "0.608", 0.01, britannica));
    checks.add(discharge("20", "0.603", 0.01, britannica));
    CSVRecord tube = Facts.example("orifice", "short tube", "Cd");
    checks.add(discharge("1", tube.get("value"), 0.05, Facts.source(tube)));
    // Oil of 900 kg/m³ and 2e-4 m²/s at 2.7 m/s through 10 m of 60 mm.
    Orifice pipe = new Orifice(0.06, 10, 1, 1);
    checks.add(
        Check.printed(
            "oil in a pipe of 60 mm, 10 m: laminar loss of head",
            "4.9",
            pipe.perSpeed(new Still(900, 0.18)) * 2.7 / (900 * 9.81),
            "m",
            1,
            "F. M. White, Fluid Mechanics, Example 6.4 (from memory)"));
    return checks;
  }

  /** Water through a hole under a head in feet: flow over area·√(2gh). */
  private static Check discharge(String feet, String published, double length, String source) {
    double head = Double.parseDouble(feet) * 0.3048;
    // 0.196 square inches.
    double diameter = 12.69e-3;
    Orifice hole = new Orifice(diameter, length, 1, 1);
    double drop = 999 * STANDARD_GRAVITY * head;
    double ours =
        hole.speedAt(drop, new Still(999, 1.1e-3)) / Math.sqrt(2 * STANDARD_GRAVITY * head);
    String shape = length > 2 * diameter ? "short tube" : "sharp-edged hole";
    return Check.percent(
        "water through a " + shape + ", head " + feet + " ft: C_d", published, ours, "", 3, source);
  }

  private record Still(double density, double viscosity) implements Orifice.Fluid {

    @Override
    public double speedOfSound() {
      return 1500;
    }

    @Override
    public double pressure() {
      return ATMOSPHERE;
    }
  }
}
