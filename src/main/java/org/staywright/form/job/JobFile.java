package org.staywright.form.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Pointer;
import org.staywright.form.schema.Shape;
import org.staywright.form.table.RowFault;
import org.staywright.form.table.RowFile;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * Many jobs in one file: a JSON array, or CSV whose columns are a job's fields by dotted names.
 * Rows count from 1: of JSON the first job, of CSV the line of the header.
 */
public final class JobFile {

  /** Jobs of a file at most. */
  public static final int MOST = 10_000;

  private static final String TYPE = "load.type";

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
   * @param range that parts beside the springs are looked up in
   */
  public static JobFile csv(byte[] body, Range range) {
    JobFile file = new JobFile(range);
    var strict = StandardCharsets.UTF_8.newDecoder();
    int line = 1;
    int count = 0;
    try (CSVParser parser =
        RowFile.FORMAT.parse(new InputStreamReader(new ByteArrayInputStream(body), strict))) {
      List<String> names = null;
      for (CSVRecord record : parser) {
        line = (int) parser.getCurrentLineNumber();
        if (names == null) {
          names = file.header(line, record);
          if (file.faultCount > 0) {
            return file;
          }
        } else if (++count <= MOST) {
          file.record(line, names, record);
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      boolean coding =
          e instanceof CharacterCodingException || e.getCause() instanceof CharacterCodingException;
      file.fault(
          line,
          coding
              ? new Fault("", null, "UTF-8", "not-utf8")
              : new Fault("", null, "CSV (RFC 4180)", "not-csv"));
      return file;
    }
    file.size(count);
    return file;
  }

  private void size(int count) {
    if (count == 0 || count > MOST) {
      fault(1, new Fault("", count, "1…" + MOST, "list-size"));
    }
  }

  private List<String> header(int line, CSVRecord record) {
    List<String> names = new ArrayList<>();
    for (String cell : record) {
      String name = cell.replace("\ufeff", "").strip();
      if (JobShape.JOB.field(name).isEmpty()) {
        fault(line, new Fault(name, name, TYPE + ", load.massKg, …", "unknown-column"));
      } else if (names.contains(name)) {
        fault(line, new Fault(name, name, name, "repeated"));
      }
      names.add(name);
    }
    if (!names.contains(TYPE) && faultCount == 0) {
      fault(line, new Fault(TYPE, null, TYPE, "missing"));
    }
    return names;
  }

  private void record(int line, List<String> names, CSVRecord record) {
    if (record.size() > names.size()) {
      fault(line, new Fault("", record.size(), "≤ " + names.size(), "too-many-cells"));
      return;
    }
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (int i = 0; i < record.size(); i++) {
      values.put(names.get(i), List.of(record.get(i)));
    }
    String type = values.get(TYPE).get(0).strip();
    Shape shape = LoadForms.of(type).isPresent() ? loaded(type) : JobShape.JOB;
    job(line, FlatForm.tree(shape, values));
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
