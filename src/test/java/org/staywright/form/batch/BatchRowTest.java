package org.staywright.form.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.Jobs;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.AnswerJson;
import org.staywright.gas.BeyondEquation;
import org.staywright.gas.Isotherm;
import org.staywright.part.Family;
import org.staywright.part.Range;

class BatchRowTest {

  @Test
  void aJobBeyondTheEquationOfStateIsRefusedWithoutAFaultOfAColumn() {
    BeyondEquation gas = assertThrows(BeyondEquation.class, () -> Isotherm.at(700));
    JsonNode result = AnswerJson.tree(BatchResultAnswer.beyond(3, "lid", gas));
    assertEquals("refused", result.get("verdict").textValue());
    assertFalse(result.has("faults"));
    assertEquals("≥ -60.15 and ≤ 350.85 °C", result.at("/beyond/bound").textValue());
    int blocked = BatchRow.COLUMNS.indexOf("blockedBy");
    assertEquals("beyond-temperature", BatchRow.cells(result).get(blocked));
  }

  private static final Range RANGE = SampleRange.with(Family.SEAT_COLUMN);

  @Test
  void aSeatFillsItsOwnColumnsAndALidItsOwn() {
    ObjectNode seat =
        Jobs.tree(
            """
            {"load": {"type": "seat-column", "seatMassKg": 9,
                      "sitterMassKg": {"min": 45, "max": 120}, "heightTravelMm": 100}}
            """);
    for (ObjectNode tree : new ObjectNode[] {seat, Jobs.lid()}) {
      Job job = JobForm.read(tree);
      BatchResultAnswer answer = BatchResultAnswer.of(7, "it", job, Ranking.of(RANGE, job));
      JsonNode result = AnswerJson.tree(answer);
      List<String> cells = BatchRow.cells(result);
      assertEquals(BatchRow.COLUMNS.size(), cells.size());
      assertEquals("7", cell(cells, "row"));
      assertEquals("true", cell(cells, "springNeeded"));
      boolean seated = tree == seat;
      for (String column : List.of("risesEmptyRatio", "bounceMm.low", "bounceMm.high")) {
        assertEquals(!seated, cell(cells, column).isEmpty(), column);
      }
      for (String column : List.of("handOpenWorstN", "handCloseWorstN", "holdOpenN")) {
        assertEquals(seated, cell(cells, column).isEmpty(), column);
      }
      String high = seated ? "/best/figures/bounceMm/high" : "/best/figures/holdOpenN";
      assertEquals(result.at(high).asText(), cell(cells, seated ? "bounceMm.high" : "holdOpenN"));
    }
  }

  private static String cell(List<String> cells, String column) {
    return cells.get(BatchRow.COLUMNS.indexOf(column));
  }
}
