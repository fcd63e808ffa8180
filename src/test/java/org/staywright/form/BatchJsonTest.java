package org.staywright.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import org.staywright.gas.BeyondEquation;
import org.staywright.gas.Isotherm;

class BatchJsonTest {

  @Test
  void aJobBeyondTheEquationOfStateIsRefusedWithoutAFaultOfAColumn() {
    BeyondEquation gas = assertThrows(BeyondEquation.class, () -> Isotherm.at(700));
    ObjectNode result = BatchJson.beyond(3, "lid", gas);
    assertEquals("refused", result.get("verdict").textValue());
    assertFalse(result.has("faults"));
    assertEquals("≥ -60.15 and ≤ 350.85 °C", result.at("/beyond/bound").textValue());
    int blocked = BatchJson.COLUMNS.indexOf("blockedBy");
    assertEquals("beyond-temperature", BatchJson.cells(result).get(blocked));
  }
}
