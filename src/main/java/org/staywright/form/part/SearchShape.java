package org.staywright.form.part;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.part.Coded;
import org.staywright.part.Column;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingSearch;
import org.staywright.part.FittingType;
import org.staywright.part.PartSearch;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** Queries of the range: their parameters, and the searches they ask for. */
public final class SearchShape {

  /** Conversion from mm must not push a value over its own bound, m or N. */
  private static final double ROUNDING = 1e-9;

  private static final Amount LENGTH = Amount.positive(10_000, MILLIMETRE);
  private static final Amount FORCE = Amount.positive(100_000, NEWTON);
  private static final Field PAGE = withDefault("page", new Whole(0, 1_000_000), 0);
  private static final Field SIZE = withDefault("size", new Whole(1, 200), 50);

  /** A page of any list. */
  public static final Shape PAGES = Shape.of("pages", PAGE, SIZE);

  public static final Shape PARTS =
      Shape.of(
          "parts",
          optional("family", Choice.of(Family.class)),
          optional("rodDiameterMm", LENGTH),
          optional("tubeDiameterMm", LENGTH),
          optional("extendedMinMm", LENGTH),
          optional("extendedMaxMm", LENGTH),
          optional("strokeMinMm", LENGTH),
          optional("strokeMaxMm", LENGTH),
          optional("forceMinN", FORCE),
          optional("forceMaxN", FORCE),
          optional("finish", Choice.of(Finish.class)),
          withDefault("inStock", new Flag(), false),
          optional("q", Text.upTo(100)),
          withDefault("sort", orders(), "number"),
          PAGE,
          SIZE);

  public static final Shape FITTINGS =
      Shape.of(
          "fittings",
          optional("type", Choice.of(FittingType.class)),
          optional("finish", Choice.of(Finish.class)),
          optional("thread", Text.upTo(16)),
          withDefault("inStock", new Flag(), false),
          optional("q", Text.upTo(100)),
          PAGE,
          SIZE);

  public static final Shape CURVE =
      Shape.of(
          "curve",
          withDefault("temperatureC", Amount.between(-60, 150, CELSIUS), 20),
          withDefault("samples", new Whole(2, 501), 21),
          withDefault("forceFactor", new Amount(Bound.between(0.1, 2, "")), 1),
          withDefault("gasFraction", new Amount(Bound.between(0.1, 1, "")), 1));

  /** What a spring that locks holds where it is locked. */
  public static final Shape LOCKED_CURVE =
      Shape.of(
          "locked-curve",
          required("atCompressionMm", new Amount(Bound.between(0, 3000, "mm"))),
          withDefault("temperatureC", Amount.between(-60, 150, CELSIUS), 20),
          withDefault("deflectionMm", Amount.positive(3000, MILLIMETRE), 10),
          withDefault("samples", new Whole(2, 501), 21));

  private SearchShape() {}

  /** Each order rising and, with a minus before it, falling. */
  private static Choice orders() {
    List<String> codes = Stream.of(PartSearch.Order.values()).map(Coded::code).toList();
    return new Choice(
        Stream.concat(codes.stream(), codes.stream().map(code -> "-" + code)).toList(), List.of());
  }

  public static PartSearch parts(JsonNode query) {
    Map<Column, Bound> bounds = new EnumMap<>(Column.class);
    within(bounds, Column.ROD_DIAMETER, query, "rodDiameterMm", "rodDiameterMm", MILLIMETRE);
    within(bounds, Column.TUBE_DIAMETER, query, "tubeDiameterMm", "tubeDiameterMm", MILLIMETRE);
    within(bounds, Column.EXTENDED_LENGTH, query, "extendedMinMm", "extendedMaxMm", MILLIMETRE);
    within(bounds, Column.STROKE, query, "strokeMinMm", "strokeMaxMm", MILLIMETRE);
    within(bounds, Column.FORCE, query, "forceMinN", "forceMaxN", NEWTON);
    return new PartSearch(
        choice(query, "family", Family.class),
        choice(query, "finish", Finish.class),
        query.get("inStock").booleanValue(),
        query.get("q").textValue(),
        bounds);
  }

  public static PartSearch.Order order(JsonNode query) {
    String word = query.get("sort").textValue();
    return Coded.of(PartSearch.Order.class, falling(query) ? word.substring(1) : word)
        .orElseThrow();
  }

  public static boolean falling(JsonNode query) {
    return query.get("sort").textValue().startsWith("-");
  }

  public static FittingSearch fittings(JsonNode query) {
    return new FittingSearch(
        choice(query, "type", FittingType.class),
        choice(query, "finish", Finish.class),
        query.get("thread").textValue(),
        query.get("inStock").booleanValue(),
        query.get("q").textValue());
  }

  private static void within(
      Map<Column, Bound> bounds,
      Column column,
      JsonNode query,
      String low,
      String high,
      Unit unit) {
    boolean bounded = query.hasNonNull(low) || query.hasNonNull(high);
    if (bounded) {
      double from = query.hasNonNull(low) ? unit.si(query.get(low).doubleValue()) : 0;
      double to =
          query.hasNonNull(high) ? unit.si(query.get(high).doubleValue()) : Double.MAX_VALUE;
      bounds.put(column, Bound.between(from - ROUNDING, to + ROUNDING, ""));
    }
  }

  private static <E extends Enum<E> & Coded> E choice(JsonNode query, String name, Class<E> type) {
    return query.hasNonNull(name)
        ? Coded.of(type, query.get(name).textValue()).orElseThrow()
        : null;
  }
}
