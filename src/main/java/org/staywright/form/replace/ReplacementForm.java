package org.staywright.form.replace;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.fit.replace.Contradiction;
import org.staywright.fit.replace.FlapForce;
import org.staywright.fit.replace.Gauge;
import org.staywright.fit.replace.Measurements;
import org.staywright.fit.replace.Reading;
import org.staywright.fit.replace.ScaleReading;
import org.staywright.form.job.JobForm;
import org.staywright.form.job.JobTree;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonNumber;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Shape;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * What is known of an old spring, from its JSON: every fault at once, or the measurements in SI.
 *
 * @param old what was measured, with what the flap asks of a spring where it was surveyed
 * @param flap the same in full, null where it was not
 * @param madeIn year and month, null where unknown
 * @param limit most answers wanted
 */
public record ReplacementForm(Measurements old, FlapForce flap, YearMonth madeIn, int limit) {

  /**
   * A label or a scale without a stated uncertainty, 95 % half-width: our assumption, no source.
   */
  private static final double LABEL = 0.04;

  private static final double SCALE = 0.05;

  private static final Map<String, Gauge> BARE =
      Map.of(
          "rodDiameterMm", Gauge.ROD_DIAMETER,
          "tubeDiameterMm", Gauge.TUBE_DIAMETER,
          "strokeMm", Gauge.STROKE,
          "exposedRodMm", Gauge.EXPOSED_ROD,
          "tubeLengthMm", Gauge.TUBE_LENGTH,
          "centresClosedMm", Gauge.CENTRES_CLOSED,
          "centresOpenMm", Gauge.CENTRES_OPEN);

  /** Fields of the form by their dotted names. */
  public static final Shape SHAPE = ReplacementShape.REPLACEMENT;

  /** Of a form's fields; what hangs on an empty field is left out. */
  public static ReplacementForm typed(Map<String, List<String>> fields) {
    Map<String, List<String>> values = new LinkedHashMap<>(fields);
    values
        .keySet()
        .removeIf(
            name -> name.matches(".*(Mm|flap.*)\\.plusMinus") && !values.containsKey(value(name)));
    values
        .keySet()
        .removeIf(name -> name.endsWith("Mm.measured") && !values.containsKey(value(name)));
    if (!values.containsKey("printedForce.value")) {
      values.keySet().removeIf(name -> name.startsWith("printedForce."));
    }
    if (!values.containsKey("scaleReading.force")) {
      values.keySet().removeIf(name -> name.startsWith("scaleReading."));
    }
    SurveyForm.tidy(values);
    return read(new JsonText(FlatForm.typed(SHAPE, values), List.of()));
  }

  private static String value(String name) {
    return name.substring(0, name.lastIndexOf('.')) + ".value";
  }

  /** A refusal names every fault of the body. */
  public static ReplacementForm read(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = ReplacementShape.REPLACEMENT.read(body.tree(), "#", faults);
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return read(tree);
  }

  /** Of a tree with its defaults; refuses what contradicts itself. */
  private static ReplacementForm read(JsonNode node) {
    JobTree tree = new JobTree(node);
    Map<Gauge, Reading> sizes = sizes(tree);
    int springs = node.get("springCount").intValue();
    List<Fault> faults = new ArrayList<>();
    FlapForce flap = SurveyForm.read(tree, sizes, springs, faults);
    if (flap != null) {
      sizes.put(Gauge.FLAP_FORCE, flap.force().reading());
    }
    Measurements old =
        new Measurements(
            sizes,
            tree.given("/ballDiameterMm") ? reading(tree, "/ballDiameterMm") : null,
            wish(tree, "/rodEnd"),
            wish(tree, "/tubeEnd"),
            thread(tree.text("/rodThread")),
            tree.choice("/finish", Finish.class),
            damped(tree.text("/damping")),
            tree.choice("/family", Family.class),
            tree.given("/scaleReading") ? scale(tree) : null,
            springs,
            tree.given("/handleTravelMm") ? tree.si("/handleTravelMm", MILLIMETRE) : null);
    faults.addAll(faults(old, tree));
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return new ReplacementForm(
        old, flap, month(tree.text("/madeIn")), node.get("limit").intValue());
  }

  /** Years from when it was made to a day, null where nobody knows. */
  public Double years(LocalDate today) {
    if (madeIn == null) {
      return null;
    }
    return Math.max(0, ChronoUnit.MONTHS.between(madeIn, YearMonth.from(today)) / 12.0);
  }

