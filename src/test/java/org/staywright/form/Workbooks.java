package org.staywright.form;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.staywright.form.table.RowFile;

/** Tables as workbooks. */
public final class Workbooks {

  private Workbooks() {}

  /** CSV as a spreadsheet keeps it: numbers and truth values as such. */
  public static byte[] of(String csv) {
    return of(csv, sheet -> {});
  }

  public static byte[] of(String csv, Consumer<Worksheet> more) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", null);
        var rows = RowFile.FORMAT.parse(new StringReader(csv))) {
      Worksheet sheet = book.newWorksheet("table");
      for (CSVRecord row : rows) {
        for (int i = 0; i < row.size(); i++) {
          cell(sheet, (int) row.getRecordNumber() - 1, i, row.get(i));
        }
      }
      more.accept(sheet);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void cell(Worksheet sheet, int row, int column, String text) {
    if (text.matches("-?\\d+(\\.\\d+)?")) {
      sheet.value(row, column, Double.parseDouble(text));
    } else if (text.matches("true|false")) {
      sheet.value(row, column, Boolean.parseBoolean(text));
    } else if (!text.isEmpty()) {
      sheet.value(row, column, text);
    }
  }

  /** A workbook whose sheet is written by hand. */
  public static byte[] ofSheet(String xml) {
    try {
      Path book = Files.createTempFile("book", ".xlsx");
      Files.write(book, of("a,b\n1,2\n"));
      try (FileSystem zip = FileSystems.newFileSystem(book)) {
        Files.writeString(zip.getPath("xl/worksheets/sheet1.xml"), xml);
      }
      byte[] bytes = Files.readAllBytes(book);
      Files.delete(book);
      return bytes;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A few hundred kilobytes that unpack to a thousand times as much. */
  public static byte[] bomb() {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bomb)) {
      zip.putNextEntry(new ZipEntry("[Content_Types].xml"));
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] block = new byte[1 << 20];
      for (int i = 0; i < 300; i++) {
        zip.write(block);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bomb.toByteArray();
  }
}
