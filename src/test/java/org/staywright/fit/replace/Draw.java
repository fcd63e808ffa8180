package org.staywright.fit.replace;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.part.Column;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * A spring of the range as a fitter might have measured it: every field there or not by chance,
 * every reading off by a normal error of the stated width. What a flap leaves to spare is drawn
 * evenly, not as the finder assumes it.
 *
 * @param row that it is
 * @param old what was measured of it
 */
record Draw(int row, Measurements old) {

  /** 95 % half-widths of calliper and tape at their best, m, and of a label, share. */
  private static final double CALLIPER = 0.2e-3;

  private static final double TAPE = 2e-3;
  private static final double STROKE = 3e-3;
  private static final double LABEL = 0.04;

  private static final List<FittingType> ENDS =
      List.of(FittingType.BALL_SOCKET, FittingType.EYELET, FittingType.CLEVIS);

  static Draw of(Range range, Random random) {
    while (true) {
      int row = random.nextInt(range.size());
      Draw draw = new Draw(row, new Hand(range, row, random).measured());
      if (draw.old.sizes().size() >= 2) {
        return draw;
      }
    }
  }

  /** Somebody who measures. */
  private static final class Hand {

    private final Range range;
    private final int row;
    private final Random random;
    private final Fitting rod;
    private final Fitting tube;
    private final double care;
    private final double rough;
    private final Map<Gauge, Reading> sizes = new EnumMap<>(Gauge.class);

    Hand(Range range, int row, Random random) {
      this.range = range;
      this.row = row;
      this.random = random;
      Part.Ends ends = range.ends(row);
      this.rod = one(all(ends.rod()));
      this.tube = one(all(ends.tube()));
      this.care = 0.15 + 0.45 * random.nextDouble();
      this.rough = 1 + 3 * random.nextDouble();
    }

    Measurements measured() {
      double extended = at(Column.EXTENDED_LENGTH);
      double compressed = at(Column.COMPRESSED_LENGTH);
      double reach = rod.lengthToCentre() + tube.lengthToCentre();
      size(Gauge.ROD_DIAMETER, at(Column.ROD_DIAMETER), CALLIPER / 2);
      size(Gauge.TUBE_DIAMETER, at(Column.TUBE_DIAMETER), CALLIPER);
      size(Gauge.STROKE, at(Column.STROKE), STROKE);
      size(Gauge.EXPOSED_ROD, at(Column.STROKE), TAPE);
      size(Gauge.TUBE_LENGTH, compressed, TAPE);
      if (random.nextBoolean()) {
        size(Gauge.EXTENDED_LENGTH, extended, TAPE);
        size(Gauge.COMPRESSED_LENGTH, compressed, TAPE);
      } else {
        size(Gauge.EXTENDED_CENTRES, extended + reach, TAPE);
        size(Gauge.COMPRESSED_CENTRES, compressed + reach, TAPE);
      }
      size(Gauge.CENTRES_CLOSED, compressed + reach + spare(), STROKE);
      size(Gauge.CENTRES_OPEN, extended + reach - spare(), STROKE);
      if (seen()) {
        double force = at(Column.FORCE);
        sizes.put(Gauge.PRINTED_FORCE, new Reading(force, LABEL * force));
      }
      return new Measurements(
          sizes,
          seen() && ball() > 0 ? read(ball(), CALLIPER) : null,
          seen() ? new FittingWish(rod.type(), null) : null,
          seen() ? new FittingWish(tube.type(), null) : null,
          seen() ? range.ends(row).rod() : null,
          seen() ? range.finish(row) : null,
          seen() ? at(Column.END_ZONE) > 0 : null,
          null,
          null,
          1,
          null);
    }

    private boolean seen() {
      return random.nextDouble() < care;
    }

    private double ball() {
      return Math.max(rod.ballDiameter(), tube.ballDiameter());
    }

    /** 2 to 25 mm. */
    private double spare() {
      return 2e-3 + 23e-3 * random.nextDouble();
    }

    private double at(Column column) {
      return range.column(column)[row];
    }

    private void size(Gauge gauge, double actual, double plusMinus) {
      if (seen()) {
        sizes.put(gauge, read(actual, rough * plusMinus));
      }
    }

    private Reading read(double actual, double plusMinus) {
      return new Reading(actual + plusMinus / 2 * random.nextGaussian(), plusMinus);
    }

    private List<Fitting> all(String thread) {
      return ENDS.stream()
          .flatMap(
              type ->
                  FittingChoice.of(range.fittings(), new FittingWish(type, null), thread).stream())
          .toList();
    }

    private Fitting one(List<Fitting> fittings) {
      return fittings.get(random.nextInt(fittings.size()));
    }
  }
}
