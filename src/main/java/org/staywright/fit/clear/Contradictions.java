package org.staywright.fit.clear;

import static org.staywright.fit.job.Criterion.HOLD_OPEN;
import static org.staywright.fit.job.Criterion.LATCH_PUSH;
import static org.staywright.fit.job.Criterion.ONE_FAILED;
import static org.staywright.fit.job.Criterion.RISES;
import static org.staywright.fit.job.Criterion.STAYS_SHUT;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.assess.Alongside;
import org.staywright.fit.job.Ask;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.Still;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Travel;
import org.staywright.part.Family;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * What a job asks and no part whatever could do: two things that exclude each other, or one that
 * the load itself rules out. Places are JSON pointers in the job, bounds in the units of its
 * fields; what was given stands in the document.
 */
public final class Contradictions {

  private static final String AT = "/requirements/";
  private static final int DECIMALS = 1;

  private final Job job;
  private final Requirements asked;
  private final Travel travel;
  private final List<Fault> found = new ArrayList<>();

  private Contradictions(Job job) {
    this.job = job;
    asked = job.requirements();
    travel = job.mechanism().travel(job.mechanism().end());
  }

  /** None under a seat, where nothing asked depends on anything else. */
  public static List<Fault> of(Job job) {
    List<Fault> found = wherever(job);
    if (job.mechanism().handMoves()) {
      Contradictions on = new Contradictions(job);
      on.shut();
      found.addAll(on.found);
    }
    return found;
  }

  /** Those that no other mounts could mend. */
  public static List<Fault> wherever(Job job) {
    if (!job.mechanism().handMoves()) {
      return new ArrayList<>();
    }
    Contradictions any = new Contradictions(job);
    any.holding();
    any.rising();
    any.failing();
    return any.found;
  }

  /** Whoever closes it overcomes what holds it open, and the friction of the load besides. */
  private void holding() {
    Double hold = asked.limit(HOLD_OPEN);
    double most = asked.handCloseLimit() - travel.friction() / travel.hand();
    if (hold != null && hold > most) {
      add(HOLD_OPEN, "≤ " + newtons(Math.max(0, most), RoundingMode.DOWN), "hold-above-hand");
    }
  }

  private void rising() {
    Double from = asked.limit(RISES);
    Still still = asked.still();
    double to = still == null || still.to() == null ? job.mechanism().end() : still.to();
    if (from != null && still != null && to > from) {
      add(RISES, "≥ " + place(to), "rises-where-it-stays");
    }
    if (from != null && asked.asks(STAYS_SHUT) && from <= travel.q()[0]) {
      add(RISES, "> " + place(travel.q()[0]), "rises-though-shut");
    }
  }

  /** With none of one left, the load must stay open alone. Only where the travel is its own. */
  private void failing() {
    boolean single = job.counts().stream().allMatch(count -> count == 1);
    if (!asked.asks(ONE_FAILED) || !single || asked.openStop() != Job.OpenStop.FLAP_STOP) {
      return;
    }
    if (least(travel.last()) <= 0) {
      found.add(new Fault("/springCounts", null, "≥ 2", "one-failed-leaves-none"));
    }
  }

  /** Where the load opens by itself and every spring asked for helps it to. */
  private void shut() {
    boolean held =
        job.filters().families().stream().anyMatch(family -> sense(family) * travel.lever()[0] < 0);
    double opening = most(0) / travel.hand();
    if (held || opening <= 0) {
      return;
    }
    String newtons = newtons(opening, RoundingMode.UP);
    if (asked.asks(STAYS_SHUT)) {
      add(STAYS_SHUT, "> " + newtons, "opens-by-itself");
    }
    Double push = asked.limit(LATCH_PUSH);
    if (push != null && push < opening) {
      add(LATCH_PUSH, "≥ " + newtons, "pushes-by-itself");
    }
  }

  private static int sense(Family family) {
    return family == Family.TRACTION_SPRING ? -1 : 1;
  }

  /** What opens at a sample without the springs, least of all corners, N·m or N. */
  private double least(int sample) {
    return -extreme(sample, -1);
  }

  private double most(int sample) {
    return extreme(sample, 1);
  }

  private double extreme(int sample, int sign) {
    Alongside along = Alongside.of(job, travel);
    return Corner.ALL.stream()
        .mapToDouble(
            corner ->
                sign * (along.push(corner.spring())[sample] + corner.load().of(travel)[sample]))
        .max()
        .orElseThrow();
  }

  private void add(Criterion criterion, String bound, String code) {
    found.add(new Fault(AT + field(criterion), null, bound, code));
  }

  /** Of two fields for places on the way the one in the unit of the travel. */
  private String field(Criterion criterion) {
    List<Ask> asks = criterion.asks();
    return asks.get(turns() ? 0 : asks.size() - 1).field();
  }

  private boolean turns() {
    return job.mechanism().movement() == Mechanism.Movement.TURNS;
  }

  private String place(double q) {
    Unit unit = turns() ? Unit.DEGREE : Unit.MILLIMETRE;
    return text(unit.of(q), RoundingMode.UP) + " " + unit.symbol();
  }

  private static String newtons(double force, RoundingMode rounding) {
    return text(force, rounding) + " " + Unit.NEWTON.symbol();
  }

  private static String text(double number, RoundingMode rounding) {
    // Without the noise of conversion, which would round a whole number up.
    BigDecimal exact = new BigDecimal(number).setScale(9, RoundingMode.HALF_EVEN);
    return exact.setScale(DECIMALS, rounding).stripTrailingZeros().toPlainString();
  }
}
