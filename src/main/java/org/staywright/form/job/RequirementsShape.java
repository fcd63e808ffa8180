package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.withDefault;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.fit.job.Ask;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.Still;
import org.staywright.form.job.JobShape.Section;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** What a job asks, field by field: from the table of criteria, and what is no number alone. */
final class RequirementsShape {

  static final String AT = "/requirements/";

  /** Where it is to stay put: both ends of a stretch. */
  private static final List<String> STILL_DEG = List.of("staysPutFromDeg", "staysPutToDeg");

  private static final List<String> STILL_MM = List.of("staysPutFromMm", "staysPutToMm");
  private static final Amount ANGLE = new Amount(Bound.between(0, 270, Unit.DEGREE.symbol()));
  private static final Amount WAY = new Amount(Bound.between(0, 5000, Unit.MILLIMETRE.symbol()));

  /** Whatever the load. */
  static final Shape ALL = all();

  private RequirementsShape() {}

  private static Shape all() {
    Map<String, Field> fields = new LinkedHashMap<>();
    for (Criterion criterion : Criterion.values()) {
      boolean usual = criterion.concerns(HingedFlap.CODE);
      criterion.asks().forEach(ask -> fields.put(ask.field(), field(criterion, ask, usual)));
      if (criterion == Criterion.EXTENDED_RESERVE) {
        fields.put("openStop", withDefault("openStop", Choice.of(OpenStop.class), "flap-stop"));
      }
      if (criterion == Criterion.STAYS_PUT) {
        STILL_DEG.forEach(name -> fields.put(name, optional(name, ANGLE).in(Section.BEHAVIOUR)));
        STILL_MM.forEach(name -> fields.put(name, optional(name, WAY).in(Section.BEHAVIOUR)));
      }
    }
    return new Shape("requirements", fields);
  }

  /**
   * @param usual whether its default stands for every load
   */
  private static Field field(Criterion criterion, Ask ask, boolean usual) {
    return field(ask, usual).in(group(criterion, ask));
  }

  /** Lengths and motion stand apart; of the rest, first what is asked of nearly every job. */
  private static Section group(Criterion criterion, Ask ask) {
    if (criterion.ofTheLengths() || criterion.inTime()) {
      return Section.MORE_GEOMETRY;
    }
    return criterion.holding() || ask.fallback() != null ? Section.REQUIREMENTS : Section.BEHAVIOUR;
  }

  private static Field field(Ask ask, boolean usual) {
    if (ask.flag()) {
      return withDefault(ask.field(), new Flag(), false);
    }
    Amount amount = new Amount(ask.bound());
    return ask.fallback() == null || !usual
        ? optional(ask.field(), amount)
        : withDefault(ask.field(), amount, ask.fallback());
  }

  /** Those that make sense for a load. */
  static Shape of(LoadForm load) {
    String code = load.shape().name();
    Map<String, Field> fields = new LinkedHashMap<>(ALL.fields());
    for (Criterion criterion : Criterion.values()) {
      for (Ask ask : criterion.asks()) {
        if (!criterion.concerns(code) || isOfOtherKind(ask, load.kind())) {
          fields.remove(ask.field());
        } else {
          fields.put(ask.field(), field(criterion, ask, true));
        }
      }
    }
    boolean put = Criterion.STAYS_PUT.concerns(code);
    boolean turns = load.kind() == Mechanism.Movement.TURNS;
    if (!put || !turns) {
      STILL_DEG.forEach(fields::remove);
    }
    if (!put || turns) {
      STILL_MM.forEach(fields::remove);
    }
    if (!load.mounted()) {
      fields.remove("openStop");
    }
    return new Shape(ALL.name(), fields);
  }

  /** A place on the way is asked in degrees or in millimetres. */
  private static boolean isOfOtherKind(Ask ask, Mechanism.Movement kind) {
    boolean place = ask.field().startsWith("risesFrom");
    return place && ask.field().endsWith(kind == Mechanism.Movement.TURNS ? "Mm" : "Deg");
  }

  /** Requirements of a checked document. */
  static Requirements read(JobTree tree, LoadForm load) {
    Map<Criterion, Double> limits = new EnumMap<>(Criterion.class);
    for (Criterion criterion : Criterion.values()) {
      if (criterion.concerns(load.shape().name())) {
        criterion.asks().forEach(ask -> read(tree, criterion, ask, limits));
      }
    }
    boolean turns = load.kind() == Mechanism.Movement.TURNS;
    List<String> stretch = turns ? STILL_DEG : STILL_MM;
    Unit unit = turns ? Unit.DEGREE : Unit.MILLIMETRE;
    Double from = tree.orNull(AT + stretch.get(0), unit);
    Double to = tree.orNull(AT + stretch.get(1), unit);
    return new Requirements(
        limits,
        tree.choice(AT + "openStop", OpenStop.class),
        from == null && to == null ? null : new Still(from, to));
  }

  private static void read(
      JobTree tree, Criterion criterion, Ask ask, Map<Criterion, Double> limits) {
    String at = AT + ask.field();
    if (ask.flag()) {
      if (tree.flag(at)) {
        limits.put(criterion, 0.0);
      }
      return;
    }
    Unit unit = Unit.of(ask.bound().unit()).orElse(null);
    Double number = tree.given(at) ? Double.valueOf(tree.number(at)) : ask.fallback();
    if (number != null) {
      limits.put(criterion, unit == null ? number : unit.si(number));
    }
  }
}
