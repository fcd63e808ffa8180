package org.staywright.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.clear.Change;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.mounts.Obstacle;
import org.staywright.unit.Unit;

/** Verdicts in words. */
public final class FitText {

  /** Told in full by its sentence. */
  private static final String YEARS = "a";

  private final Wording wording;

  private FitText(Wording wording) {
    this.wording = wording;
  }

  public static FitText in(Wording wording) {
    return new FitText(wording);
  }

  public String rejection(Rejection rejection) {
    return wording.text("fit.rejection." + rejection.code());
  }

  /** Why a search for mounts found no fit. */
  public String obstacle(Obstacle obstacle) {
    return wording.text(
        "mounts.obstacle." + obstacle.code().code(),
        wording.quantity(obstacle.needed(), Unit.MILLIMETRE, 0),
        wording.quantity(obstacle.has(), Unit.MILLIMETRE, 0));
  }

  /**
   * What is missed, with as many decimals as it takes to tell what is asked in full and the two
   * numbers apart.
   *
   * @param unit of both, null for a plain ratio
   */
  public String blocker(Blocker blocker, Unit unit) {
    int decimals = wording.decimals(blocker.needed(), unit, blocker.criterion().decimals());
    while (decimals < 6
        && shown(blocker.needed(), unit, decimals).equals(has(blocker, unit, decimals))) {
      decimals++;
    }
    if (Double.isNaN(blocker.has())) {
      return wording.text(
          "fit.blocker.never." + blocker.criterion().code(),
          shown(blocker.needed(), unit, decimals(blocker.needed(), unit)));
    }
    String key = "fit.blocker.below." + blocker.criterion().code();
    return blocker.has() < 0 && wording.knows(key)
        ? wording.text(
            key,
            shown(blocker.needed(), unit, decimals),
            wording.quantity(-blocker.has(), unit, decimals, RoundingMode.CEILING))
        : wording.text(
            "fit.blocker." + blocker.criterion().code(),
            shown(blocker.needed(), unit, decimals),
            has(blocker, unit, decimals));
  }

  /** All that a part misses, one after another. */
  public String blockers(List<Blocker> blockers, Function<Blocker, Unit> unit) {
    return blockers.stream()
        .map(each -> blocker(each, unit.apply(each)))
        .collect(Collectors.joining("; "));
  }

  private String has(Blocker blocker, Unit unit, int decimals) {
    return wording.quantity(
        blocker.has(), unit, decimals, FigureText.rounding(blocker.criterion()));
  }

  private static int decimals(double si, Unit unit) {
    return unit == null ? 2 : Math.abs(unit.of(si) - Math.rint(unit.of(si))) > 0.05 ? 1 : 0;
  }

  /** What would have to be changed for a part to fit. */
  public String change(Change change) {
    String key = "fit.change." + change.path().substring(1).replace('/', '.');
    if (change.by().isEmpty()) {
      return wording.text(key, change.to());
    }
    BigDecimal by = change.by().get();
    return wording.text(
        key + (by.signum() > 0 ? ".more" : ".less"),
        shown(by.abs(), change.unit()),
        shown((BigDecimal) change.to(), change.unit()));
  }

  /** The condition from which on a part holds that nothing clears. */
  public String holdsFrom(Change condition) {
    BigDecimal to = (BigDecimal) condition.to();
    return wording.text(
        "fit.holds-from." + condition.path().substring(1).replace('/', '.'),
        condition.unit().equals(YEARS)
            ? wording.exact(to.stripTrailingZeros())
            : shown(to, condition.unit()));
  }

  private String shown(BigDecimal number, String symbol) {
    Unit unit = Unit.of(symbol).orElse(null);
    if (unit != null && wording.units().instead(unit) != unit) {
      return wording.measure(unit.si(number.doubleValue()), unit, 1);
    }
    return metric(number, symbol);
  }

  private String metric(BigDecimal number, String unit) {
    String joint = unit.isEmpty() || unit.equals(Unit.DEGREE.symbol()) ? "" : "\u00a0";
    return wording.exact(number.stripTrailingZeros()) + joint + unit;
  }

  private String shown(double si, Unit unit, int decimals) {
    return wording.quantity(si, unit, decimals, RoundingMode.HALF_UP);
  }
}
