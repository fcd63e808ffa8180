package org.staywright.form;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.staywright.fit.Criterion;
import org.staywright.fit.Job;
import org.staywright.fit.Knob;
import org.staywright.fit.Yield;
import org.staywright.part.Range;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * The numbers of a job that could be changed to make a near part fit. A changed job is read from
 * the changed document, so that what is found holds for whoever sends that document.
 */
public final class JobKnobs {

  /**
   * @param path of a number in the document
   * @param unit of it
   * @param step smallest change worth telling apart
   * @param ease a change that costs as little as one spring more; of a requirement a share of it
   * @param yield of a requirement, null for what is built
   */
  private record Place(String path, String unit, BigDecimal step, double ease, Yield yield) {

    Knob knob(ObjectNode tree, BigDecimal from, Range range) {
      boolean asked = yield != null;
      double measure = asked ? ease * from.abs().doubleValue() : ease;
      return new Knob(path, unit, from, step, measure, asked, to -> changed(tree, to, range));
    }

    /** Its dotted name. */
    String field() {
      return path.substring(1).replace('/', '.');
    }

    private Optional<Job> changed(ObjectNode tree, BigDecimal to, Range range) {
      if (yield != null && yield.floor() != null && to.doubleValue() < yield.floor()) {
        return Optional.empty();
      }
      JsonPointer pointer = JsonPointer.compile(path);
      ObjectNode copy = tree.deepCopy();
      ObjectNode parent = (ObjectNode) copy.at(pointer.head());
      parent.put(pointer.last().getMatchingProperty(), to);
      try {
        return Optional.of(JobForm.read(copy, range));
      } catch (Refusal outOfBounds) {
        return Optional.empty();
      }
    }
  }

  private static final double MOUNT_MM = 10;

  /** Share of a requirement that costs as much as one spring more. */
  private static final double ASKED = 0.15;

  /** Mass, tolerance, friction and conditions are as they are; a change of them mends nothing. */
  private static final List<Place> PLACES =
      Stream.concat(
              Stream.of(
                  mount("/mounts/frameMm/x", "0.1"),
                  mount("/mounts/frameMm/x", "-0.1"),
                  mount("/mounts/frameMm/y", "0.1"),
                  mount("/mounts/frameMm/y", "-0.1"),
                  mount("/mounts/movingMm/x", "0.1"),
                  mount("/mounts/movingMm/x", "-0.1"),
                  mount("/mounts/movingMm/y", "0.1"),
                  mount("/mounts/movingMm/y", "-0.1"),
                  built("/load/openingAngleDeg", Unit.DEGREE, "-0.1", 4),
                  built("/load/travelMm", Unit.MILLIMETRE, "-0.1", 10),
                  built("/load/heightTravelMm", Unit.MILLIMETRE, "-0.1", 10)),
              Stream.of(Criterion.values()).flatMap(JobKnobs::asked))
          .toList();

  private static final List<String> WORDS =
      List.of("/springCounts", "/fittings/rodEnd", "/fittings/tubeEnd");

  private JobKnobs() {}

  private static Stream<Place> asked(Criterion criterion) {
    return criterion.yields().stream()
        .flatMap(
            yield ->
                criterion.asks().stream()
                    .map(
                        ask ->
                            new Place(
                                "/requirements/" + ask.field(),
                                ask.bound().unit(),
                                yield.step(),
                                ASKED,
                                yield)));
  }

  /** Every entry of a job that may have to be changed, as JSON pointers. */
  public static List<String> paths() {
    return Stream.concat(PLACES.stream().map(Place::path), WORDS.stream()).distinct().toList();
  }

  private static Place mount(String path, String step) {
    return built(path, Unit.MILLIMETRE, step, MOUNT_MM);
  }

  private static Place built(String path, Unit unit, String step, double ease) {
    return new Place(path, unit.symbol(), new BigDecimal(step), ease, null);
  }

  /**
   * @param tree a sound job with its defaults filled in
   * @param range that it is judged by
   */
  public static List<Knob> of(ObjectNode tree, Range range) {
    Shape shape = JobShape.of(tree.at("/load/type").textValue());
    return PLACES.stream()
        .filter(place -> shape.field(place.field()).isPresent())
        .flatMap(
            place -> {
              JsonNode value = tree.at(place.path());
              return value.isNumber()
                  ? Stream.of(place.knob(tree, value.decimalValue(), range))
                  : Stream.empty();
            })
        .toList();
  }
}
