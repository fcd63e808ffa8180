package org.staywright.form;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.staywright.fit.Job;
import org.staywright.fit.Knob;
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
   * @param ease a change that costs as little as one spring more, as a share where relative
   */
  private record Place(
      String path, String unit, String step, double ease, boolean relative, boolean asked) {

    Knob knob(ObjectNode tree, BigDecimal from, Range range) {
      double measure = relative ? ease * from.abs().doubleValue() : ease;
      return new Knob(
          path, unit, from, new BigDecimal(step), measure, asked, to -> changed(tree, to, range));
    }

    /** Its dotted name. */
    String field() {
      return path.substring(1).replace('/', '.');
    }

    private Optional<Job> changed(ObjectNode tree, BigDecimal to, Range range) {
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
  private static final List<Place> PLACES =
      List.of(
          mount("/mounts/frameMm/x", "0.1"),
          mount("/mounts/frameMm/x", "-0.1"),
          mount("/mounts/frameMm/y", "0.1"),
          mount("/mounts/frameMm/y", "-0.1"),
          mount("/mounts/movingMm/x", "0.1"),
          mount("/mounts/movingMm/x", "-0.1"),
          mount("/mounts/movingMm/y", "0.1"),
          mount("/mounts/movingMm/y", "-0.1"),
          new Place("/load/massKg", Unit.KILOGRAM.symbol(), "-0.01", 0.05, true, false),
          new Place("/load/openingAngleDeg", Unit.DEGREE.symbol(), "-0.1", 4, false, false),
          new Place("/load/travelMm", Unit.MILLIMETRE.symbol(), "-0.1", 10, false, false),
          new Place("/load/heightTravelMm", Unit.MILLIMETRE.symbol(), "-0.1", 10, false, false),
          new Place("/load/seatMassKg", Unit.KILOGRAM.symbol(), "-0.01", 0.1, true, false),
          asked("/load/sitterMassKg/min", Unit.KILOGRAM.symbol(), "0.1"),
          asked("/requirements/maxHandForceN", Unit.NEWTON.symbol(), "0.1"),
          asked("/requirements/maxHandOpenN", Unit.NEWTON.symbol(), "0.1"),
          asked("/requirements/maxHandCloseN", Unit.NEWTON.symbol(), "0.1"),
          asked("/requirements/minHoldRatio", "", "-0.01"),
          asked("/requirements/risesFromDeg", Unit.DEGREE.symbol(), "0.1", 4),
          asked("/requirements/risesFromMm", Unit.MILLIMETRE.symbol(), "0.1", 10),
          asked("/requirements/maxLatchPushN", Unit.NEWTON.symbol(), "0.1", 10),
          asked("/requirements/maxStopSpeedMmPerS", Unit.MILLIMETRE_PER_SECOND.symbol(), "1"),
          asked("/requirements/maxStopEnergyJ", Unit.JOULE.symbol(), "0.1"),
          asked("/requirements/maxOpeningTimeS", Unit.SECOND.symbol(), "0.01"),
          asked("/requirements/compressedReserveMm", Unit.MILLIMETRE.symbol(), "-0.1"),
          asked("/requirements/extendedReserveMm", Unit.MILLIMETRE.symbol(), "-0.1"));

  private static final List<String> WORDS =
      List.of("/springCounts", "/fittings/rodEnd", "/fittings/tubeEnd");

  private JobKnobs() {}

  private static Place asked(String path, String unit, String step, double ease) {
    return new Place(path, unit, step, ease, false, true);
  }

  /** Every entry of a job that may have to be changed, as JSON pointers. */
  public static List<String> paths() {
    return Stream.concat(PLACES.stream().map(Place::path), WORDS.stream()).distinct().toList();
  }

  private static Place mount(String path, String step) {
    return new Place(path, Unit.MILLIMETRE.symbol(), step, MOUNT_MM, false, false);
  }

  private static Place asked(String path, String unit, String step) {
    return new Place(path, unit, step, 0.15, true, true);
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
