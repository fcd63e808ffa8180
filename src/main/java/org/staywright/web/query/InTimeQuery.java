package org.staywright.web.query;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.staywright.fit.job.Corner;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.Group;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Shape;
import org.staywright.form.time.ChanceRequest;
import org.staywright.form.time.MotionRequest;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Range;
import org.staywright.unit.Unit;
import org.staywright.web.field.Typed;

/**
 * Which motion of a part and which chances a page asks for: the same questions as those of the
 * interface for programs, but for the job and the part, which the page has.
 *
 * @param job in its query
 * @param pick the part
 * @param shape of what else is asked
 * @param typed of it
 */
public record InTimeQuery(JobQuery job, Pick pick, Shape shape, Typed typed) {

  /** The groups in which it is asked. */
  public enum Section implements Group {
    PLAYED(false, "release", "spring", LOAD_STATE, "temperatureC", "failedSprings"),
    SPREADS(true);

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

  private static final String SPREADS = "spreads";

  /** What the load weighs: a job that travels in the same query has a load of its own. */
  private static final String LOAD_STATE = "loadState";

  private static final String LOAD = "load";
  private static final Set<String> GIVEN =
      Set.of("job", "partNumber", "count", "case", "draws", "seed");
  private static final MathContext FIGURES = new MathContext(3);

  /**
   * What was not asked is as usual: one spring fails where that is worst, or a seat's valve is
   * opened while it is low, and everything strays as it mostly does.
   *
   * @param worst corner when one spring fails
   */
  public static InTimeQuery of(
      JobQuery job,
      Pick pick,
      Map<String, List<String>> parameters,
      Corner worst,
      Uncertainties usual) {
    Shape shape = shape(job.bench().type());
    Typed typed = Typed.of(shape, parameters, job.bench().wording());
    Map<String, List<String>> values = new LinkedHashMap<>(typed.values());
    if (job.bench().type().equals(SeatColumn.CODE)) {
      values.putIfAbsent("release", List.of(MotionRequest.FROM_CLOSED));
    } else {
      values.putIfAbsent("failedSprings", List.of("1"));
      values.putIfAbsent("spring", List.of(worst.spring().code()));
      values.putIfAbsent(LOAD_STATE, List.of(worst.load().code()));
      usual(usual).forEach((name, text) -> fill(values, SPREADS + "." + name, text));
    }
    return new InTimeQuery(job, pick, shape, new Typed(values, typed.texts()));
  }

  private static void fill(Map<String, List<String>> values, String name, String text) {
    boolean given = values.getOrDefault(name, List.of()).stream().anyMatch(each -> !each.isBlank());
    if (!given) {
      values.put(name, List.of(text));
    }
  }

  /** Its fields for a type of load. */
  public static Shape shape(String type) {
    Map<String, Field> fields = new LinkedHashMap<>(MotionRequest.SHAPE.fields());
    Field load = fields.remove(LOAD);
    fields.put(
        LOAD_STATE, new Field(LOAD_STATE, load.kind(), load.required(), load.fallback(), null));
    fields.putAll(ChanceRequest.SHAPE.fields());
    fields.keySet().removeAll(GIVEN);
    if (!type.equals(ForceProfile.CODE)) {
      fields.remove(MotionRequest.MOVING_MASS);
    }
    if (type.equals(SeatColumn.CODE)) {
      fields.keySet().removeAll(List.of("hand", "handForceN", "failedSprings", SPREADS));
    }
    fields.replaceAll(
        (name, field) -> field.in(name.equals(SPREADS) ? Section.SPREADS : Section.PLAYED));
    return new Shape("in-time", fields);
  }

  private static Map<String, String> usual(Uncertainties usual) {
    return Map.of(
        "forceN", text(usual.force()),
        "frictionPercent", text(Unit.PERCENT.of(usual.friction())),
        "massPercent", text(Unit.PERCENT.of(usual.mass())),
        "centreOfMassMm", text(Unit.MILLIMETRE.of(usual.centre())),
        "mountsMm", text(Unit.MILLIMETRE.of(usual.mounts())),
        "temperatureK", text(usual.temperature()),
        "ageYears", text(usual.age()));
  }

  private static String text(double number) {
    BigDecimal short3 = new BigDecimal(number).round(FIGURES).stripTrailingZeros();
    return short3.signum() == 0 ? "0" : short3.toPlainString();
  }

  /** A refusal names every fault of it. */
  public MotionRequest motion(Range range) {
    ObjectNode body = body();
    body.remove(SPREADS);
    if (body.has(LOAD_STATE)) {
      body.set(LOAD, body.remove(LOAD_STATE));
    }
    return MotionRequest.read(new JsonText(body, List.of()), range);
  }

  /** Whether there is a hand whose chances can be told. */
  public boolean chances() {
    return shape.field(SPREADS).isPresent();
  }

  /** A refusal names every fault of it. */
  public ChanceRequest chance(Range range) {
    ObjectNode body = body();
    body.retain(SPREADS, "job", "partNumber", "count");
    return ChanceRequest.read(new JsonText(body, List.of()), range);
  }

  private ObjectNode body() {
    ObjectNode body = FlatForm.typed(shape, typed.values());
    body.set("job", job.tree());
    return body.put("partNumber", pick.partNumber()).put("count", pick.count());
  }
}
