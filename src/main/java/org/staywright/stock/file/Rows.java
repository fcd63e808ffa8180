package org.staywright.stock.file;

import java.io.Closeable;
import java.util.List;

/** The rows of a file, one after the other. */
public interface Rows extends Closeable {

  /** What a cell with a formula begins with. */
  String FORMULA = "=";

  /**
   * @param number of the row in the file, the first being 1
   */
  record Row(int number, List<String> cells) {}

  /**
   * The next row that is not empty, null at the end.
   *
   * @throws Spoiled where the file cannot be read on
   */
  Row next();
}
