package org.staywright.form.fit;

import static org.staywright.form.schema.AnswerShape.END;
import static org.staywright.form.schema.AnswerShape.ENDS;
import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.series;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Rejection;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.JobKnobs;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Kind.Anything;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.form.time.InTimeAnswer;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Coded;

/** Rankings and hand forces as they are sent. */
public final class FitAnswer {

  private static final Choice WEAK_OR_STRONG = Choice.of("weak", "strong");
  private static final Choice HEAVY_OR_LIGHT = Choice.of("heavy", "light");

  private static final Shape CORNER_CURVE =
      shape(
          "corner-curve",
          List.of(required("spring", WEAK_OR_STRONG), required("load", HEAVY_OR_LIGHT)),
          series("openN", "closeN"));

  public static final Shape HAND_CURVE =
      shape(
          "hand-curve",
          List.of(required("travelUnit", Choice.of("deg", "mm"))),
          series("travel", "lengthMm", "openN", "closeN"),
          List.of(required("corners", new Many(CORNER_CURVE))));

  /** Of the way that a load turns or shifts, and of a column under a seat: each has its own. */
  private static final Shape FIGURES = figures();

  private static Shape figures() {
    Map<String, Field> fields = new LinkedHashMap<>();
    for (Figure figure : Figure.values()) {
      for (Mechanism.Movement kind : Mechanism.Movement.values()) {
        String[] name = figure.name(kind).split("\\.");
        if (name.length == 1) {
          fields.put(name[0], optional(name[0], NUMBER));
        } else {
          Shape before = fields.containsKey(name[0]) ? (Shape) fields.get(name[0]).kind() : null;
          fields.put(name[0], optional(name[0], with(before, name[0], name[1])));
        }
      }
    }
    fields.put("setPrice", optional("setPrice", NUMBER));
    fields.put("leadTimeDays", required("leadTimeDays", NUMBER));
    return new Shape("figures", fields);
  }

  private static Shape with(Shape before, String name, String member) {
    Map<String, Field> members = new LinkedHashMap<>();
    if (before != null) {
      members.putAll(before.fields());
    }
    members.put(member, required(member, NUMBER));
    return new Shape(name, members);
  }

  private static final Shape EXTREME =
      Shape.of(
          "extreme",
          required("travel", NUMBER),
          required("spring", WEAK_OR_STRONG),
          required("load", HEAVY_OR_LIGHT),
          optional("case", TEXT));

  private static final Shape WORST =
      Shape.of(
          "worst",
          required("handOpen", EXTREME),
          required("handClose", EXTREME),
          required("hold", EXTREME),
          required("closedHold", EXTREME));

  static final Shape BARE =
      shape("bare", numbers("handOpenWorstN", "handCloseWorstN", "handRmsN", "holdOpenN", "dropJ"));

  private static final List<Field> FIT =
      List.of(
          required("rank", NUMBER),
          required("partNumber", AnswerShape.PART_NUMBER),
          required("count", NUMBER),
          optional("fittings", ENDS),
          required("rodEndAt", END),
          required("verdict", Choice.of("fits", "near")),
          required("score", NUMBER),
          required("figures", FIGURES),
          optional("worst", WORST),
          optional("inTime", InTimeAnswer.AT_WORST),
          required(
              "cautions",
              new Many(Shape.of("caution", required("code", TEXT), required("message", TEXT)))));

  static final Shape BLOCKER =
      Shape.of(
          "blocker",
          required("code", Choice.of(Criterion.class)),
          optional("needed", NUMBER),
          optional("has", NUMBER),
          required("unit", TEXT));

  private static final Shape CHANGE = change("change", JobKnobs.paths(), new Anything());

  private static final Shape HOLDS_FROM = change("holds-from", ConditionKnobs.paths(), NUMBER);

  private static Shape change(String name, List<String> paths, Kind value) {
    return Shape.of(
        name,
        required("path", new Choice(paths, List.of())),
        required("from", value),
        required("to", value),
        required("unit", TEXT));
  }

  public static final Shape FIT_SHAPE = shape("fit", FIT);

  public static final Shape NEAR_SHAPE =
      shape("near-fit", FIT, List.of(required("blockedBy", new Many(BLOCKER))), mends());

  /** One alone, which may fit or be near. */
  static final Shape JUDGED_SHAPE =
      shape("judged-fit", FIT, List.of(optional("blockedBy", new Many(BLOCKER))), mends());

  private static List<Field> mends() {
    return List.of(optional("clearedBy", CHANGE), optional("holdsFrom", HOLDS_FROM));
  }

  public static final Shape FITS =
      shape(
          "fits",
          numbers("considered", "fitsTotal", "nearTotal"),
          List.of(
              required("springNeeded", new Flag()),
              optional("bare", BARE),
              required(
                  "rejected",
                  shape(
                      "rejected",
                      numbers(
                          Stream.of(Rejection.values()).map(Coded::code).toArray(String[]::new)))),
              required(
                  "weights",
                  shape("weights", numbers("effort", "margin", "landing", "price", "supply"))),
              required("fits", new Many(FIT_SHAPE)),
              required("near", new Many(NEAR_SHAPE))));

  private FitAnswer() {}
}
