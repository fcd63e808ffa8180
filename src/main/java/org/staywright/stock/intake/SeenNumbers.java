package org.staywright.stock.intake;

import java.nio.charset.StandardCharsets;

/** Part numbers met so far and their rows, in few bytes each: a million of them take 60 MB. */
final class SeenNumbers {

  private long[] front = new long[1 << 10];
  private long[] back = new long[1 << 10];
  private int[] rows = new int[1 << 10];
  private int size;

  /**
   * Notes a number of up to 16 letters.
   *
   * @return the row it was met in before, 0 for none
   */
  int put(String number, int row) {
    if (2 * ++size > rows.length) {
      grow();
    }
    byte[] letters = number.getBytes(StandardCharsets.US_ASCII);
    return put(packed(letters, 0), packed(letters, 8), row);
  }

  private int put(long first, long second, int row) {
    int mask = rows.length - 1;
    long mixed = (first * 0x9E3779B97F4A7C15L ^ second) * 0xC2B2AE3D27D4EB4FL;
    int at = (int) (mixed >>> 32) & mask;
    while (rows[at] != 0) {
      if (front[at] == first && back[at] == second) {
        return rows[at];
      }
      at = at + 1 & mask;
    }
    front[at] = first;
    back[at] = second;
    rows[at] = row;
    return 0;
  }

  private void grow() {
    long[] first = front;
    long[] second = back;
    int[] known = rows;
    front = new long[2 * known.length];
    back = new long[2 * known.length];
    rows = new int[2 * known.length];
    for (int i = 0; i < known.length; i++) {
      if (known[i] != 0) {
        put(first[i], second[i], known[i]);
      }
    }
  }

  private static long packed(byte[] letters, int from) {
    long packed = 0;
    for (int i = from; i < from + 8; i++) {
      packed = packed << 8 | (i < letters.length ? letters[i] : 0);
    }
    return packed;
  }
}
