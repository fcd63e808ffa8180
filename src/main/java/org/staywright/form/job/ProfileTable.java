package org.staywright.form.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.staywright.form.schema.FlatTable;
import org.staywright.form.schema.JsonNumber;
import org.staywright.form.schema.Kind;
import org.staywright.form.table.Cells;
import org.staywright.form.table.NumberColumn;
import org.staywright.form.table.RowFault;
import org.staywright.form.table.RowFile;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** The points of a force profile as a table with the columns lengthMm and forceN. */
public final class ProfileTable {

  private static final List<String> COLUMNS = List.copyOf(ProfileForm.POINT.fields().keySet());
  private static final NumberColumn LENGTH = column(0, ProfileForm.LENGTH);
  private static final NumberColumn FORCE = column(1, ProfileForm.FORCE);

  private final ArrayNode points = JsonNodeFactory.instance.arrayNode();
  private final List<RowFault> faults = new ArrayList<>();
  private double longest = Double.NEGATIVE_INFINITY;

  private ProfileTable() {}

  /** Reads a file to its end, whatever is wrong with it. */
  public static ProfileTable read(InputStream file) {
    ProfileTable table = new ProfileTable();
    RowFile<ObjectNode> rows = RowFile.read(file, COLUMNS, table::point);
    table.faults.addAll(rows.faults());
    table.points.addAll(rows.rows());
    int size = rows.rows().size();
    if (table.faults.isEmpty()
        && (size < ProfileForm.POINTS.least() || size > ProfileForm.POINTS.most())) {
      String bound = ProfileForm.POINTS.least() + "…" + ProfileForm.POINTS.most();
      table.faults.add(new RowFault(1, new Fault("", size, bound, "list-size")));
    }
    return table;
  }

  /** What could not be read, in the order of the file. */
  public List<RowFault> faults() {
    return List.copyOf(faults);
  }

  /** The points as a form field holds them. */
  public String text() {
    return FlatTable.text(points);
  }

  private ObjectNode point(Cells cells) {
    double length = cells.number(LENGTH);
    double force = cells.number(FORCE);
    if (length < longest) {
      Bound longer = Bound.above(longest, Double.POSITIVE_INFINITY, "mm");
      cells.fault(
          new Fault(LENGTH.column(), JsonNumber.of(length), longer.text(), "profile-not-rising"));
    }
    if (!cells.faults().isEmpty()) {
      throw new Refusal(cells.faults());
    }
    longest = length;
    ObjectNode point = JsonNodeFactory.instance.objectNode();
    point.set(LENGTH.column(), JsonNumber.of(length, 15));
    point.set(FORCE.column(), JsonNumber.of(force, 15));
    return point;
  }

  private static NumberColumn column(int place, Kind.Amount amount) {
    return new Asked(COLUMNS.get(place), amount.bound(), Double.NaN);
  }

  private record Asked(String column, Bound bound, double whenEmpty) implements NumberColumn {}
}
