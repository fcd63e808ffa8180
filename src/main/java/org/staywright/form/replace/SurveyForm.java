package org.staywright.form.replace;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;

import java.util.List;
import java.util.Map;
import org.staywright.fit.replace.FlapForce;
import org.staywright.fit.replace.FlapReading;
import org.staywright.fit.replace.FlapSurvey;
import org.staywright.fit.replace.Gauge;
import org.staywright.fit.replace.Reading;
import org.staywright.form.job.JobTree;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/** A flap measured because nobody knows the force of its springs. */
final class SurveyForm {

  static final String NAME = "flap";

  private static final String PROPPED = "/flap/propped";

  /** 95 % half-widths without others given: our assumptions, no source. */
  private static final double SCALE = 0.05;

  private static final double TAPE_MM = 3;
  private static final double TAPE_TO_HANDLE_MM = 5;
  private static final double LEVEL_DEG = 1.5;
  private static final double MEMORY_DEG = 8;

  private static final Amount LENGTH = Amount.positive(5000, MILLIMETRE);
  private static final Amount DOUBT = Amount.between(0.01, 500, MILLIMETRE);
  private static final Amount SLOPE = Amount.between(-90, 180, DEGREE);
  private static final Amount TILT = Amount.between(0.01, 30, DEGREE);
  private static final List<String> AT_THE_SPRING = List.of("centresOpenMm", "centresClosedMm");

  static final Shape SHAPE =
      Shape.of(
          "measured-flap",
          required("propped", new Flag()),
          required("frameMountMm", length("frame-mount-reading", TAPE_MM)),
          required("movingMountMm", length("moving-mount-reading", TAPE_MM)),
          required("closedSlopeDeg", slope("closed-slope-reading", LEVEL_DEG)),
          required("openSlopeDeg", slope("open-slope-reading", LEVEL_DEG)),
          required("handleMm", length("handle-reading", TAPE_TO_HANDLE_MM)),
          withDefault("unit", ReplacementShape.FORCE_UNIT, "N"),
          required("first", held("first-held")),
          required("second", held("second-held")),
          optional("risesFromDeg", slope("rises-reading", MEMORY_DEG)));

  private SurveyForm() {}

  /** Of a page's fields: the whole left out where nothing of it was measured. */
  static void tidy(Map<String, List<String>> values) {
    boolean measured =
        values.keySet().stream()
            .anyMatch(name -> name.startsWith(NAME + ".") && name.endsWith(".value"));
    if (!measured) {
      values.keySet().removeIf(name -> name.startsWith(NAME + "."));
    } else {
      values.putIfAbsent(NAME + ".propped", List.of("false"));
    }
  }

  private static Shape length(String name, double plusMinus) {
    return Shape.of(name, required("value", LENGTH), withDefault("plusMinus", DOUBT, plusMinus));
  }

  private static Shape slope(String name, double plusMinus) {
    return Shape.of(name, required("value", SLOPE), withDefault("plusMinus", TILT, plusMinus));
  }

  /** What a scale carries, and the slope of the flap meanwhile. */
  private static Shape held(String name) {
    return Shape.of(
        name,
        required(
            "force",
            Shape.of(
                name + "-force",
                required("value", ReplacementShape.FORCE),
                optional("plusMinus", ReplacementShape.FORCE))),
        required("slopeDeg", slope(name + "-slope", LEVEL_DEG)));
  }

  /**
   * The force that the flap asks of each spring; null where none was measured.
   *
   * @param sizes at the spring and its mounts
   * @param faults takes what contradicts itself
   */
  static FlapForce read(JobTree tree, Map<Gauge, Reading> sizes, int springs, List<Fault> faults) {
    if (!tree.given("/" + NAME)) {
      return null;
    }
    if (!tree.flag(PROPPED)) {
      faults.add(new Fault("#" + PROPPED, false, "true", "not-propped"));
      return null;
    }
    if (!sizes.containsKey(Gauge.CENTRES_OPEN)) {
      faults.add(new Fault("#/centresOpenMm", null, LENGTH.bound().text(), "missing"));
      return null;
    }
    FlapSurvey survey =
        new FlapSurvey(
            springs,
            length(tree, "handleMm"),
            slope(tree, "closedSlopeDeg"),
            slope(tree, "openSlopeDeg"),
            held(tree, "first"),
            held(tree, "second"),
            length(tree, "frameMountMm"),
            length(tree, "movingMountMm"),
            sizes.get(Gauge.CENTRES_OPEN),
            sizes.get(Gauge.CENTRES_CLOSED),
            tree.given(at("risesFromDeg")) ? slope(tree, "risesFromDeg") : null);
    try {
      return FlapForce.of(survey);
    } catch (Refusal contradiction) {
      contradiction.faults().forEach(fault -> faults.add(fault.at("#" + place(fault.where()))));
      return null;
    }
  }

  private static String place(String field) {
    return AT_THE_SPRING.contains(field) ? "/" + field : at(field);
  }

  private static String at(String field) {
    return "/" + NAME + "/" + field;
  }

  private static Reading length(JobTree tree, String field) {
    return reading(tree, at(field), MILLIMETRE);
  }

  private static Reading slope(JobTree tree, String field) {
    return reading(tree, at(field), DEGREE);
  }

  private static Reading reading(JobTree tree, String at, Unit unit) {
    return new Reading(tree.si(at + "/value", unit), tree.si(at + "/plusMinus", unit));
  }

  private static FlapReading held(JobTree tree, String name) {
    Unit unit = ReplacementShape.unit(tree.text(at("unit")));
    String at = at(name + "/force");
    double force = tree.si(at + "/value", unit);
    double off = tree.given(at + "/plusMinus") ? tree.si(at + "/plusMinus", unit) : SCALE * force;
    return new FlapReading(new Reading(force, off), slope(tree, name + "/slopeDeg"));
  }
}
