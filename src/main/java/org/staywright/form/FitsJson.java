package org.staywright.form;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.staywright.fit.Blocker;
import org.staywright.fit.Change;
import org.staywright.fit.Clearing;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Ranking;
import org.staywright.fit.Rejection;
import org.staywright.fit.SeatFigures;
import org.staywright.fit.TimeFigures;
import org.staywright.fit.Weights;
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

  private FitsJson(Job job, Function<Fit, List<Note>> cautions, Clearing clearing) {
    this.job = job;
    this.mechanism = job.mechanism();
    this.cautions = cautions;
    this.clearing = clearing;
  }

  /**
   * @param job that was ranked for
   * @param cautions what a fit calls for, in words
   * @param clearing of the first near rows
   */
  public static ObjectNode of(
      Job job, Ranking ranking, Function<Fit, List<Note>> cautions, Clearing clearing) {
    FitsJson form = new FitsJson(job, cautions, clearing);
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("considered", ranking.considered());
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
    json.set("price", JsonNumber.of(weights.price()));
    json.set("supply", JsonNumber.of(weights.supply()));
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
  static ObjectNode of(Job job, Fit fit, int rank, Function<Fit, List<Note>> cautions) {
    return new FitsJson(job, cautions, null).fit(fit, rank);
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
    ObjectNode figures =
        fit.outcome() instanceof SeatFigures seat ? figures(seat) : figures(fit.figures());
    figures.set("constancy", JsonNumber.of(fit.constancy()));
    figures.put("setPrice", fit.setPrice());
    figures.put("leadTimeDays", fit.leadTimeDays());
    json.set("figures", figures);
    Job.InTime asked = job.requirements() == null ? Job.InTime.ANY : job.requirements().inTime();
    if (!asked.equals(Job.InTime.ANY) && rank <= MOVED_ROWS) {
      TimeFigures.of(job, fit).ifPresent(moves -> json.set("inTime", InTimeJson.of(moves, asked)));
    }
    ArrayNode notes = json.putArray("cautions");
    for (Note note : cautions.apply(fit)) {
      notes.addObject().put("code", note.code()).put("message", note.message());
    }
    if (!fit.fits()) {
      ArrayNode blockers = json.putArray("blockedBy");
      fit.blockedBy().forEach(blocker -> blockers.add(blocker(mechanism, blocker)));
      json.set("clearedBy", clearing == null || rank > Clearing.ROWS ? null : cleared(fit));
    }
    return json;
  }

  private JsonNode cleared(Fit fit) {
    return clearing.of(fit).map(FitsJson::change).orElse(null);
  }

  private static JsonNode change(Change change) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("path", change.path());
    json.putPOJO("from", change.from());
    json.putPOJO("to", change.to());
    json.put("unit", change.unit());
    return json;
  }

  private static ObjectNode figures(SeatFigures figures) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("strokeMm", JsonNumber.of(figures.stroke(), MILLIMETRE));
    json.set("heightTravelMm", JsonNumber.of(figures.travel(), MILLIMETRE));
    json.set("risesEmptyRatio", JsonNumber.of(figures.risesEmpty()));
    json.set("sinksUnderLightestRatio", JsonNumber.of(figures.sinksUnderLightest()));
    ObjectNode bounce = json.putObject("bounceMm");
    bounce.set("low", JsonNumber.of(figures.bounce().low(), MILLIMETRE));
    bounce.set("middle", JsonNumber.of(figures.bounce().middle(), MILLIMETRE));
    bounce.set("high", JsonNumber.of(figures.bounce().high(), MILLIMETRE));
    json.set("thrustLoadN", JsonNumber.of(figures.strength().thrust()));
    json.set("lockLoadN", JsonNumber.of(figures.strength().lockLoad()));
    json.set("loweringRmsN", JsonNumber.of(figures.lowering()));
    json.set("peakPressureBar", JsonNumber.of(figures.strength().peakPressure(), BAR));
    json.set("bucklingFactor", JsonNumber.of(figures.strength().bucklingFactor()));
    return json;
  }

  private ObjectNode figures(Figures figures) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    travel(json, figures);
    json.set("lengthClosedMm", JsonNumber.of(figures.lengthClosed(), MILLIMETRE));
    json.set("lengthOpenMm", JsonNumber.of(figures.lengthOpen(), MILLIMETRE));
    json.set("lengthMinMm", JsonNumber.of(figures.lengthMin(), MILLIMETRE));
    json.set("lengthMaxMm", JsonNumber.of(figures.lengthMax(), MILLIMETRE));
    json.set("compressedMm", JsonNumber.of(figures.compressed(), MILLIMETRE));
    json.set("extendedMm", JsonNumber.of(figures.extended(), MILLIMETRE));
    json.set("compressedReserveMm", JsonNumber.of(figures.compressedReserve(), MILLIMETRE));
    json.set("extendedReserveMm", JsonNumber.of(figures.extendedReserve(), MILLIMETRE));
    json.set("handOpenMaxN", JsonNumber.of(figures.handOpenMax()));
    json.set("handCloseMaxN", JsonNumber.of(figures.handCloseMax()));
    json.set("handRmsN", JsonNumber.of(figures.handRms()));
    json.set("handOpenMaxWeakN", JsonNumber.of(figures.handOpenMaxWeak()));
    json.set("handCloseMaxStrongN", JsonNumber.of(figures.handCloseMaxStrong()));
    json.set("holdRatioOpen", orNull(figures.holdRatioOpen(), NEWTON));
    json.set("peakPressureBar", JsonNumber.of(figures.peakPressure(), BAR));
    json.set("peakMountLoadN", JsonNumber.of(figures.peakMountLoad()));
    json.set("stopLoadN", JsonNumber.of(figures.stopLoad()));
    json.set("bucklingFactor", JsonNumber.of(figures.bucklingFactor()));
    json.set("swingDeg", JsonNumber.of(figures.swing(), DEGREE));
    json.set("latchPushN", JsonNumber.of(figures.latchPush()));
    json.set("staysPutN", orNull(figures.staysPut(), NEWTON));
    return json;
  }

  /** What is measured along the travel, in degrees and N·m or in millimetres and newtons. */
  private void travel(ObjectNode json, Figures figures) {
    boolean turns = mechanism.kind() == Mechanism.Kind.TURNS;
    Unit unit = turns ? DEGREE : MILLIMETRE;
    double far = figures.openingAngle() - mechanism.start();
    json.set(turns ? "openingAngleDeg" : "travelMm", JsonNumber.of(far, unit));
    json.set(turns ? "selfOpensFromDeg" : "selfOpensFromMm", orNull(figures.selfOpensFrom(), unit));
    json.set(
        turns ? "selfOpensFromWeakDeg" : "selfOpensFromWeakMm",
        orNull(figures.selfOpensFromWeak(), unit));
    json.set(turns ? "overCentreDeg" : "overCentreMm", orNull(figures.overCentre(), unit));
    json.set(turns ? "staysFromDeg" : "staysFromMm", orNull(figures.staysFrom(), unit));
    json.set(turns ? "closedHoldNm" : "closedHoldN", JsonNumber.of(figures.closedHold()));
    json.set(
        turns ? "closedHoldStrongNm" : "closedHoldStrongN",
        JsonNumber.of(figures.closedHoldStrong()));
  }

  static ObjectNode blocker(Mechanism mechanism, Blocker blocker) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    Unit unit = blocker.code().unit(mechanism.kind());
    json.put("code", blocker.code().code());
    json.set("needed", orNull(blocker.needed(), unit == null ? Unit.NEWTON : unit));
    json.set("has", orNull(blocker.has(), unit == null ? Unit.NEWTON : unit));
    json.put("unit", unit == null ? "" : unit.symbol());
    return json;
  }

  private static JsonNode orNull(Double si, Unit unit) {
    return si == null ? JsonNodeFactory.instance.nullNode() : JsonNumber.of(si, unit);
  }
}
