package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.staywright.check.Check;

/** Locked springs against the closed form of an ideal gas at low pressure, and oil. */
public final class LockChecks {

  private static final String BOYLE =
      "closed form: Boyle's law on either side of the piston (any text on physics)";
  private static final String POISSON =
      "closed form: Poisson's law of an ideal gas of two atoms, 7/5 (any text on physics)";
  private static final String OIL =
      "University of Minnesota, Fundamentals of Fluid Power, lecture on compressibility:"
          + " hydraulic oils 1.5 to 1.9 GPa";

  private LockChecks() {}

  public static List<Check> all() {
    List<Check> checks = new ArrayList<>();
    for (double place : new double[] {0.02, 0.08, 0.14}) {
      checks.add(slow(place));
    }
    for (double place : new double[] {0, 0.08, 0.13}) {
      checks.add(atOnce(place));
    }
    double oil = LockedOil.BULK_MODULUS / 1e9;
    checks.add(Check.absolute("bulk modulus of oil", "1.7", oil, "GPa", 0.2, OIL));
    return checks;
  }

  /** Rod 10 in a bore of 19, stroke 160, 10 N, 2 ml dead on either side, locked and pushed 5 mm. */
  private static Check slow(double place) {
    double bore = Math.PI / 4 * 0.019 * 0.019;
    double rod = Math.PI / 4 * 0.010 * 0.010;
    double ring = bore - rod;
    double full = bore * (0.16 - place) + 2e-6;
    double side = ring * place + 2e-6;
    double room = bore * 0.16 + 4e-6;
    double charge = ATMOSPHERE + 10.5 / rod;
    double pressure = charge * (room - rod * 0.005) / (room - rod * place);
    double held =
        pressure
            * (full / (full - bore * 0.005) * bore - side / (side + ring * 0.005) * ring - rod);
    LockingSpring spring = Locks.spring(0.010, 0.022, 0.019, 0.16, 10, 2e-6, 2e-6, Locking.ELASTIC);
    String what = "locked at %.0f mm, pushed 5 mm: force".formatted(1000 * place);
    return Check.percent(
        what,
        String.format(Locale.ROOT, "%.4f", held),
        spring.locked(place, ROOM).slow(0.005),
        "N",
        0.3,
        BOYLE);
  }

  /**
   * The same spring with so much room on the rod's side that its pressure stays, loaded with 40 N
   * at once: F = (p1 − p0)·A_b gives δ = V1/A_b·(1 − (1 + F/(p0·A_b))^(−5/7)).
   */
  private static Check atOnce(double place) {
    double bore = Math.PI / 4 * 0.019 * 0.019;
    double full = bore * (0.16 - place) + 2e-6;
    double pressure = ATMOSPHERE + 10.5 / (Math.PI / 4 * 0.010 * 0.010);
    double deflection = full / bore * (1 - Math.pow(1 + 40 / (pressure * bore), -5.0 / 7));
    LockingSpring spring = Locks.spring(0.010, 0.022, 0.019, 0.16, 10, 2e-6, 1, Locking.ELASTIC);
    return Check.percent(
        "locked at %.0f mm, 40 N at once: deflection".formatted(1000 * place),
        String.format(Locale.ROOT, "%.4f", 1000 * deflection),
        1000 * spring.locked(place, ROOM).fastDeflection(40),
        "mm",
        0.3,
        POISSON);
  }
}
