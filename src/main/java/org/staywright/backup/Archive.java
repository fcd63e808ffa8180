package org.staywright.backup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.InputCoercionException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * A backup that is read. Nothing it says of itself is believed before it is seen: the number of its
 * rows, the kind of each value, how much it unpacks to.
 */
final class Archive implements AutoCloseable {

  /** Of a value that is refused. */
  private static final int SHOWN = 60;

  private static final JsonFactory JSON = new JsonFactory();

  private final ZipFile zip;
  private final long packed;
  private final Manifest manifest;

  private Archive(ZipFile zip, long packed, Manifest manifest) {
    this.zip = zip;
    this.packed = packed;
    this.manifest = manifest;
  }

  /** Opens a file that is a backup by its manifest. */
  static Archive open(Path path) throws IOException {
    ZipFile zip;
    try {
      zip = new ZipFile(path.toFile());
    } catch (IOException notWhole) {
      throw new Refusal(new Fault("", null, "ZIP", "backup-not-whole"));
    }
    try {
      ZipEntry entry = zip.getEntry(Manifest.ENTRY);
      if (entry == null) {
        throw new Refusal(new Fault(Manifest.ENTRY, null, Manifest.ENTRY, "not-a-backup"));
      }
      long packed = Files.size(path);
      try (InputStream bytes = new Unpacked(zip, entry, packed)) {
        return new Archive(zip, packed, Manifest.read(bytes.readNBytes(Manifest.LONGEST)));
      }
    } catch (IOException | RuntimeException e) {
      zip.close();
      throw e;
    }
  }

  Manifest manifest() {
    return manifest;
  }

  /** Refuses what another version of the program wrote, and what lacks or adds a table. */
  void suits(String schema, List<StoredTable> tables) {
    Contents contents = manifest.contents();
    if (!contents.schema().equals(schema)) {
      throw new Refusal(new Fault("schema", contents.schema(), schema, "backup-of-other-version"));
    }
    Set<String> entries = zip.stream().map(ZipEntry::getName).collect(Collectors.toSet());
    Set<String> expected =
        Stream.concat(Stream.of(Manifest.ENTRY), tables.stream().map(t -> Manifest.entry(t.name())))
            .collect(Collectors.toSet());
    boolean alike = entries.equals(expected) && zip.size() == expected.size();
    for (StoredTable table : tables) {
      List<String> columns = manifest.columns().getOrDefault(table.name(), List.of());
      alike &= new HashSet<>(columns).equals(table.columns().keySet());
      alike &= columns.size() == table.columns().size();
    }
    if (!alike) {
      throw new Refusal(new Fault(Manifest.ENTRY, null, "", "backup-of-other-tables"));
    }
  }

  /** Takes the values of a row, in the order of the columns in the manifest. */
  public interface Rows {
    void take(List<Object> values) throws SQLException;
  }

  /** Reads a table to its end. */
  void each(StoredTable table, Rows rows) throws SQLException {
    String name = Manifest.entry(table.name());
    List<String> columns = manifest.columns().get(table.name());
    long expected = manifest.contents().rows().get(table.name());
    long row = 0;
    try (InputStream bytes =
            new BufferedInputStream(new Unpacked(zip, zip.getEntry(name), packed), 1 << 16);
        JsonParser json = JSON.createParser(bytes)) {
      while (json.nextToken() != null && row <= expected) {
        row++;
        rows.take(values(json, table, columns, name + ":" + row));
      }
    } catch (JsonProcessingException otherwise) {
      throw new Refusal(new Fault(name + ":" + (row + 1), null, "JSON", "backup-not-rows"));
    } catch (IOException broken) {
      throw new Refusal(new Fault(name, null, "ZIP", "backup-not-whole"));
    }
    if (row != expected) {
      throw new Refusal(new Fault(name, row, Long.toString(expected), "backup-with-other-rows"));
    }
  }

  private static List<Object> values(
      JsonParser json, StoredTable table, List<String> columns, String where) throws IOException {
    List<Object> values = new ArrayList<>(columns.size());
    if (json.currentToken() != JsonToken.START_ARRAY) {
      throw new Refusal(new Fault(where, null, "[…]", "backup-not-rows"));
    }
    for (String column : columns) {
      values.add(value(json, table.columns().get(column), where + " " + column));
    }
    if (json.nextToken() != JsonToken.END_ARRAY) {
      throw new Refusal(new Fault(where, null, "[…]", "backup-not-rows"));
    }
    return values;
  }

  private static Object value(JsonParser json, ColumnKind kind, String where) throws IOException {
    JsonToken token = json.nextToken();
    if (token != null && kind.takes(token)) {
      try {
        return kind.read(json);
      } catch (DateTimeException | InputCoercionException otherwise) {
        // No such day, or too large a number: refused like any other.
      }
    }
    String text = String.valueOf(json.getText());
    String shown = text.substring(0, Math.min(SHOWN, text.length()));
    throw new Refusal(new Fault(where, shown, kind.example(), "backup-with-other-values"));
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
