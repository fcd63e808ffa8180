package org.staywright.part;

import static org.staywright.part.PressureDirective.Standing.CATEGORY_I;
import static org.staywright.part.PressureDirective.Standing.CATEGORY_II;
import static org.staywright.part.PressureDirective.Standing.CATEGORY_III;
import static org.staywright.part.PressureDirective.Standing.OUTSIDE;
import static org.staywright.part.PressureDirective.Standing.SOUND_PRACTICE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;
import org.staywright.part.PressureDirective.Standing;

/** Thresholds of published texts, found again by looking for where our finding changes. */
public final class LawChecks {

  private final List<Check> checks = new ArrayList<>();

  private LawChecks() {}

  public static List<Check> all() {
    LawChecks law = new LawChecks();
    law.directive();
    law.transport();
    return law.checks;
  }

  private void directive() {
    add("PED scope", "PS > ([\\d.]+) bar", "bar", bar -> at(1, bar) == OUTSIDE);
    String group2 = "PED gas group 2 vessel";
    add(group2, "V > ([\\d.]+) L", "L", litres -> at(litres, 100) == SOUND_PRACTICE);
    add(group2, "PS\\*V > ([\\d.]+) bar L", "bar L", most(5, SOUND_PRACTICE));
    add(group2, "PS > ([\\d.]+) bar", "bar", bar -> at(0.5, bar) == SOUND_PRACTICE);
    add("PED V <= 0.1 L", "PS <= ([\\d.]+) bar", "bar", bar -> at(0.1, bar) == SOUND_PRACTICE);
    String lines = "PED Table 2 category I/II/III/IV lines";
    add(lines, "I <= ([\\d.]+) <", "bar L", most(5, CATEGORY_I));
    add(lines, "II <= ([\\d.]+) <", "bar L", most(5, CATEGORY_II));
    add(lines, "III <= ([\\d.]+) <", "bar L", most(5, CATEGORY_III));
    String small = "PED Table 2 V<=1 L";
    add(small, "< PS <= ([\\d.]+) bar", "bar", bar -> at(1, bar).compareTo(CATEGORY_III) <= 0);
  }

  private void transport() {
    add("ADR SP283 capacity", "<= ([\\d.]+) L", "L", litres -> goes(litres, 10));
    add("ADR SP283 pressure", "<= ([\\d.]+) bar", "bar", bar -> goes(0.1, bar));
    add("ADR SP283 product", "<= ([\\d.]+)", "bar L", product -> goes(1, product));
    add(
        "ADR SP283 burst",
        "capacity <= ([\\d.]+) L",
        "L",
        litres -> new Transport(litres * 1e-3, 1e5).burstFactor() == 4);
    String us = "49 CFR 173.306(f)(4)(i)-(iv)";
    add(us, "gas space <= ([\\d.]+) L", "L", litres -> goes(litres, 10));
    add(us, "charge <= ([\\d.]+) bar", "bar", bar -> goes(0.1, bar));
    add(us, "product <= ([\\d.]+);", "bar L", product -> goes(1, product));
  }

  private static Standing at(double litres, double bar) {
    return new PressureDirective(litres * 1e-3, bar * 1e5).standing();
  }

  /** Products of a vessel of some litres that reach no further than a standing. */
  private static DoublePredicate most(double litres, Standing standing) {
    return product -> at(litres, product / litres).compareTo(standing) <= 0;
  }

  private static boolean goes(double litres, double bar) {
    return new Transport(litres * 1e-3, bar * 1e5).withinFigures();
  }

  /** The greatest figure for which our finding still holds, against the published one. */
  private void add(String item, String pattern, String unit, DoublePredicate holds) {
    CSVRecord row =
        Facts.of("regulations").stream()
            .filter(fact -> fact.get("item").equals(item))
            .findFirst()
            .orElseThrow();
    Matcher published = Pattern.compile(pattern).matcher(row.get("content"));
    if (!published.find()) {
      throw new IllegalArgumentException(item + ": no " + pattern);
    }
    String provision = row.get("provision");
    boolean seen = row.get("seen").equals("yes");
    String source = provision + (seen ? ": " + row.get("source") : " (from memory)");
    checks.add(
        Check.percent(item + ", " + unit, published.group(1), boundary(holds), unit, 1e-9, source));
  }

  private static double boundary(DoublePredicate holds) {
    double low = 0.1;
    double high = 1e5;
    while (high - low > 1e-13 * high) {
      double middle = (low + high) / 2;
      if (holds.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
