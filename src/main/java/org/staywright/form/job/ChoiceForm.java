package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.form.schema.Field.withDefaults;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * The part that is to be chosen for a job.
 *
 * @param partNumber of the spring
 * @param count of springs in a set
 * @param rodEnd wish, null for the job's
 * @param tubeEnd wish, null for the job's
 * @param sets wanted
 * @param spares of each line beyond the sets
 * @param brackets whether brackets belong to the set
 * @param evenIfMisfit whether it is wanted although it does not fit
 */
public record ChoiceForm(
    String partNumber,
    int count,
    FittingWish rodEnd,
    FittingWish tubeEnd,
    int sets,
    int spares,
    boolean brackets,
    boolean evenIfMisfit) {

  public static final Shape SHAPE =
      Shape.of(
          "choice",
          required("partNumber", AnswerShape.PART_NUMBER),
          required("count", new Whole(1, 8)),
          withDefaults(
              "fittings",
              Shape.of(
                  "chosen-fittings",
                  optional("rodEnd", JobShape.fittingWish()),
                  optional("tubeEnd", JobShape.fittingWish()))),
          withDefault("sets", new Whole(1, 10_000), 1),
          withDefault("spares", new Whole(0, 10_000), 0),
          withDefault("brackets", new Flag(), false),
          withDefault("evenIfMisfit", new Flag(), false));

  /** A refusal names every fault of the body. */
  public static ChoiceForm read(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = SHAPE.read(body.tree(), "#", faults);
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return new ChoiceForm(
        tree.get("partNumber").textValue(),
        tree.get("count").intValue(),
        JobForm.wish(tree.at("/fittings/rodEnd").textValue()),
        JobForm.wish(tree.at("/fittings/tubeEnd").textValue()),
        tree.get("sets").intValue(),
        tree.get("spares").intValue(),
        tree.get("brackets").booleanValue(),
        tree.get("evenIfMisfit").booleanValue());
  }
}
