package org.staywright.form.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Pointer;
import org.staywright.form.schema.Shape;
import org.staywright.form.table.Heading;
import org.staywright.form.table.RowFault;
import org.staywright.form.table.Rows;
import org.staywright.form.table.Spoiled;
import org.staywright.form.table.TableFile;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * Many jobs in one file: a JSON array, or a table whose columns are a job's fields by dotted names.
 * Rows count from 1: of JSON the first job, of a table the row of the header.
 */
public final class JobFile {

  /** Jobs of a file at most. */
  public static final int MOST = 10_000;

  private static final String TYPE = "load.type";

  private static final String COLUMNS = TYPE + ", load.massKg, …";

  /** More are as good as a wrong file. */
  private static final int MOST_FAULTS = 1000;

  /**
   * A job of a file.
   *
   * @param document with every default filled in
   */
  public record Row(int row, ObjectNode document) {}

  private final Range range;
  private final List<Row> rows = new ArrayList<>();
  private final List<RowFault> faults = new ArrayList<>();
  private int faultCount;

  private JobFile(Range range) {
    this.range = range;
  }

  /**
   * @param range that parts beside the springs are looked up in
   */
  public static JobFile json(byte[] body, Range range) {
    JobFile file = new JobFile(range);
    JsonText text = JsonText.read(body);
    if (!text.tree().isArray()) {
      file.fault(1, new Fault("", Pointer.shown(text.tree()), "[ ]", "not-a-list"));
      return file;
    }
    Set<Integer> spoiled = new HashSet<>();
    for (Fault twice : text.repeated()) {
      String[] steps = twice.where().split("/", 3);
      int row = Integer.parseInt(steps[1]) + 1;
      spoiled.add(row);
      file.fault(row, twice.at(column("/" + steps[2])));
    }
    int row = 0;
    for (JsonNode job : text.tree()) {
      if (++row > MOST) {
        break;
      }
      if (!spoiled.contains(row)) {
        file.job(row, job);
      }
    }
    file.size(text.tree().size());
    return file;
  }

  /**
   * @param body CSV or a workbook
   * @param range that parts beside the springs are looked up in
   */
  public static JobFile table(InputStream body, Range range) {
    JobFile file = new JobFile(range);
    try (Rows rows = TableFile.once(body)) {
      Rows.Row header = rows.header();
      if (header == null) {
        throw new Spoiled(1, null, COLUMNS, "empty-file");
      }
      Heading heading =
          new Heading(header, name -> JobShape.JOB.field(name).isPresent(), COLUMNS, TYPE);
      heading.faults().forEach(fault -> file.fault(header.number(), fault));
      if (file.faultCount == 0) {
        file.rows(rows, heading);
      }
    } catch (Spoiled spoiled) {
      file.fault(spoiled.fault().row(), spoiled.fault().fault());
    } catch (IOException e) {
      throw new UncheckedIOException("the file did not come whole", e);
    }
    return file;
  }

  private void rows(Rows source, Heading heading) {
    int count = 0;
    for (Rows.Row row = source.next(); row != null; row = source.next()) {
      if (++count <= MOST) {
        row(row, heading);
      }
    }
    size(count);
  }

  private void size(int count) {
    if (count == 0 || count > MOST) {
      fault(1, new Fault("", count, "1…" + MOST, "list-size"));
    }
  }

  private void row(Rows.Row row, Heading heading) {
    List<Fault> spoiled = row.faults(heading.names());
    if (!spoiled.isEmpty()) {
      spoiled.forEach(fault -> fault(row.number(), fault));
      return;
    }
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(heading.names().size(), row.cells().size()); i++) {
      values.put(heading.names().get(i), List.of(row.cells().get(i)));
    }
    String type = values.getOrDefault(TYPE, List.of("")).get(0).strip();
    Shape shape = LoadForms.of(type).isPresent() ? loaded(type) : JobShape.JOB;
    job(row.number(), FlatForm.tree(shape, values));
  }

  /** The fields of a job with one type of load; the others stay, to be refused by name. */
  private static Shape loaded(String type) {
    Map<String, Field> fields = new LinkedHashMap<>(JobShape.JOB.fields());
    fields.put("load", JobShape.of(type).fields().get("load"));
    return new Shape("job", fields);
  }

  private void job(int row, JsonNode job) {
    try {
      ObjectNode document = JobForm.withDefaults(job);
      JobForm.read(document, range);
      rows.add(new Row(row, document));
    } catch (Refusal refusal) {
      for (Fault fault : refusal.faults()) {
        fault(row, fault.at(column(fault.where())));
      }
    }
  }

  /** "#/load/massKg" is the column load.massKg. */
  private static String column(String pointer) {
    return pointer.replaceFirst("^#?/?", "").replace('/', '.');
  }

  private void fault(int row, Fault fault) {
    faultCount++;
    if (faults.size() < MOST_FAULTS) {
      faults.add(new RowFault(row, fault));
    }
  }

  /** Sound jobs, in the order of the file. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** The first of the faults. */
  public List<RowFault> faults() {
    return List.copyOf(faults);
  }

  /** Of all faults. */
  public int faultCount() {
    return faultCount;
  }
}
