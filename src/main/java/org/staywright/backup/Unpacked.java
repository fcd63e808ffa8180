package org.staywright.backup;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * An entry of an archive as it is unpacked: held against its check sum at the end, and given up
 * where it grows beyond all reason.
 */
final class Unpacked extends FilterInputStream {

  /** Our rows shrink to a tenth, alike ones to a fortieth. */
  private static final long MOST_RATIO = 200;

  private static final long FREE = 10L << 20;

  private final ZipEntry entry;
  private final long packed;
  private final CRC32 sum = new CRC32();
  private long size;

  /**
   * @param packed length of the whole archive
   */
  Unpacked(ZipFile zip, ZipEntry entry, long packed) throws IOException {
    super(bytes(zip, entry));
    this.entry = entry;
    this.packed = packed;
  }

  private static InputStream bytes(ZipFile zip, ZipEntry entry) throws IOException {
    InputStream bytes = zip.getInputStream(entry);
    if (bytes == null) {
      throw new ZipException(entry.getName());
    }
    return bytes;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] block, int offset, int length) throws IOException {
    int read = super.read(block, offset, length);
    if (read < 0) {
      if (sum.getValue() != entry.getCrc()) {
        throw new ZipException(entry.getName() + " has another check sum");
      }
      return read;
    }
    sum.update(block, offset, read);
    size += read;
    if (size > FREE && size / packed > MOST_RATIO) {
      throw new Refusal(new Fault(entry.getName(), size, "≤ " + MOST_RATIO + ":1", "backup-bomb"));
    }
    return read;
  }
}
