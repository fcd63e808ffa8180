package org.staywright.form.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.staywright.fit.clear.Knob;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Yield;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.part.Range;
import org.staywright.unit.Refusal;

/**
 * A number of a job that could be another one: where it stands in the document, and what it does to
 * the job. What comes out is what a document with that number would be read to.
 *
 * @param path in the document
 * @param step smallest change worth telling apart, negative for less
 * @param ease a change that costs as little as one spring more; of a requirement a share of it
 * @param yield of a requirement, null for all else
 * @param turn the job with another number, in SI; null where it may not be that
 */
record Turnable(String path, BigDecimal step, double ease, Yield yield, Turn turn) {

  /** A job with another number in SI, null where it may not be that. */
  interface Turn {
    Job of(Job job, double si);
  }

  /**
   * Those that a job has.
   *
   * @param tree sound, with its defaults filled in
   * @param range that what stands beside its springs is taken from
   */
  static List<Knob> knobs(List<Turnable> places, ObjectNode tree, Range range) {
    Shape shape = JobShape.of(tree.at("/load/type").textValue());
    Job job = JobForm.unchecked(tree);
    return places.stream()
        .flatMap(
            place ->
                shape.field(place.path.substring(1).replace('/', '.')).stream()
                    .filter(field -> tree.at(place.path).isNumber())
                    .map(field -> place.knob(tree, job, (Kind.Amount) field.kind(), range)))
        .toList();
  }

  private Knob knob(ObjectNode tree, Job job, Kind.Amount kind, Range range) {
    BigDecimal from = tree.at(path).decimalValue();
    boolean asked = yield != null;
    return new Knob(
        path,
        kind.bound().unit(),
        from,
        step,
        asked ? ease * from.abs().doubleValue() : ease,
        asked,
        to -> turned(tree, job, kind, to.doubleValue(), range));
  }

  private Optional<Job> turned(ObjectNode tree, Job job, Kind.Amount kind, double to, Range range) {
    boolean givenUp = yield != null && yield.floor() != null && to < yield.floor();
    if (givenUp || !kind.bound().holds(to)) {
      return Optional.empty();
    }
    Job turned = turn.of(job, kind.unit() == null ? to : kind.unit().si(to));
    if (turned == null || !turned.mechanism().faults().isEmpty()) {
      return Optional.empty();
    }
    try {
      // What stands beside the springs may hang on their mounts, and must reach over the travel.
      return Optional.of(BesideForm.added(turned, new JobTree(tree), range));
    } catch (Refusal outOfReach) {
      return Optional.empty();
    }
  }
}
