package org.staywright.form.table;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

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

  private static final Pattern PLACE = Pattern.compile("[A-Z]{1,3}[0-9]{1,7}");

  /** The one by which sheets are read, so that both see the same. */
  private static final XMLInputFactory XML = new InputFactoryImpl();

  static {
    XML.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    XML.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
  }

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
      for (ZipEntry entry : Collections.list(zip.entries())) {
        all += unpacked(zip, entry, packed, all);
      }
      for (ZipEntry entry : Collections.list(zip.entries())) {
        refuseFarCells(zip.getInputStream(entry));
      }
    } catch (ZipException damaged) {
      throw new Spoiled(1, null, "XLSX", "not-a-workbook");
    }
  }

  /** A cell far out would fill the memory with the empty ones before it. */
  private static void refuseFarCells(InputStream part) {
    try {
      XMLStreamReader xml = XML.createXMLStreamReader(part);
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
          String place = xml.getAttributeValue(null, "r");
          if (place != null && !PLACE.matcher(place).matches()) {
            throw new Spoiled(1, Cells.clip(place), "XLSX", "not-a-workbook");
          }
        }
      }
    } catch (Spoiled far) {
      throw far;
    } catch (XMLStreamException | RuntimeException noXml) {
      // As far as this goes, whoever reads the sheet will go, and no farther.
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
