package org.staywright.web.stock;

import jakarta.ws.rs.core.MultivaluedMap;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.UUID;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.stock.intake.ImportOptions;
import org.staywright.web.shell.Address;

/**
 * How a file that came in is to be taken, as an address holds it.
 *
 * @param id of the file
 * @param mode what it is in place of
 * @param friction how it gives friction
 * @param columns what columns mean other than their names say: "#3=stroke_mm;#7=-"
 */
record ImportPlan(String id, String mode, String friction, String columns) {

  /** What the names of its meaning begin with in a form. */
  static final String MEANS = "means.";

  static ImportPlan of(String id, MultivaluedMap<String, String> values) {
    return new ImportPlan(
        id, first(values, "mode"), first(values, "friction"), first(values, "columns"));
  }

  private static String first(MultivaluedMap<String, String> values, String name) {
    String value = values.getFirst(name);
    return value == null ? "" : value;
  }

  /**
   * With the meanings that a form gives the columns of a file, those aside that their names say
   * anyhow.
   */
  ImportPlan with(List<String> header, MultivaluedMap<String, String> form) {
    List<ColumnPlan.Matched> named = ColumnPlan.of(header, Map.of()).columns();
    StringJoiner changed = new StringJoiner(";");
    for (int i = 0; i < named.size(); i++) {
      String given = first(form, MEANS + (i + 1)).strip();
      String means = given.isEmpty() ? ColumnPlan.LEFT_OUT : given;
      if (!means.equals(meaning(named.get(i)))) {
        changed.add(ColumnPlan.PLACE + (i + 1) + "=" + means);
      }
    }
    return new ImportPlan(id, mode, friction, changed.toString());
  }

  static String meaning(ColumnPlan.Matched column) {
    return column.meaning() == null ? ColumnPlan.LEFT_OUT : column.meaning().name();
  }

  ImportOptions options() {
    return ImportOptions.of(mode, friction, columns);
  }

  String address(String more) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    values.put("mode", List.of(mode));
    values.put("friction", List.of(friction));
    values.put("columns", List.of(columns));
    return new Address("/stock/imports/" + id + more, values).toString();
  }

  /** What is done with the file in this way: the name of its task. */
  String task(String what) {
    String all = String.join(" ", what, id, mode, friction, columns);
    return UUID.nameUUIDFromBytes(all.getBytes(StandardCharsets.UTF_8)).toString();
  }
}
