package org.staywright.form.table;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * A file of rows as it came, on the disk. What can be told from its bytes is refused while they
 * come in, so that the rest is never taken.
 *
 * @param path where it lies
 * @param xlsx whether it is a workbook rather than CSV
 * @param lines of CSV, 0 where only reading a workbook would tell
 */
public record TableFile(Path path, boolean xlsx, int lines) {

  /** A million parts take about a third of it. */
  public static final long LONGEST = 1L << 30;

  static final long LONGEST_WORKBOOK = 1L << 28;
  private static final int LONGEST_ROW = 1 << 16;
  private static final byte[] ZIP = {'P', 'K', 3, 4};
  private static final byte[] OLD_WORKBOOK = {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0};

  /**
   * Takes a file in.
   *
   * @param path to write to
   * @throws Spoiled as soon as it is seen to be none
   */
  public static TableFile take(InputStream body, Path path) throws IOException {
    byte[] first = body.readNBytes(1 << 13);
    boolean xlsx = startsWith(first, ZIP);
    if (startsWith(first, OLD_WORKBOOK)) {
      throw new Spoiled(1, "XLS", "CSV | XLSX", "old-workbook");
    }
    CsvGuard guard = xlsx ? null : new CsvGuard();
    long longest = xlsx ? LONGEST_WORKBOOK : LONGEST;
    try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(path), 1 << 16)) {
      long size = 0;
      byte[] block = first;
      int read = first.length;
      byte[] next = new byte[1 << 16];
      while (read > 0) {
        size += read;
        if (size > longest) {
          throw new Spoiled(
              guard == null ? 1 : guard.row(), null, megabytes(longest), "file-too-long");
        }
        if (guard != null) {
          guard.see(block, read);
        }
        file.write(block, 0, read);
        block = next;
        read = body.read(next);
      }
    } catch (Spoiled spoiled) {
      Files.deleteIfExists(path);
      throw spoiled;
    }
    if (xlsx) {
      try {
        ZipGuard.check(path);
      } catch (Spoiled spoiled) {
        Files.deleteIfExists(path);
        throw spoiled;
      }
    }
    return new TableFile(path, xlsx, guard == null ? 0 : guard.row());
  }

  /**
   * The rows of a file that is kept nowhere else, gone when they are closed.
   *
   * @throws Spoiled as soon as it is seen to be none
   */
  public static Rows once(InputStream body) throws IOException {
    Path path = Files.createTempFile("staywright", ".rows");
    try {
      Rows rows = take(body, path).rows(Set.of());
      return new Rows() {
        @Override
        public Row next() {
          return rows.next();
        }

        @Override
        public void close() throws IOException {
          rows.close();
          Files.delete(path);
        }
      };
    } catch (IOException | RuntimeException e) {
      Files.deleteIfExists(path);
      throw e;
    }
  }

  /** The names over its columns, none where it cannot be read. */
  public List<String> header() throws IOException {
    try (Rows rows = rows(Set.of())) {
      Rows.Row header = rows.next();
      return header == null ? List.of() : header.cells();
    } catch (Spoiled unreadable) {
      return List.of();
    }
  }

  /**
   * Its rows from the first, for one reading.
   *
   * @param dates columns in which a workbook's numbers are days
   */
  public Rows rows(Set<String> dates) throws IOException {
    return xlsx ? new SheetRows(path, dates) : new CsvRows(Files.newInputStream(path));
  }

  private static String megabytes(long bytes) {
    return "≤ " + (bytes >> 20) + " MB";
  }

  private static boolean startsWith(byte[] bytes, byte[] mark) {
    return bytes.length >= mark.length
        && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length);
  }

  /** Sees the bytes of CSV go by: no zero byte, and no row without end. */
  private static final class CsvGuard {

    private int row = 1;
    private int length;
    private boolean quoted;

    int row() {
      return row;
    }

    void see(byte[] block, int count) {
      if (row == 1 && length == 0 && count > 1 && wide(block)) {
        throw new Spoiled(1, "UTF-16", "UTF-8", "not-utf8");
      }
      for (int i = 0; i < count; i++) {
        byte each = block[i];
        if (each == 0) {
          throw new Spoiled(row, "\\0", "CSV (UTF-8) | XLSX", "not-a-text-file");
        }
        if (each == '"') {
          quoted = !quoted;
        }
        if (each == '\n') {
          row++;
          length = quoted ? length + 1 : 0;
        } else if (++length > LONGEST_ROW) {
          throw new Spoiled(row, null, "≤ " + LONGEST_ROW, "row-too-long");
        }
      }
    }

    private static boolean wide(byte[] block) {
      int mark = (block[0] & 0xff) << 8 | block[1] & 0xff;
      return mark == 0xfffe || mark == 0xfeff;
    }
  }
}
