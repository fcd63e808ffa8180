package org.staywright.stock;

import java.util.Map;

/**
 * How a file is to be taken.
 *
 * @param update whether what the file does not name stays in the range
 * @param hysteresis whether its friction is F3 − F1 rather than half of it
 * @param meanings of headers where other than their names say
 */
public record ImportOptions(boolean update, boolean hysteresis, Map<String, String> meanings) {

  public ImportOptions {
    meanings = Map.copyOf(meanings);
  }
}
