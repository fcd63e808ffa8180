package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.staywright.check.Facts;

/** "The force changes by about 3.5 % per 10 K": common practice, no source. */
class TemperatureRuleTest {

  private static final Path PAGE = Path.of("src", "site", "markdown", "temperature-rule.md");

  /** 20 °C, K. */
  private static final double ROOM = 293.15;

  private static final double[] BAR = {1, 10, 50, 100, 150, 200, 250};
  private static final double[] CELSIUS = {-40, -30, -20, -10, 0, 10, 30, 40, 60, 80};

  @Test
  void holdsAtLowPressure() {
    // At constant volume an ideal gas rises by 1/T: 3.41 % of the pressure per 10 K.
    assertEquals(3.41, 10 * 100 / ROOM, 0.005);
    assertEquals(1000 / ROOM, perTenKelvin(0.01), 1e-3);
    assertEquals(3.5, perTenKelvin(10), 0.1);
  }

  @Test
  void isOffByAThirdAt150Bar() {
    double slope = perTenKelvin(150);
    assertEquals(4.5, slope, 0.05);
    assertTrue(slope / 3.5 > 1.25 && slope / 3.5 < 1.35, "off by " + slope / 3.5);
  }

  /** The same slope where the published table has it. */
  @Test
  void agreesWithThePublishedTable() {
    for (CSVRecord row : Facts.of("nitrogen-table")) {
      if (Facts.number(row, "T_K") == ROOM) {
        double published = 1000 * Facts.number(row, "dpdT_v_over_p_1_K");
        assertEquals(published, perTenKelvin(Facts.number(row, "p_bar")), 1e-4 * published);
      }
    }
  }

  @Test
  void thePageShowsOurFigures() throws IOException {
    String page = Files.readString(PAGE);
    assertTrue(page.contains(slopes()), "the page should hold:\n" + slopes());
    assertTrue(page.contains(changes()), "the page should hold:\n" + changes());
  }

  private static String slopes() {
    StringBuilder table = new StringBuilder();
    table.append(
        "| pressure at 20 °C, bar | Z | change per 10 K at 20 °C, % | of the rule's 3.5 % |\n");
    table.append("|---:|---:|---:|---:|\n");
    for (double bar : BAR) {
      Isotherm isotherm = Isotherm.at(ROOM);
      double z = isotherm.compressibility(isotherm.density(bar * 1e5));
      double slope = perTenKelvin(bar);
      table.append(row("| %.0f | %.3f | %.2f | %.2f × |\n", bar, z, slope, slope / 3.5));
    }
    return table.toString();
  }

  /** Pressure at constant volume, from 150 bar at 20 °C. */
  private static String changes() {
    StringBuilder table = new StringBuilder();
    table.append("| temperature, °C | rule, % | ideal gas, % | nitrogen from 10 bar, % |");
    table.append(" nitrogen from 150 bar, % |\n|---:|---:|---:|---:|---:|\n");
    for (double celsius : CELSIUS) {
      double kelvin = celsius + 273.15;
      table.append(
          row(
              "| %.0f | %+.1f | %+.1f | %+.1f | %+.1f |\n",
              celsius,
              0.35 * (kelvin - ROOM),
              100 * (kelvin / ROOM - 1),
              change(10, kelvin),
              change(150, kelvin)));
    }
    return table.toString();
  }

  private static String row(String format, double... values) {
    Object[] cells = DoubleStream.of(values).boxed().toArray();
    return String.format(Locale.ROOT, format, cells).replace('-', '−');
  }

  /** (∂p/∂T)_v/p at 20 °C, % per 10 K. */
  private static double perTenKelvin(double bar) {
    Isotherm isotherm = Isotherm.at(ROOM);
    Isotherm.State state = isotherm.state(isotherm.density(bar * 1e5));
    return 1000 * state.pressurePerKelvin() / state.pressure();
  }

  private static double change(double bar, double kelvin) {
    double density = Isotherm.at(ROOM).density(bar * 1e5);
    return 100 * (Isotherm.at(kelvin).pressure(density) / (bar * 1e5) - 1);
  }
}
