package org.staywright.form.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.staywright.unit.Fault;

/** The names over the columns of a file: in any order, each known and none twice. */
public final class Heading {

  private final List<String> names;
  private final List<Fault> faults = new ArrayList<>();

  /**
   * @param known whether there is a column of a name
   * @param all of them, for whoever gave another
   * @param needed the one that must not be left out
   */
  public Heading(Rows.Row row, Predicate<String> known, String all, String needed) {
    names = row.cells().stream().map(String::strip).toList();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (!known.test(name)) {
        faults.add(new Fault(name, name, all, "unknown-column"));
      } else if (names.indexOf(name) < i) {
        faults.add(new Fault(name, name, name, "repeated"));
      }
    }
    if (faults.isEmpty() && !names.contains(needed)) {
      faults.add(new Fault(needed, null, needed, "missing"));
    }
  }

  /** In the order of the file. */
  public List<String> names() {
    return names;
  }

  /** With any of them every row would be wrong for the same reason. */
  public List<Fault> faults() {
    return List.copyOf(faults);
  }

  /** The cell of a row, null where it has none. */
  public String cell(Rows.Row row, String name) {
    int place = names.indexOf(name);
    return place < 0 || place >= row.cells().size() ? null : row.cells().get(place);
  }
}
