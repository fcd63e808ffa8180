package org.staywright.form.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.table.Cells;
import org.staywright.form.table.RowFile;
import org.staywright.part.Part;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Damper;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.TractionSpring;

/** Rows of the families beside open gas springs; the parts are invented. */
class FamilyRowTest {

  private static final String COMMON =
      "part_number=TST-AAA family=%s finish=zinc rod_thread=M8 tube_thread=M8 mounting=any"
          + " force_tolerance_n=20 rod_diameter_mm=10 tube_diameter_mm=22 stroke_mm=100"
          + " extended_length_mm=280 compressed_length_mm=180 friction_n=15 min_temperature_c=-30"
          + " max_temperature_c=80 mass_kg=0.5 stock=3 lead_time_days=2 ";
  private static final String GAS =
      " bore_diameter_mm=19 end_damping_mm=0 cold_friction_factor=1.5 orifice_diameter_mm=0.7"
          + " orifice_length_mm=2 compression_flow_factor=4 wall_time_constant_s=3"
          + " max_pressure_bar=400 loss_percent_per_year=2 loss_percent_per_10k_cycles=1.5"
          + " oil_volume_ml=1 ";

  /** π/4·19²·100 mm³ and 2 + 4 ml beside. */
  private static final String STRUT =
      COMMON.formatted("locking-strut")
          + GAS
          + "force_class_n=350 gas_volume_ml=34.3529 full_side_dead_volume_ml=2"
          + " rod_side_dead_volume_ml=4 locking=elastic lock_force_n=4000";

  private static final String TRACTION =
      COMMON.formatted("traction-spring") + GAS + "force_class_n=350 gas_volume_ml=40";

  private static final String COIL =
      COMMON.formatted("coil-spring")
          + "force_class_n=150 wire_diameter_mm=3 active_coils=14 free_length_mm=200"
          + " shear_modulus_mpa=81500 tensile_strength_mpa=1900";

  private static final String DAMPER =
      COMMON.formatted("damper")
          + " bore_diameter_mm=19 cold_friction_factor=2 oil_volume_ml=30 gas_volume_ml=0"
          + " force_class_n=0 compressing_damping_n=200 extending_damping_n=800"
          + " damping_speed_mm_per_s=100 compressing_exponent=0.6 extending_exponent=0.5";

  private static RowFile<Part> read(String cells, String... changes) {
    Map<String, String> row = new LinkedHashMap<>();
    for (String cell : (cells + " " + String.join(" ", changes)).strip().split("\\s+")) {
      row.put(cell.split("=", 2)[0], cell.split("=", 2)[1]);
    }
    String file = String.join(",", row.keySet()) + "\n" + String.join(",", row.values());
    return RowFile.read(new StringReader(file), PartRow.COLUMNS, PartRow::read);
  }

  private static Part good(String cells) {
    RowFile<Part> file = read(cells);
    assertEquals(List.of(), file.faults());
    Part part = file.rows().get(0);
    List<String> columns = PartRow.columns(part.family());
    List<String> written = PartRow.of(part).cells(columns);
    Cells again = new Cells(c -> columns.contains(c) ? written.get(columns.indexOf(c)) : null);
    assertEquals(part, PartRow.read(again));
    return part;
  }

  private static String faults(String cells, String... changes) {
    return read(cells, changes).faults().stream()
        .map(fault -> fault.fault().where() + " " + fault.fault().code())
        .collect(Collectors.joining(", "));
  }

  @Test
  void everyFamilyIsReadAndWrittenWithItsOwnColumns() {
    assertInstanceOf(LockingSpring.class, good(STRUT).spring());
    assertInstanceOf(TractionSpring.class, good(TRACTION).spring());
    assertInstanceOf(CoilSpring.class, good(COIL).spring());
    assertInstanceOf(Damper.class, good(DAMPER).spring());
  }

  @Test
  void jsonLeavesOutWhatDoesNotApply() {
    var coil = AnswerJson.tree(PartAnswer.of(good(COIL), ""));
    assertEquals(14, coil.get("activeCoils").intValue());
    assertTrue(!coil.has("gasVolumeMl") && !coil.has("locking") && !coil.has("maxPressureBar"));
    var strut = AnswerJson.tree(PartAnswer.of(good(STRUT), ""));
    assertEquals("elastic", strut.get("locking").textValue());
    assertEquals(4000, strut.get("lockForceN").intValue());
  }

  @Test
  void aPriceWithoutAnEndSaysSoWithNull() {
    var coil =
        AnswerJson.tree(PartAnswer.of(good(COIL + " price_breaks=1:2.5 price_currency=EUR"), ""));
    assertTrue(coil.at("/price/validUntil").isNull(), coil.toString());
  }

  @Test
  void refusesACellThatTheFamilyHasNothingFor() {
    assertEquals("gas_volume_ml does-not-apply", faults(COIL, "gas_volume_ml=3"));
    assertEquals("locking does-not-apply", faults(TRACTION, "locking=elastic"));
  }

  @Test
  void refusesALockWithoutRoomForGas() {
    assertEquals(
        "full_side_dead_volume_ml out-of-bounds", faults(STRUT, "full_side_dead_volume_ml=0"));
    assertEquals("locking not-a-choice", faults(STRUT, "locking=magnetic"));
  }

  @Test
  void refusesSidesThatDoNotAddUpToTheGasVolume() {
    assertEquals("gas_volume_ml out-of-bounds", faults(STRUT, "rod_side_dead_volume_ml=5"));
  }

  @Test
  void refusesACoilThatWouldGoSolid() {
    assertEquals("stroke_mm coil-solid", faults(COIL, "active_coils=40"));
  }

  @Test
  void refusesADamperThatPushesWithoutGas() {
    assertEquals("gas_volume_ml out-of-bounds", faults(DAMPER, "force_class_n=50"));
  }

  @Test
  void refusesASpringWithoutForce() {
    assertEquals("force_class_n out-of-bounds", faults(TRACTION, "force_class_n=0"));
  }
}
