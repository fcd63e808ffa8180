package org.staywright.form.batch;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** What comes of one job of many as a row of CSV. */
public final class BatchRow {

  /** Columns of the CSV, members of objects after a dot; a figure that does not apply is empty. */
  public static final List<String> COLUMNS =
      List.of(
          "row",
          "name",
          "verdict",
          "fitsTotal",
          "nearTotal",
          "springNeeded",
          "partNumber",
          "count",
          "score",
          "handOpenWorstN",
          "handCloseWorstN",
          "holdRatioOpen",
          "holdOpenN",
          "risesEmptyRatio",
          "sinksUnderLightestRatio",
          "bounceMm.low",
          "bounceMm.middle",
          "bounceMm.high",
          "setPrice",
          "leadTimeDays",
          "blockedBy");

  private BatchRow() {}

  /** Of a result as it is kept. */
  public static List<String> cells(JsonNode result) {
    List<String> cells = new ArrayList<>();
    JsonNode best = result.path("best");
    for (String column : COLUMNS.subList(0, COLUMNS.size() - 1)) {
      JsonNode value = result.path(column);
      value = value.isMissingNode() ? best.path(column) : value;
      value = value.isMissingNode() ? best.at("/figures/" + column.replace('.', '/')) : value;
      cells.add(value.isNull() ? "" : value.asText());
    }
    List<String> codes = new ArrayList<>();
    best.path("blockedBy").forEach(blocker -> codes.add(blocker.path("code").asText()));
    result.path("faults").forEach(fault -> codes.add(fault.path("code").asText()));
    if (result.has("beyond")) {
      codes.add("beyond-" + result.at("/beyond/quantity").asText());
    }
    cells.add(String.join(" ", codes));
    return cells;
  }
}
