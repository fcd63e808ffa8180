package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.form.schema.Field.withDefaults;
import static org.staywright.unit.Unit.CELSIUS;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Weights;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Group;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Listing;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Variants;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.unit.Bound;

/** The fields of a job with their bounds and defaults, in the units of the boundary. */
public final class JobShape {

  /** The groups of fields in which a job is asked for. */
  public enum Section implements Group {
    LOAD(
        false,
        "name",
        "load.massKg",
        "load.lightestMassKg",
        "load.massTolerancePercent",
        "load.frictionN"),
    MOUNTS(false),
    REQUIREMENTS(false),
    /** What is asked of its behaviour besides, by whoever needs it. */
    BEHAVIOUR(true, "requirements"),
    MORE_GEOMETRY(true, "load", "mounts.lateralOffsetMm"),
    BESIDE(true),
    CONDITIONS(true),
    FILTERS(true, "filters.families", "fittings", "filters.finish", "limit"),
    WEIGHTS(true);

    private final boolean folded;
    private final List<String> first;

    Section(boolean folded, String... first) {
      this.folded = folded;
      this.first = List.of(first);
    }

    @Override
    public boolean folded() {
      return folded;
    }

    @Override
    public List<String> first() {
      return first;
    }
  }

  private static final Amount TEMPERATURE = Amount.between(-60, 150, CELSIUS);

  private static final Shape FITTINGS =
      Shape.of(
          "fittings",
          withDefault("rodEnd", fittingWish(), "ball-socket"),
          withDefault("tubeEnd", fittingWish(), "ball-socket"));

  private static final Shape CONDITIONS =
      Shape.of(
          "conditions",
          withDefault("minC", TEMPERATURE, -10),
          withDefault("nominalC", TEMPERATURE, 20),
          withDefault("maxC", TEMPERATURE, 40),
          withDefault("serviceYears", new Amount(Bound.between(0, 50, "a")), 5),
          withDefault("cyclesPerYear", new Amount(Bound.between(0, 1e6, "")), 1000));

  /** A damper carries nothing, and under a seat only a column serves. */
  private static final Choice FAMILY =
      Choice.of(
          Stream.of(Family.values())
              .filter(Family::carries)
              .map(Coded::code)
              .toArray(String[]::new));

  private static final Shape FILTERS =
      Shape.of(
          "filters",
          withDefault(
              "families", new Listing(FAMILY, FAMILY.words().size()), List.of("gas-spring")),
          optional("finish", Choice.of(Finish.class)),
          withDefault("inStockOnly", new Flag(), false));

  private static final Amount WEIGHT = new Amount(Bound.between(0, 100, ""));
  private static final Shape WEIGHTS =
      Shape.of(
          "weights-asked",
          withDefault("effort", WEIGHT, Weights.BALANCED.effort()),
          withDefault("margin", WEIGHT, Weights.BALANCED.margin()),
          withDefault("landing", WEIGHT, Weights.BALANCED.landing()),
          withDefault("price", WEIGHT, Weights.BALANCED.price()),
          withDefault("supply", WEIGHT, Weights.BALANCED.supply()));

  /** A job as a client sends it. */
  public static final Shape JOB =
      Shape.of(
          "job",
          withDefault("name", Text.upTo(200), "").in(Section.LOAD),
          required(
                  "load",
                  new Variants(
                      "type", LoadForms.ALL.stream().map(LoadForm::shape).toList(), List.of()))
              .in(Section.LOAD),
          optional("mounts", LoadShape.MOUNTS).in(Section.MOUNTS),
          optional("zones", ZonesShape.ZONES),
          withDefault("beside", new Many(BesideForm.SHAPE, 0, BesideForm.MOST), List.of())
              .in(Section.BESIDE),
          withDefault("springCounts", new Listing(new Whole(1, 8), 8), List.of(1, 2))
              .in(Section.MOUNTS),
          withDefaults("fittings", FITTINGS).in(Section.FILTERS),
          withDefaults("conditions", CONDITIONS).in(Section.CONDITIONS),
          withDefaults("requirements", RequirementsShape.ALL).in(Section.REQUIREMENTS),
          withDefaults("filters", FILTERS).in(Section.FILTERS),
          withDefault("rankBy", Choice.of(RankBy.class), "balanced"),
          withDefaults("weights", WEIGHTS).in(Section.WEIGHTS),
          withDefault("limit", new Whole(1, 200), 20).in(Section.FILTERS));

  private JobShape() {}

  /** Every type of load, and whether it turns or shifts. */
  public static Map<String, Mechanism.Movement> loads() {
    Map<String, Mechanism.Movement> kinds = new LinkedHashMap<>();
    LoadForms.ALL.forEach(load -> kinds.put(load.shape().name(), load.kind()));
    return kinds;
  }

  /** The fields of a job with one type of load, as a page for that type has them. */
  public static Shape of(String type) {
    LoadForm load = LoadForms.of(type).orElseThrow();
    Map<String, Field> fields = new LinkedHashMap<>(JOB.fields());
    fields.put("load", required("load", load.shape()).in(Section.LOAD));
    if (!load.mounted()) {
      fields.keySet().removeAll(List.of("mounts", "zones", "beside"));
      fields.computeIfPresent("springCounts", (name, counts) -> counts.in(Section.LOAD));
    }
    fields.put(
        "requirements",
        withDefaults("requirements", RequirementsShape.of(load)).in(Section.REQUIREMENTS));
    if (!load.handMoved()) {
      fields.keySet().removeAll(List.of("springCounts", "fittings"));
      Map<String, Field> filters = new LinkedHashMap<>(FILTERS.fields());
      filters.remove("families");
      fields.put(
          "filters", withDefaults("filters", new Shape("filters", filters)).in(Section.FILTERS));
    }
    return new Shape(JOB.name(), fields);
  }

  /** A kind of end fitting or the number of one. */
  public static Text fittingWish() {
    String types =
        Stream.of(FittingType.values())
            .filter(FittingType::endsASpring)
            .map(Coded::code)
            .collect(Collectors.joining("|"));
    return new Text(
        16,
        Pattern.compile(types + "|[A-Z0-9-]{4,16}"),
        types.replace("|", " | ") + " | [A-Z0-9-]{4,16}");
  }
}
