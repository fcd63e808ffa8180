package org.staywright.web.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.form.table.RowFault;
import org.staywright.stock.intake.Checked;
import org.staywright.stock.intake.Imports;
import org.staywright.web.shell.Preference;
import org.staywright.wording.Wording;

/** What came of a file, as it is sent. */
final class ImportJson {

  private ImportJson() {}

  static ObjectNode of(Imports.Outcome outcome) {
    Checked checked = outcome.checked();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", outcome.id());
    json.put("revision", outcome.revision() == 0 ? null : outcome.revision());
    json.put("rows", checked.rows());
    json.put("accepted", checked.accepted());
    json.put("added", checked.change().added());
    json.put("changed", checked.change().changed());
    json.put("unchanged", checked.change().same());
    json.put("gone", checked.change().gone());
    json.put("faultCount", checked.faultCount());
    list(json.putArray("faults"), checked.faults());
    json.put(
        "faultsFile",
        checked.clean() ? null : "/api/v1/stock/imports/" + outcome.id() + "/faults.csv");
    ObjectNode derived = json.putObject("derived");
    checked.derived().forEach(derived::put);
    columns(json.putArray("columns"), checked.columns());
    ArrayNode preview = json.putArray("preview");
    for (Checked.Understood each : checked.preview()) {
      ObjectNode row = preview.addObject().put("row", each.row());
      ObjectNode values = row.putObject("values");
      each.values().forEach(values::put);
      ArrayNode made = row.putArray("derived");
      each.derived().forEach(made::add);
    }
    return json;
  }

  private static void columns(ArrayNode list, List<ColumnPlan.Matched> columns) {
    for (ColumnPlan.Matched each : columns) {
      ObjectNode column = list.addObject().put("header", each.header());
      boolean taken = each.meaning() != null;
      boolean measured = taken && each.meaning().unit() != null;
      column.put("column", taken ? each.meaning().column().name() : null);
      column.put("unit", measured ? each.meaning().unit().symbol() : null);
      column.put("unknown", each.unknown());
    }
  }

  static void list(ArrayNode list, List<RowFault> faults) {
    Wording wording = Preference.now().metric();
    for (RowFault each : faults) {
      ObjectNode fault = list.addObject().put("row", each.row());
      fault.put("column", each.fault().where());
      fault.put("value", Objects.toString(each.fault().value(), null));
      fault.put("expected", each.fault().bound());
      fault.put("code", each.fault().code());
      fault.put("detail", wording.fault(each.fault()));
    }
  }
}
