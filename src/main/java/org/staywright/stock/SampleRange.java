package org.staywright.stock;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.Cells;
import org.staywright.form.table.RowFile;
import org.staywright.part.Fitting;
import org.staywright.part.Part;

/** The invented range that comes with the program, loaded where there is no stock yet. */
@ApplicationScoped
public class SampleRange {

  /** Before anything else that starts from the range. */
  public static final int FIRST = 10;

  private static final String FOLDER = "/catalog-data/";
  private static final List<String> PARTS =
      List.of(
          "gas-springs.csv",
          "seat-columns.csv",
          "locking-struts.csv",
          "traction-springs.csv",
          "dampers.csv",
          "coil-springs.csv");
  private static final String FITTINGS = "fittings.csv";

  private final Stock stock;
  private final boolean wanted;

  /**
   * @param wanted whether an empty database is filled with samples
   */
  public SampleRange(
      Stock stock,
      @ConfigProperty(name = "staywright.samples", defaultValue = "true") boolean wanted) {
    this.stock = stock;
    this.wanted = wanted;
  }

  void onStart(@Observes @Priority(FIRST) StartupEvent started) {
    loadIfFirst();
  }

  /** Fills an empty stock. */
  public void loadIfFirst() {
    if (wanted && stock.newest() == 0) {
      stock.begin(FOLDER, parts(), fittings());
    }
  }

  public static List<Fitting> fittings() {
    return rows(FITTINGS, FittingRow.COLUMNS, FittingRow::read);
  }

  public static List<Part> parts() {
    return PARTS.stream()
        .flatMap(name -> rows(name, PartRow.COLUMNS, PartRow::read).stream())
        .toList();
  }

  private static <T> List<T> rows(String name, List<String> columns, Function<Cells, T> read) {
    try (Reader file =
        new InputStreamReader(
            SampleRange.class.getResourceAsStream(FOLDER + name), StandardCharsets.UTF_8)) {
      RowFile<T> rows = RowFile.read(file, columns, read);
      if (!rows.faults().isEmpty()) {
        throw new IllegalStateException(name + " is faulty: " + rows.faults());
      }
      return rows.rows();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name, e);
    }
  }
}
