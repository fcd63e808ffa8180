package org.staywright.form.fit;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.clear.Change;
import org.staywright.fit.clear.Clearing;
import org.staywright.fit.clear.HoldsFrom;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.Weights;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.TimeFigures;
import org.staywright.form.schema.JsonNumber;
import org.staywright.form.time.InTimeJson;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;

/** A ranking as JSON. */
public final class FitsJson {

  /**
   * A caution in words.
   *
   * @param code of its rule
   * @param message its sentence
   */
  public record Note(String code, String message) {}

  /** Rows whose motions are worth computing: it takes some ten milliseconds each. */
  private static final int MOVED_ROWS = 20;

  private final Job job;
  private final Mechanism mechanism;
  private final Function<Fit, List<Note>> cautions;
  private final Clearing clearing;
  private final HoldsFrom holdsFrom;

  private FitsJson(
      Job job, Function<Fit, List<Note>> cautions, Clearing clearing, HoldsFrom holdsFrom) {
    this.job = job;
    this.mechanism = job.mechanism();
    this.cautions = cautions;
    this.clearing = clearing;
    this.holdsFrom = holdsFrom;
  }

  /**
   * @param job that was ranked for
   * @param cautions what a fit calls for, in words
   * @param clearing of the first near rows
   * @param holdsFrom of those that nothing clears
   */
  public static ObjectNode of(
      Job job,
      Ranking ranking,
      Function<Fit, List<Note>> cautions,
      Clearing clearing,
      HoldsFrom holdsFrom) {
    FitsJson form = new FitsJson(job, cautions, clearing, holdsFrom);
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("considered", ranking.considered());
    json.put("springNeeded", ranking.springNeeded());
    json.set("bare", bare(ranking.bare()));
    json.put("fitsTotal", ranking.fitsTotal());
    json.put("nearTotal", ranking.nearTotal());
    ObjectNode rejected = json.putObject("rejected");
    for (Rejection reason : Rejection.values()) {
      rejected.put(reason.code(), ranking.rejected().getOrDefault(reason, 0));
    }
    json.set("weights", weights(job.weights()));
    json.set("fits", form.list(ranking.fits()));
    json.set("near", form.list(ranking.near()));
    return json;
  }

  private static ObjectNode weights(Weights weights) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("effort", JsonNumber.of(weights.effort()));
    json.set("margin", JsonNumber.of(weights.margin()));
    json.set("landing", JsonNumber.of(weights.landing()));
    json.set("price", JsonNumber.of(weights.price()));
    json.set("supply", JsonNumber.of(weights.supply()));
    return json;
  }

  /** Null under a seat. */
  static JsonNode bare(Bare bare) {
    if (bare == null) {
      return JsonNodeFactory.instance.nullNode();
    }
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("handOpenWorstN", JsonNumber.of(bare.hand().openWorst().value()));
    json.set("handCloseWorstN", JsonNumber.of(bare.hand().closeWorst().value()));
    json.set("handRmsN", JsonNumber.of(bare.hand().rms()));
    json.set("holdOpenN", JsonNumber.of(bare.hold().open().value()));
    json.set("dropJ", JsonNumber.of(bare.drop()));
    return json;
  }

  private ArrayNode list(List<Fit> fits) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < fits.size(); i++) {
      list.add(fit(fits.get(i), i + 1));
    }
    return list;
  }

  /**
   * One fit alone; what would clear a near one is not looked for.
   *
   * @param rank among others
   */
  public static ObjectNode of(Job job, Fit fit, int rank, Function<Fit, List<Note>> cautions) {
    return new FitsJson(job, cautions, null, null).fit(fit, rank);
  }

  private ObjectNode fit(Fit fit, int rank) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("rank", rank);
    json.put("partNumber", fit.part().number());
    json.put("count", fit.count());
    if (fit.rodFitting() != null) {
      json.putObject("fittings")
          .put("rodEnd", fit.rodFitting().number())
          .put("tubeEnd", fit.tubeFitting().number());
    }
    json.put("rodEndAt", fit.rodEndAt().name().toLowerCase(Locale.ROOT));
    json.put("verdict", fit.fits() ? "fits" : "near");
    json.set("score", JsonNumber.of(fit.score()));
    json.set("figures", figures(fit));
    if (fit.outcome() instanceof Figures figures) {
      json.set("worst", worst(figures));
    }
    Requirements asked = job.requirements();
    if (asked.asksInTime() && rank <= MOVED_ROWS) {
      TimeFigures.of(job, fit).ifPresent(moves -> json.set("inTime", InTimeJson.of(moves, asked)));
    }
    ArrayNode notes = json.putArray("cautions");
    for (Note note : cautions.apply(fit)) {
      notes.addObject().put("code", note.code()).put("message", note.message());
    }
    if (!fit.fits()) {
      ArrayNode blockers = json.putArray("blockedBy");
      fit.blockedBy().forEach(blocker -> blockers.add(blocker(mechanism, blocker)));
      mend(fit, clearing == null || rank > Clearing.ROWS, json);
    }
    return json;
  }

  private void mend(Fit near, boolean unsolved, ObjectNode json) {
    Optional<Change> cleared = unsolved ? Optional.empty() : clearing.of(near);
    Optional<Change> holds =
        unsolved || cleared.isPresent() ? Optional.empty() : holdsFrom.of(near);
    json.set("clearedBy", cleared.map(FitsJson::change).orElse(null));
    json.set("holdsFrom", holds.map(FitsJson::change).orElse(null));
  }

  private static JsonNode change(Change change) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("path", change.path());
    json.putPOJO("from", change.from());
    json.putPOJO("to", change.to());
    json.put("unit", change.unit());
    return json;
  }

  private ObjectNode figures(Fit fit) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    for (Figure figure : Figure.of(fit)) {
      String[] name = figure.name(mechanism.movement()).split("\\.");
      ObjectNode in = name.length == 1 ? json : json.withObject("/" + name[0]);
      in.set(name[name.length - 1], orNull(figure.value(fit), figure.unit(mechanism.movement())));
    }
    json.put("setPrice", fit.setPrice());
    json.put("leadTimeDays", fit.leadTimeDays());
    return json;
  }

  /** In which corner and where the worst comes. */
  private ObjectNode worst(Figures figures) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("handOpen", place(figures.hand().openWorst()));
    json.set("handClose", place(figures.hand().closeWorst()));
    json.set("hold", place(figures.hold().open()));
    json.set("closedHold", place(figures.hold().closedLeast()));
    return json;
  }

  private ObjectNode place(Extreme extreme) {
    Unit unit = mechanism.movement() == Mechanism.Movement.TURNS ? DEGREE : MILLIMETRE;
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("travel", JsonNumber.of(extreme.travel(), unit));
    json.put("spring", extreme.corner().spring().code());
    json.put("load", extreme.corner().load().code());
    json.putNull("case");
    return json;
  }

  static ObjectNode blocker(Mechanism mechanism, Blocker blocker) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    Unit unit = blocker.unit(mechanism);
    json.put("code", blocker.criterion().code());
    json.set("needed", orNull(blocker.needed(), unit));
    json.set("has", orNull(blocker.has(), unit));
    json.put("unit", unit == null ? "" : unit.symbol());
    return json;
  }

  /**
   * @param unit null for a plain number
   */
  private static JsonNode orNull(Double si, Unit unit) {
    if (si == null) {
      return JsonNodeFactory.instance.nullNode();
    }
    return unit == null ? JsonNumber.of(si) : JsonNumber.of(si, unit);
  }
}
