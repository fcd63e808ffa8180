package org.staywright.stock.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Unpacks a workbook once and keeps nothing, to see how much there is in it: a few kilobytes can
 * hold gigabytes. What a file says of its own size is not believed.
 */
final class ZipGuard {

  private static final int MOST_ENTRIES = 1000;
  private static final long MOST_BYTES = 3L << 30;

  /** The texts of a workbook are held in memory while it is read. */
  private static final long MOST_TEXT = 64L << 20;

  /** Rows of numbers shrink to a tenth, alike ones to a fortieth. */
  private static final long MOST_RATIO = 200;

  private static final long FREE = 10L << 20;

  private ZipGuard() {}

  static void check(Path path) throws IOException {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      if (zip.size() > MOST_ENTRIES) {
        throw new Spoiled(1, zip.size(), "≤ " + MOST_ENTRIES, "zip-bomb");
      }
      if (zip.getEntry("[Content_Types].xml") == null) {
        throw new Spoiled(1, null, "XLSX", "not-a-workbook");
      }
      long packed = path.toFile().length();
      long all = 0;
      for (Enumeration<? extends ZipEntry> entries = zip.entries(); entries.hasMoreElements(); ) {
        all += unpacked(zip, entries.nextElement(), packed, all);
      }
    } catch (ZipException damaged) {
      throw new Spoiled(1, null, "XLSX", "not-a-workbook");
    }
  }

  private static long unpacked(ZipFile zip, ZipEntry entry, long packed, long before)
      throws IOException {
    boolean kept = !entry.getName().startsWith("xl/worksheets/");
    byte[] block = new byte[1 << 16];
    long size = 0;
    try (InputStream bytes = zip.getInputStream(entry)) {
      for (int read = bytes.read(block); read > 0; read = bytes.read(block)) {
        size += read;
        long all = before + size;
        if (all > MOST_BYTES
            || all > FREE && all / packed > MOST_RATIO
            || kept && size > MOST_TEXT) {
          throw new Spoiled(1, entry.getName(), "≤ " + (kept ? MOST_TEXT : MOST_BYTES), "zip-bomb");
        }
      }
    }
    return size;
  }
}
