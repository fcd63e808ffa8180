package org.staywright.stock.intake;

import java.util.HashMap;
import java.util.Map;

/**
 * How a file is to be taken.
 *
 * @param update whether what the file does not name stays in the range
 * @param hysteresis whether its friction is F3 − F1 rather than half of it
 * @param meanings of columns where other than their names say, by header or place
 */
public record ImportOptions(boolean update, boolean hysteresis, Map<String, String> meanings) {

  public static final String UPDATE = "update";
  public static final String DIFFERENCE = "difference";

  public ImportOptions {
    meanings = Map.copyOf(meanings);
  }

  /**
   * As they are asked for.
   *
   * @param columns "Hub=stroke_mm;#3=-"
   */
  public static ImportOptions of(String mode, String friction, String columns) {
    Map<String, String> meanings = new HashMap<>();
    for (String pair : columns.split(";")) {
      int equals = pair.lastIndexOf('=');
      if (equals > 0) {
        meanings.put(pair.substring(0, equals).strip(), pair.substring(equals + 1).strip());
      }
    }
    return new ImportOptions(UPDATE.equals(mode), DIFFERENCE.equals(friction), meanings);
  }
}
