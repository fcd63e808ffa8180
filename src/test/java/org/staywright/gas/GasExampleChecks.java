package org.staywright.gas;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/**
 * Slow and fast changes against textbook examples. The books compute with the ideal gas law, and
 * some with air of constant specific heat; real nitrogen comes near both at low pressure only, so
 * that the tolerance is the gap to that ideal, not our accuracy.
 */
public final class GasExampleChecks {

  private static final String REAL = "; ideal gas in the book, real nitrogen here";
  private static final String AIR =
      "; air with a constant γ = 1.4 in the book, real nitrogen here: its specific heat rises with T";

  private GasExampleChecks() {}

  public static List<Check> all() {
    return List.of(
        isothermalExpansion(),
        isothermalCompression(),
        adiabatic(),
        temperature(),
        volume(),
        work());
  }

  private static Check isothermalExpansion() {
    CSVRecord row = Facts.example("gas isothermal", "N2 expansion", "W");
    Isotherm isotherm = Isotherm.at(413.15);
    double work = 0.3 * slowWork(isotherm, isotherm.density(160e3), isotherm.density(100e3));
    return check("isothermal work, 0.3 kg, 140 °C, 160 → 100 kPa", row, work / 1000, 0.6, REAL);
  }

  private static Check isothermalCompression() {
    CSVRecord row = Facts.example("gas isothermal", "N2 compression", "W");
    Isotherm isotherm = Isotherm.at(300);
    double start = isotherm.density(150e3);
    double work = 0.2 * start * slowWork(isotherm, start, isotherm.density(800e3));
    return check("isothermal work, 0.2 m³, 300 K, 150 → 800 kPa", row, work / 1000, 0.2, REAL);
  }

  private static Check adiabatic() {
    CSVRecord row = Facts.example("gas polytropic", "N2 compression", "W");
    // In a gas thin enough to be ideal the adiabatic work is the loss of inner energy.
    double thin = 0.01;
    double before = Isotherm.at(300).state(thin).energy();
    double after = Isotherm.at(360).state(thin).energy();
    return check(
        "work of pV^1.4, 2 kg, 300 → 360 K, as adiabatic work of thin nitrogen",
        row,
        2 * (before - after) / 1000,
        0.5,
        REAL);
  }

  private static Check temperature() {
    CSVRecord row = Facts.example("gas adiabatic", "air compression", "T2");
    return check("adiabatic, 1.02 → 6.8 bar from 295 K: T₂", row, compressed().kelvin(), 1, AIR);
  }

  private static Check volume() {
    CSVRecord row = Facts.example("gas adiabatic", "air compression", "V2");
    double start = Isotherm.at(295).density(1.02e5);
    double volume = 0.015 * start / compressed().density();
    return check("adiabatic, 0.015 m³ before: V₂", row, volume, 1, AIR);
  }

  private static Check work() {
    CSVRecord row = Facts.example("gas adiabatic", "air compression", "W");
    double start = Isotherm.at(295).density(1.02e5);
    double before = Isotherm.at(295).state(start).energy();
    Compressed end = compressed();
    double after = Isotherm.at(end.kelvin()).state(end.density()).energy();
    return check("adiabatic, the same: W", row, 0.015 * start * (before - after) / 1000, 1, AIR);
  }

  private record Compressed(double density, double kelvin) {}

  /** From 1.02 bar and 295 K along the isentrope to 6.8 bar: the density by bisection. */
  private static Compressed compressed() {
    double start = Isotherm.at(295).density(1.02e5);
    double low = start;
    double high = 10 * start;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      if (Isentrope.pressure(start, 295, middle) < 6.8e5) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new Compressed(low, Isentrope.temperature(start, 295, low));
  }

  /** ∫p dv at constant temperature: heat taken up less energy gained, J/kg. */
  private static double slowWork(Isotherm isotherm, double from, double to) {
    Isotherm.State before = isotherm.state(from);
    Isotherm.State after = isotherm.state(to);
    double heat = isotherm.kelvin() * (after.entropy() - before.entropy());
    return heat - (after.energy() - before.energy());
  }

  private static Check check(
      String what, CSVRecord row, double ours, double percent, String remark) {
    String source = Facts.source(row) + remark;
    return Check.printed(what, row.get("value"), ours, row.get("unit"), percent, source);
  }
}
