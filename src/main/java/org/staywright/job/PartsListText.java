package org.staywright.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A parts list as JSON and as CSV.
 *
 * @param list to write
 * @param describe an item in words
 */
public record PartsListText(PartsList list, Function<Item, String> describe) {

  /** All prices are net. */
  private static final String VAT_BASIS = "net";

  /** Spreadsheets take a cell that begins like this for a formula (OWASP, CSV Injection). */
  private static final String FORMULA = "=+-@\t\r\n";

  private static final String[] COLUMNS = {
    "position",
    "part_number",
    "description",
    "kind",
    "quantity",
    "unit_price",
    "line_total",
    "currency",
    "valid_until",
    "vat_basis",
    "lead_time_days",
    "stock",
    "alternate"
  };

  public ObjectNode json() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode lines = json.putArray("lines");
    int position = 1;
    for (OrderLine line : list.lines()) {
      lines
          .addObject()
          .put("position", position++)
          .put("partNumber", line.item().number())
          .put("description", describe.apply(line.item()))
          .put("kind", line.item().kind())
          .put("quantity", line.quantity())
          .put("needed", line.needed())
          .put("unitPrice", line.unitPrice())
          .put("lineTotal", line.total())
          .put("leadTimeDays", line.leadTimeDays())
          .put("stock", line.item().offer().stock())
          .putNull("alternate");
    }
    json.put("total", list.total());
    json.put("currency", list.currency());
    json.put("validUntil", list.validUntil() == null ? null : list.validUntil().toString());
    json.put("vatBasis", VAT_BASIS);
    json.put("leadTimeDays", list.leadTimeDays());
    ArrayNode unmatched = json.putArray("unmatched");
    for (Mate.Missing missing : list.unmatched()) {
      unmatched.addObject().put("kind", missing.type().code()).put("beside", missing.beside());
    }
    return json;
  }

  /** One row a line, by RFC 4180. */
  public String csv() {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord((Object[]) COLUMNS);
      int position = 1;
      for (OrderLine line : list.lines()) {
        csv.printRecord(cells(position++, line));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private List<String> cells(int position, OrderLine line) {
    var price = line.item().offer().price();
    return List.of(
        Integer.toString(position),
        safe(line.item().number()),
        safe(describe.apply(line.item())),
        line.item().kind(),
        Integer.toString(line.quantity()),
        plain(line.unitPrice()),
        plain(line.total()),
        price == null ? "" : safe(price.currency()),
        price == null || price.validUntil() == null ? "" : price.validUntil().toString(),
        VAT_BASIS,
        Integer.toString(line.leadTimeDays()),
        Integer.toString(line.item().offer().stock()),
        "");
  }

  /** Text that no spreadsheet takes for a formula. */
  static String safe(String text) {
    return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  private static String plain(BigDecimal money) {
    return money == null ? "" : money.toPlainString();
  }
}
