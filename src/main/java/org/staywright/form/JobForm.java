package org.staywright.form;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.PERCENT;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.staywright.fit.Job;
import org.staywright.fit.RankBy;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/** A job from its JSON: every fault at once, or the job in SI. */
public final class JobForm {

  /** Where the fields of a flap's faults stand in the document. */
  private static final Map<String, String> FLAP_FIELDS =
      Map.of(
          "handle", "/load/handleMm",
          "frame", "/mounts/frameMm",
          "moving", "/mounts/movingMm");

  private static final List<String> GEOMETRY =
      List.of(
          "/load/handleMm/x",
          "/load/handleMm/y",
          "/load/opens",
          "/load/openingAngleDeg",
          "/mounts/frameMm/x",
          "/mounts/frameMm/y",
          "/mounts/movingMm/x",
          "/mounts/movingMm/y",
          "/mounts/lateralOffsetMm");

  private final JsonNode tree;

  private JobForm(JsonNode tree) {
    this.tree = tree;
  }

  /** The job a document describes; a refusal names every fault in it. */
  public static Job read(JsonNode document) {
    return new JobForm(withDefaults(document)).job();
  }

  /** The document with every default filled in; a refusal names every fault in it. */
  public static ObjectNode withDefaults(JsonNode document) {
    return withDefaults(new JsonText(document, List.of()));
  }

  /** The body with every default filled in; a refusal names every fault in it. */
  public static ObjectNode withDefaults(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = checked(body.tree(), "#", faults);
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return (ObjectNode) tree;
  }

  /** Every fault of a document; empty where it is sound. */
  public static List<Fault> faults(JsonNode document) {
    List<Fault> faults = new ArrayList<>();
    checked(document, "#", faults);
    return faults;
  }

  private static JsonNode checked(JsonNode document, String at, List<Fault> faults) {
    JsonNode tree = JobShape.JOB.read(document, at, faults);
    if (tree != null) {
      faults.addAll(crossFaults(tree, at));
    }
    return tree;
  }

  /** What is wrong between the fields of a job that stands somewhere in a larger document. */
  static List<Fault> crossFaults(JsonNode tree, String at) {
    return new JobForm(tree).crossFaults().stream().map(f -> f.at(at + f.where())).toList();
  }

  /** What is wrong between fields that are each sound alone. */
  private List<Fault> crossFaults() {
    List<Fault> faults = new ArrayList<>();
    if (GEOMETRY.stream().allMatch(this::given)) {
      for (Fault fault : flap().faults()) {
        String at = FLAP_FIELDS.get(fault.where());
        faults.add(new Fault(at, Place.shown(tree.at(at)), fault.bound(), fault.code()));
      }
    }
    atMost("/conditions/minC", "/conditions/nominalC", faults);
    atMost("/conditions/nominalC", "/conditions/maxC", faults);
    atMost("/load/lightestMassKg", "/load/massKg", faults);
    return faults;
  }

  private void atMost(String lower, String upper, List<Fault> faults) {
    if (given(lower) && given(upper) && number(lower) > number(upper)) {
      String bound = "≤ " + upper.substring(upper.lastIndexOf('/') + 1) + " = " + tree.at(upper);
      faults.add(new Fault(lower, Place.shown(tree.at(lower)), bound, "out-of-order"));
    }
  }

  private Job job() {
    return new Job(
        text("/name"),
        flap(),
        Stream.iterate(0, i -> i + 1)
            .limit(tree.at("/springCounts").size())
            .map(i -> tree.at("/springCounts/" + i).intValue())
            .toList(),
        wish(text("/fittings/rodEnd")),
        wish(text("/fittings/tubeEnd")),
        new Job.Conditions(
            si("/conditions/minC", CELSIUS),
            si("/conditions/nominalC", CELSIUS),
            si("/conditions/maxC", CELSIUS),
            number("/conditions/serviceYears"),
            number("/conditions/cyclesPerYear")),
        new Job.Requirements(
            number("/requirements/maxHandForceN"),
            number("/requirements/minHoldRatio"),
            si("/requirements/compressedReserveMm", MILLIMETRE),
            si("/requirements/extendedReserveMm", MILLIMETRE),
            choice("/requirements/openStop", Job.OpenStop.class),
            tree.at("/requirements/staysShut").booleanValue()),
        new Job.Filters(
            families(),
            given("/filters/finish") ? choice("/filters/finish", Finish.class) : null,
            tree.at("/filters/inStockOnly").booleanValue()),
        choice("/rankBy", RankBy.class),
        tree.at("/limit").intValue());
  }

  /** Whatever is at fault comes out as NaN or null. */
  private HingedFlap flap() {
    return new HingedFlap(
        masses(),
        point("/load/centreOfMassMm"),
        point("/load/handleMm"),
        JobShape.COUNTERCLOCKWISE.equals(text("/load/opens")) ? 1 : -1,
        si("/load/openingAngleDeg", DEGREE),
        si("/load/tiltDeg", DEGREE),
        number("/load/hingeFrictionNm"),
        new Mounts(
            point("/mounts/frameMm"),
            point("/mounts/movingMm"),
            si("/mounts/lateralOffsetMm", MILLIMETRE),
            rodEnd()));
  }

  private Mounts.RodEnd rodEnd() {
    String word = text("/mounts/rodEndAt");
    return word == null ? null : Mounts.RodEnd.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private Masses masses() {
    double nominal = si("/load/massKg", KILOGRAM);
    double lightest =
        given("/load/lightestMassKg") ? si("/load/lightestMassKg", KILOGRAM) : nominal;
    double tolerance = si("/load/massTolerancePercent", PERCENT);
    return new Masses(nominal, nominal * (1 + tolerance), lightest * (1 - tolerance));
  }

  private Set<Family> families() {
    Set<Family> families = EnumSet.noneOf(Family.class);
    for (JsonNode word : tree.at("/filters/families")) {
      families.add(Coded.of(Family.class, word.textValue()).orElseThrow());
    }
    return families;
  }

  /** A type or a number; null for null. */
  static Job.FittingWish wish(String word) {
    if (word == null) {
      return null;
    }
    return Coded.of(FittingType.class, word)
        .map(type -> new Job.FittingWish(type, null))
        .orElseGet(() -> new Job.FittingWish(null, word));
  }

  private <E extends Enum<E> & Coded> E choice(String at, Class<E> type) {
    return Coded.of(type, text(at)).orElse(null);
  }

  private Point point(String at) {
    return new Point(si(at + "/x", MILLIMETRE), si(at + "/y", MILLIMETRE));
  }

  private double si(String at, Unit unit) {
    return unit.si(number(at));
  }

  private double number(String at) {
    return given(at) ? tree.at(at).doubleValue() : Double.NaN;
  }

  private String text(String at) {
    return tree.at(at).textValue();
  }

  private boolean given(String at) {
    JsonNode node = tree.at(at);
    return !node.isMissingNode() && !node.isNull();
  }
}
