package org.staywright.fit;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.Cells;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/** The range that ships with the program, read straight from its files, each of them once. */
public final class SampleRange {

  private static final Map<Family, List<Part>> PARTS = new ConcurrentHashMap<>();

  /** Whatever is asked for first reads it. */
  private static final class GasSprings {
    static final Range RANGE = Range.of(1, parts(Family.GAS_SPRING), fittings());
  }

  private SampleRange() {}

  public static Range read() {
    return GasSprings.RANGE;
  }

  /** Every so many-th of the gas springs. */
  public static Range every(int step) {
    List<Part> all = parts(Family.GAS_SPRING);
    List<Part> some =
        IntStream.range(0, all.size()).filter(i -> i % step == 0).mapToObj(all::get).toList();
    return Range.of(1, some, read().fittings());
  }

  /** With dampers beside the gas springs. */
  public static Range damped() {
    return with(Family.DAMPER);
  }

  /** With another family beside the gas springs. */
  public static Range with(Family family) {
    List<Part> parts = new ArrayList<>(parts(Family.GAS_SPRING));
    parts.addAll(parts(family));
    return Range.of(1, parts, fittings());
  }

  public static List<Part> parts(Family family) {
    return PARTS.computeIfAbsent(
        family,
        each -> List.copyOf(rows(each.code() + "s.csv", PartRow.columns(each), PartRow::read)));
  }

  private static List<Fitting> fittings() {
    return rows("fittings.csv", FittingRow.COLUMNS, FittingRow::read);
  }

  private static <T> List<T> rows(String file, List<String> columns, Function<Cells, T> read) {
    try (var in = SampleRange.class.getResourceAsStream("/catalog-data/" + file);
        var reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      RowFile<T> rows = RowFile.read(reader, columns, read);
      if (!rows.faults().isEmpty()) {
        throw new IllegalStateException(file + ": " + rows.faults());
      }
      return rows.rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
