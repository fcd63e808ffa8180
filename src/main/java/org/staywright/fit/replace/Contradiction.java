package org.staywright.fit.replace;

import static org.staywright.fit.replace.Gauge.CENTRES_CLOSED;
import static org.staywright.fit.replace.Gauge.CENTRES_OPEN;
import static org.staywright.fit.replace.Gauge.COMPRESSED_CENTRES;
import static org.staywright.fit.replace.Gauge.COMPRESSED_LENGTH;
import static org.staywright.fit.replace.Gauge.EXPOSED_ROD;
import static org.staywright.fit.replace.Gauge.EXTENDED_CENTRES;
import static org.staywright.fit.replace.Gauge.EXTENDED_LENGTH;
import static org.staywright.fit.replace.Gauge.ROD_DIAMETER;
import static org.staywright.fit.replace.Gauge.STROKE;
import static org.staywright.fit.replace.Gauge.TUBE_DIAMETER;
import static org.staywright.fit.replace.Gauge.TUBE_LENGTH;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Readings that no spring can have together, whatever their stated uncertainty allows.
 *
 * @param wrong reading
 * @param limit what it must not exceed
 * @param less what of the limit it must leave; null for nothing, else wrong = limit − less
 */
public record Contradiction(Gauge wrong, Gauge limit, @Nullable Gauge less) {

  /** Beyond the stated half-widths by so much a sum is no slip of the tape any more, m. */
  private static final double SLACK = 10e-3;

  private static final List<Contradiction> RULES =
      List.of(
          atMost(ROD_DIAMETER, TUBE_DIAMETER),
          atMost(STROKE, EXTENDED_LENGTH),
          atMost(STROKE, EXTENDED_CENTRES),
          atMost(STROKE, EXPOSED_ROD),
          atMost(EXPOSED_ROD, EXTENDED_LENGTH),
          atMost(EXPOSED_ROD, EXTENDED_CENTRES),
          atMost(TUBE_LENGTH, EXTENDED_LENGTH),
          atMost(TUBE_LENGTH, EXTENDED_CENTRES),
          atMost(TUBE_LENGTH, COMPRESSED_LENGTH),
          atMost(TUBE_LENGTH, COMPRESSED_CENTRES),
          atMost(COMPRESSED_LENGTH, EXTENDED_LENGTH),
          atMost(COMPRESSED_LENGTH, EXTENDED_CENTRES),
          atMost(COMPRESSED_CENTRES, EXTENDED_CENTRES),
          atMost(CENTRES_CLOSED, CENTRES_OPEN),
          atMost(CENTRES_OPEN, EXTENDED_CENTRES),
          atMost(COMPRESSED_CENTRES, CENTRES_CLOSED),
          new Contradiction(STROKE, EXTENDED_LENGTH, COMPRESSED_LENGTH),
          new Contradiction(STROKE, EXTENDED_CENTRES, COMPRESSED_CENTRES),
          new Contradiction(EXPOSED_ROD, EXTENDED_LENGTH, TUBE_LENGTH));

  private static Contradiction atMost(Gauge wrong, Gauge limit) {
    return new Contradiction(wrong, limit, null);
  }

  /** All that some readings hold. */
  public static List<Contradiction> in(Measurements old) {
    return RULES.stream().filter(rule -> rule.broken(old)).toList();
  }

  private boolean broken(Measurements old) {
    Reading one = old.size(wrong);
    Reading most = old.size(limit);
    Reading rest = less == null ? new Reading(0, 0) : old.size(less);
    if (one == null || most == null || rest == null) {
      return false;
    }
    double over = one.value() - (most.value() - rest.value());
    double doubt = one.plusMinus() + most.plusMinus() + rest.plusMinus();
    return less == null ? over > doubt : Math.abs(over) > doubt + SLACK;
  }
}
