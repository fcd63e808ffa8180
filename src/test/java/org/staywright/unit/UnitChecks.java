package org.staywright.unit;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/** Units and constants against the published ones. */
public final class UnitChecks {

  /** Rounding of a double, no more. */
  private static final double PERCENT = 1e-12;

  private UnitChecks() {}

  public static List<Check> all() {
    return List.of(
        check("standard gravity gn", Unit.STANDARD_GRAVITY),
        check("standard atmosphere", Unit.ATMOSPHERE),
        check("bar", Unit.BAR.si(1)),
        check("psi (lbf/in2)", Unit.PSI.si(1)),
        check("pound-force", Unit.POUND_FORCE.si(1)),
        check("pound", Unit.POUND.si(1)),
        check("inch", Unit.INCH.si(1)),
        check("kilogram-force", Unit.KILOGRAM_FORCE.si(1)),
        check("lbf in -> N m", Unit.POUND_FORCE_INCH.si(1)),
        check("0 C", Unit.CELSIUS.si(0)));
  }

  private static Check check(String quantity, double ours) {
    CSVRecord row =
        Facts.of("units").stream()
            .filter(each -> each.get("quantity").equals(quantity))
            .findFirst()
            .orElseThrow();
    String source = row.get("source") + "; NIST SP 811 App. B";
    return Check.percent(quantity, row.get("value"), ours, row.get("unit"), PERCENT, source);
  }
}
