package org.staywright.fit.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Outcome;

/** What a job asks of every part: its criteria with their limits, worked out once. */
public final class Criteria {

  private final Job job;
  private final Bare bare;
  private final List<Criterion> asked = new ArrayList<>();
  private final List<Double> needed = new ArrayList<>();
  private final List<Criterion> counted = new ArrayList<>();
  private final List<Double> from = new ArrayList<>();

  /**
   * @param bare the load without a spring, null while it is judged itself and under a seat
   */
  Criteria(Job job, Bare bare) {
    this(job, bare, criterion -> true);
  }

  private Criteria(Job job, Bare bare, Predicate<Criterion> looked) {
    this.job = job;
    this.bare = bare;
    for (Criterion criterion : Criterion.values()) {
      if (criterion.inTime() || !looked.test(criterion)) {
        continue;
      }
      Double limit = criterion.asked(job, bare);
      if (limit != null) {
        asked.add(criterion);
        needed.add(limit);
      }
      Double start = criterion.marginFrom(job, bare);
      if (start != null) {
        counted.add(criterion);
        from.add(start);
      }
    }
  }

  public static Criteria of(Job job) {
    return new Paths(job).criteria();
  }

  /** The same for a look that does not know where the travel ends: never stricter. */
  public static Criteria roughly(Job job) {
    boolean known = job.requirements().openStop() == Job.OpenStop.FLAP_STOP;
    return new Criteria(job, new Paths(job).bare(), each -> known || !each.atTheEnd());
  }

  /** Of what is asked only what a few samples of a travel tell. */
  public static Criteria telling(Job job) {
    return new Criteria(job, null, Criterion::telling);
  }

  /** All that is asked of it beside what it has, what a motion must tell last. */
  public static List<Kept> kept(Job job, Fit fit) {
    List<Kept> kept = new ArrayList<>(of(job).kept(fit.outcome()));
    kept.addAll(Opening.kept(job, fit));
    return kept;
  }

  /** What is asked beside what it has, motions aside. */
  public List<Kept> kept(Outcome outcome) {
    List<Kept> kept = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      Criterion criterion = asked.get(i);
      Extreme worst = criterion.worst(outcome);
      kept.add(
          new Kept(
              criterion,
              needed.get(i),
              criterion.has(bare, outcome),
              worst == null ? null : worst.corner()));
    }
    return kept;
  }

  /** What is missed, motions aside. */
  public List<Blocker> missed(Outcome outcome) {
    List<Blocker> missed = new ArrayList<>(0);
    for (int i = 0; i < asked.size(); i++) {
      Criterion criterion = asked.get(i);
      double limit = needed.get(i);
      double has = criterion.has(bare, outcome);
      if (!criterion.met(limit, has)) {
        missed.add(new Blocker(criterion, limit, has, criterion.miss(job, outcome, limit, has)));
      }
    }
    return missed;
  }

  /** Whether the load alone meets all that can be asked of it. */
  boolean metByTheLoad(Figures load) {
    for (int i = 0; i < asked.size(); i++) {
      Criterion criterion = asked.get(i);
      boolean met =
          criterion.ofTheLoad() && criterion.met(needed.get(i), criterion.has(bare, load));
      if (!met && !criterion.ofTheLengths()) {
        return false;
      }
    }
    return true;
  }

  /** The least margin to what is asked, each in its own measure. */
  public double margin(Outcome outcome) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < counted.size(); i++) {
      Criterion criterion = counted.get(i);
      least = Math.min(least, criterion.margin(from.get(i), criterion.has(bare, outcome)));
    }
    return least;
  }

  /**
   * Whether what a part is said to have may be off by so much that it could decide.
   *
   * @param error by criterion
   */
  public boolean doubtful(Outcome outcome, ToDoubleFunction<Criterion> error) {
    for (int i = 0; i < asked.size(); i++) {
      Criterion criterion = asked.get(i);
      double apart = Math.abs(criterion.has(bare, outcome) - needed.get(i));
      if (apart <= error.applyAsDouble(criterion)) {
        return true;
      }
    }
    return false;
  }
}
