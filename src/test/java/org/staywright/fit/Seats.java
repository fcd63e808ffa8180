package org.staywright.fit;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.staywright.fit.job.Job;
import org.staywright.form.job.JobForm;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Part;

/** An invented column and a seat for it, at 20 °C, new and without tolerances. */
public final class Seats {

  /** π/4·19²·100 mm³ and 2 + 4 ml beside. */
  private static final String COLUMN =
      "part_number=TST-AAA family=seat-column finish=zinc rod_thread=M8 tube_thread=M8 mounting=any"
          + " force_tolerance_n=0 rod_diameter_mm=10 tube_diameter_mm=32 stroke_mm=100"
          + " extended_length_mm=280 compressed_length_mm=180 friction_n=15 min_temperature_c=-30"
          + " max_temperature_c=80 mass_kg=0.5 stock=3 lead_time_days=2"
          + " bore_diameter_mm=19 end_damping_mm=0 cold_friction_factor=1.5 orifice_diameter_mm=0.7"
          + " orifice_length_mm=2 compression_flow_factor=4 wall_time_constant_s=3"
          + " max_pressure_bar=400 loss_percent_per_year=2 loss_percent_per_10k_cycles=1.5"
          + " oil_volume_ml=0 force_class_n=350 gas_volume_ml=34.3529 full_side_dead_volume_ml=2"
          + " rod_side_dead_volume_ml=4 locking=elastic lock_force_n=4000";

  private Seats() {}

  public static Part column(String... changes) {
    Map<String, String> row = new LinkedHashMap<>();
    for (String cell : (COLUMN + " " + String.join(" ", changes)).strip().split("\\s+")) {
      row.put(cell.split("=", 2)[0], cell.split("=", 2)[1]);
    }
    String file = String.join(",", row.keySet()) + "\n" + String.join(",", row.values());
    var rows = RowFile.read(new StringReader(file), PartRow.COLUMNS, PartRow::read);
    if (!rows.faults().isEmpty()) {
      throw new IllegalArgumentException(rows.faults().toString());
    }
    return rows.rows().get(0);
  }

  public static ObjectNode tree(String load) {
    String job =
        """
        {"name": "Stool", "load": {"type": "seat-column", %s},
         "conditions": {"minC": 20, "nominalC": 20, "maxC": 20, "serviceYears": 0}}
        """;
    try {
      return JobForm.withDefaults(new ObjectMapper().readTree(job.formatted(load)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static ObjectNode tree(double seat, double lightest, double heaviest, double travelMm) {
    return tree(
        "\"seatMassKg\": %s, \"sitterMassKg\": {\"min\": %s, \"max\": %s}, \"heightTravelMm\": %s"
            .formatted(seat, lightest, heaviest, travelMm));
  }

  public static Job job(double seat, double lightest, double heaviest, double travelMm) {
    return JobForm.read(tree(seat, lightest, heaviest, travelMm));
  }
}