  private static Map<Gauge, Reading> sizes(JobTree tree) {
    Map<Gauge, Reading> sizes = new EnumMap<>(Gauge.class);
    BARE.forEach(
        (name, gauge) -> {
          if (tree.given("/" + name)) {
            sizes.put(gauge, reading(tree, "/" + name));
          }
        });
    length(tree, "/extendedLengthMm", Gauge.EXTENDED_CENTRES, Gauge.EXTENDED_LENGTH, sizes);
    length(tree, "/compressedLengthMm", Gauge.COMPRESSED_CENTRES, Gauge.COMPRESSED_LENGTH, sizes);
    if (tree.given("/printedForce")) {
      sizes.put(Gauge.PRINTED_FORCE, force(tree, "/printedForce", "value", LABEL));
    }
    return sizes;
  }

  private static void length(
      JobTree tree, String at, Gauge centres, Gauge bare, Map<Gauge, Reading> sizes) {
    if (tree.given(at)) {
      boolean through = ReplacementShape.CENTRES.equals(tree.text(at + "/measured"));
      sizes.put(through ? centres : bare, reading(tree, at));
    }
  }

  private static Reading reading(JobTree tree, String at) {
    return new Reading(tree.si(at + "/value", MILLIMETRE), tree.si(at + "/plusMinus", MILLIMETRE));
  }

  private static Reading force(JobTree tree, String at, String name, double share) {
    Unit unit = ReplacementShape.unit(tree.text(at + "/unit"));
    double force = tree.si(at + "/" + name, unit);
    double off = tree.given(at + "/plusMinus") ? tree.si(at + "/plusMinus", unit) : share * force;
    return new Reading(force, off);
  }

  private static ScaleReading scale(JobTree tree) {
    return new ScaleReading(
        force(tree, "/scaleReading", "force", SCALE),
        tree.si("/scaleReading/atCompressionMm", MILLIMETRE),
        tree.si("/scaleReading/temperatureC", CELSIUS),
        tree.choice("/scaleReading/direction", ScaleReading.Direction.class));
  }

  private static FittingWish wish(JobTree tree, String at) {
    return JobForm.wish(tree.text(at));
  }

  /** "m 8" is M8. */
  private static String thread(String typed) {
    return typed == null ? null : typed.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
  }

  private static Boolean damped(String word) {
    return "unknown".equals(word) ? null : Boolean.valueOf("end-damped".equals(word));
  }

  private static YearMonth month(String text) {
    if (text == null) {
      return null;
    }
    int month = text.length() > 4 ? Integer.parseInt(text.substring(5)) : 1;
    return YearMonth.of(Integer.parseInt(text.substring(0, 4)), month);
  }

  private static List<Fault> faults(Measurements old, JobTree tree) {
    List<Fault> faults = new ArrayList<>();
    if (old.sizes().isEmpty() && old.ball() == null && old.scale() == null) {
      String fields = String.join(", ", BARE.keySet().stream().sorted().toList());
      faults.add(new Fault("#", null, fields + ", printedForce, …", "nothing-measured"));
    }
    for (Contradiction found : Contradiction.in(old)) {
      String at = "/" + name(found.wrong());
      faults.add(
          new Fault(
              "#" + at,
              tree.root().at(at + "/value").numberValue(),
              bound(found, old),
              "contradicts"));
    }
    String made = tree.text("/madeIn");
    if (made != null && made.length() > 4 && !made.substring(5).matches("0[1-9]|1[0-2]")) {
      faults.add(new Fault("#/madeIn", made, "YYYY-01 … YYYY-12", "not-of-the-form"));
    }
    Reading stroke = old.size(Gauge.STROKE);
    if (old.scale() != null
        && stroke != null
        && old.scale().compression() > stroke.value() + stroke.plusMinus()) {
      String at = "/scaleReading/atCompressionMm";
      String bound = "≤ " + term(Gauge.STROKE, old);
      faults.add(new Fault("#" + at, tree.root().at(at).numberValue(), bound, "contradicts"));
    }
    return faults;
  }

  private static String bound(Contradiction found, Measurements old) {
    return found.less() == null
        ? "≤ " + term(found.limit(), old)
        : "= " + term(found.limit(), old) + " − " + term(found.less(), old);
  }

  private static String term(Gauge gauge, Measurements old) {
    Reading reading = old.size(gauge);
    return name(gauge)
        + " "
        + JsonNumber.of(reading.value(), MILLIMETRE)
        + " ± "
        + JsonNumber.of(reading.plusMinus(), MILLIMETRE);
  }

  /** Of the field that a gauge is read into. */
  public static String name(Gauge gauge) {
    return switch (gauge) {
      case EXTENDED_LENGTH, EXTENDED_CENTRES -> "extendedLengthMm";
      case COMPRESSED_LENGTH, COMPRESSED_CENTRES -> "compressedLengthMm";
      case PRINTED_FORCE -> "printedForce";
      case FLAP_FORCE -> SurveyForm.NAME;
      default ->
          BARE.entrySet().stream()
              .filter(entry -> entry.getValue() == gauge)
              .map(Map.Entry::getKey)
              .findFirst()
              .orElseThrow();
    };
  }
}
