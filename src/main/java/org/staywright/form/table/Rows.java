package org.staywright.form.table;

import java.io.Closeable;
import java.util.ArrayList;
import java.util.List;
import org.staywright.unit.Fault;

/** The rows of a file, one after the other; the first names the columns. */
public interface Rows extends Closeable {

  /** What a cell with a formula begins with. */
  String FORMULA = "=";

  /**
   * @param number of the row in the file, the first being 1
   */
  record Row(int number, List<String> cells) {

    /**
     * What is wrong with it before any of its cells is read.
     *
     * @param names of the columns, null for one that is left out
     */
    public List<Fault> faults(List<String> names) {
      int width = names.size();
      if (cells.stream().skip(width).anyMatch(cell -> !cell.isBlank())) {
        return List.of(new Fault("", cells.size(), "≤ " + width, "too-many-cells"));
      }
      List<Fault> faults = new ArrayList<>();
      for (int i = 0; i < Math.min(width, cells.size()); i++) {
        if (cells.get(i).startsWith(FORMULA) && names.get(i) != null) {
          faults.add(new Fault(names.get(i), Cells.clip(cells.get(i)), "", "formula"));
        }
      }
      return faults;
    }
  }

  /**
   * The next row that is not empty, null at the end.
   *
   * @throws Spoiled where the file cannot be read on
   */
  Row next();

  /**
   * The first row, null where there is none.
   *
   * @throws Spoiled where its columns are parted by another sign
   */
  default Row header() {
    Row header = next();
    if (header != null && header.cells().size() == 1) {
      for (String other : List.of(";", "\t", "|")) {
        if (header.cells().get(0).contains(other)) {
          String sign = other.equals("\t") ? "TAB" : other;
          throw new Spoiled(header.number(), sign, ",", "wrong-delimiter");
        }
      }
    }
    return header;
  }
}
