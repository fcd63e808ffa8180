package org.staywright.form.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.form.part.Completion;
import org.staywright.form.part.FamilyColumn;
import org.staywright.form.part.FittingColumn;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartColumn;
import org.staywright.form.table.NumberColumn;
import org.staywright.form.table.PriceText;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.PartNumber;
import org.staywright.spring.Locking;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/**
 * A column of a file of stock.
 *
 * @param name in the header
 * @param unit that its numbers stand in, null for none that could be another
 * @param bound of its numbers, null where it has none
 * @param accepted in symbols, where it has no bound
 * @param example a value
 * @param families that have it, by their codes
 */
public record StockColumn(
    String name, Unit unit, Bound bound, String accepted, String example, List<String> families) {

  /** Columns that hold a day. */
  public static final Set<String> DATES = Set.of("price_valid_until", "stock_date");

  private static final List<String> EVERY = FamilyColumn.codes();
  private static final List<String> FITTINGS = List.of(FamilyColumn.FITTING);
  private static final List<String> PARTS = families(family -> true);

  private static final Map<String, String> EXAMPLES =
      Map.ofEntries(
          Map.entry("force_class_n", "400"),
          Map.entry("force_tolerance_n", "20"),
          Map.entry("rod_diameter_mm", "8"),
          Map.entry("tube_diameter_mm", "18"),
          Map.entry("bore_diameter_mm", "15.6"),
          Map.entry("stroke_mm", "160"),
          Map.entry("extended_length_mm", "380"),
          Map.entry("compressed_length_mm", "220"),
          Map.entry("gas_volume_ml", "27.7"),
          Map.entry("oil_volume_ml", "4.5"),
          Map.entry("full_side_dead_volume_ml", "1.6"),
          Map.entry("rod_side_dead_volume_ml", "1.8"),
          Map.entry("lock_force_n", "4000"),
          Map.entry("end_damping_mm", "32"),
          Map.entry("friction_n", "19"),
          Map.entry("cold_friction_factor", "1.5"),
          Map.entry("orifice_diameter_mm", "0.6"),
          Map.entry("orifice_length_mm", "2"),
          Map.entry("compression_flow_factor", "4"),
          Map.entry("wall_time_constant_s", "3"),
          Map.entry("compressing_damping_n", "100"),
          Map.entry("extending_damping_n", "100"),
          Map.entry("damping_speed_mm_per_s", "100"),
          Map.entry("compressing_exponent", "0.6"),
          Map.entry("extending_exponent", "0.6"),
          Map.entry("wire_diameter_mm", "1"),
          Map.entry("active_coils", "10.5"),
          Map.entry("free_length_mm", "38"),
          Map.entry("shear_modulus_mpa", "81500"),
          Map.entry("tensile_strength_mpa", "1980"),
          Map.entry("min_temperature_c", "-30"),
          Map.entry("max_temperature_c", "80"),
          Map.entry("max_pressure_bar", "400"),
          Map.entry("mass_kg", "0.26"),
          Map.entry("loss_percent_per_year", "2"),
          Map.entry("loss_percent_per_10k_cycles", "1.5"),
          Map.entry("progression", "1.3"),
          Map.entry("length_to_centre_mm", "18"),
          Map.entry("rating_n", "800"),
          Map.entry("swing_deg", "18"),
          Map.entry("ball_diameter_mm", "8"),
          Map.entry("pin_diameter_mm", "6"));

  /** All that a file may have, in the order of an export; a progression only comes in. */
  public static final List<StockColumn> ALL =
      Stream.concat(StockRow.COLUMNS.stream(), Stream.of(Completion.PROGRESSION.column()))
          .map(StockColumn::described)
          .toList();

  public static Optional<StockColumn> of(String name) {
    return ALL.stream().filter(column -> column.name.equals(name)).findFirst();
  }

  private static List<String> families(Predicate<Family> which) {
    return Arrays.stream(Family.values()).filter(which).map(Family::code).toList();
  }

  private static StockColumn described(String name) {
    Optional<PartColumn> part =
        Arrays.stream(PartColumn.values()).filter(c -> c.column().equals(name)).findFirst();
    if (part.isPresent()) {
      List<String> families =
          new ArrayList<>(families(family -> PartColumn.of(family).contains(part.get())));
      if (FittingRow.COLUMNS.contains(name)) {
        families.add(FamilyColumn.FITTING);
      }
      return number(part.get(), families);
    }
    Optional<FittingColumn> fitting =
        Arrays.stream(FittingColumn.values()).filter(c -> c.column().equals(name)).findFirst();
    if (fitting.isPresent()) {
      return number(fitting.get(), FITTINGS);
    }
    return text(name);
  }

  private static StockColumn number(NumberColumn column, List<String> families) {
    Unit unit = Unit.of(column.bound().unit()).filter(u -> u != Unit.PERCENT).orElse(null);
    return new StockColumn(
        column.column(),
        unit,
        column.bound(),
        "",
        EXAMPLES.getOrDefault(column.column(), ""),
        families);
  }

  private static StockColumn text(String name) {
    return switch (name) {
      case "part_number" -> plain(name, PartNumber.PATTERN.pattern(), "AB-1042", EVERY);
      case "family" -> plain(name, String.join(" | ", EVERY), "gas-spring", EVERY);
      case "finish" -> plain(name, choice(Finish.class), "zinc", EVERY);
      case "type" -> plain(name, choice(FittingType.class), "ball-socket", FITTINGS);
      case "rod_thread", "tube_thread" -> plain(name, "≤ 200", "M8", PARTS);
      case "thread" -> plain(name, "≤ 200", "M8", FITTINGS);
      case "mounting" -> plain(name, choice(Mounting.class), "rod-down", PARTS);
      case "locking" ->
          plain(
              name,
              Arrays.stream(Locking.values()).map(Locking::code).collect(Collectors.joining(" | ")),
              "elastic",
              families(Family::locks));
      case "progression" ->
          number(Completion.PROGRESSION, families(family -> family.hasGas() && !family.locks()));
      case "price_currency" -> plain(name, "[A-Z]{3}", "EUR", EVERY);
      case "price_valid_until", "stock_date" -> plain(name, "YYYY-MM-DD", "2027-06-30", EVERY);
      case "price_pack", "price_order_multiple" -> whole(name, 1, 1_000_000, "1");
      case "price_breaks" -> plain(name, "≤ 200", PriceText.EXAMPLE, EVERY);
      case "stock" -> whole(name, 0, 1_000_000, "35");
      case "lead_time_days" -> whole(name, 0, 1000, "5");
      case "derived" -> plain(name, "≤ 1000", "gasVolumeMl massKg", PARTS);
      default -> plain(name, "≤ 200", "", EVERY);
    };
  }

  private static StockColumn plain(
      String name, String accepted, String example, List<String> families) {
    return new StockColumn(name, null, null, accepted, example, families);
  }

  private static StockColumn whole(String name, int least, int most, String example) {
    return new StockColumn(name, null, Bound.between(least, most, ""), "", example, EVERY);
  }

  private static <E extends Enum<E> & Coded> String choice(Class<E> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(Coded::code)
        .collect(Collectors.joining(" | "));
  }
}
