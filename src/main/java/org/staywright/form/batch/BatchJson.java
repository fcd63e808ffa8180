package org.staywright.form.batch;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.fit.JudgedFit;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.GasBeyond;
import org.staywright.form.schema.Kind.Anything;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Shape;
import org.staywright.gas.BeyondEquation;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** What comes of one job of many: how much of the range does, and the best of it. */
public final class BatchJson {

  public static final Shape QUERY = Shape.of("batch-query", optional("name", Text.upTo(200)));

  private static final Shape FOUND =
      Shape.of(
          "batch-result",
          required("row", NUMBER),
          required("name", TEXT),
          required("verdict", Choice.of("fits", "near", "none", "refused")),
          optional("fitsTotal", NUMBER),
          optional("nearTotal", NUMBER),
          optional("springNeeded", new Flag()),
          optional("best", new Anything()),
          optional("faults", new Many(new Anything())),
          optional("beyond", AnswerShape.GAS_BEYOND));

  public static final Shape RESULTS = Shape.of("batch-results", required("items", new Many(FOUND)));

  public static final Shape BATCH =
      Shape.of(
          "batch",
          required("id", TEXT),
          required("name", TEXT),
          required("created", TEXT),
          required("state", Choice.of("queued", "running", "done", "failed", "stopped")),
          required("done", NUMBER),
          required("total", NUMBER),
          required("fits", NUMBER),
          required("near", NUMBER),
          required("none", NUMBER),
          required("refused", NUMBER),
          required("results", TEXT));

  public static final Shape BATCHES = Shape.of("batches", required("items", new Many(BATCH)));

  /** Columns of the CSV, members of objects after a dot; a figure that does not apply is empty. */
  public static final List<String> COLUMNS =
      List.of(
          "row",
          "name",
          "verdict",
          "fitsTotal",
          "nearTotal",
          "springNeeded",
          "partNumber",
          "count",
          "score",
          "handOpenWorstN",
          "handCloseWorstN",
          "holdRatioOpen",
          "holdOpenN",
          "risesEmptyRatio",
          "sinksUnderLightestRatio",
          "bounceMm.low",
          "bounceMm.middle",
          "bounceMm.high",
          "setPrice",
          "leadTimeDays",
          "blockedBy");

  private BatchJson() {}

  /** The best that fits, else the nearest miss. */
  public static ObjectNode of(int row, String name, Job job, Ranking ranking) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    boolean fits = !ranking.fits().isEmpty();
    boolean near = !ranking.near().isEmpty();
    json.put("row", row).put("name", name);
    json.put("verdict", fits ? "fits" : near ? "near" : "none");
    json.put("fitsTotal", ranking.fitsTotal()).put("nearTotal", ranking.nearTotal());
    json.put("springNeeded", ranking.springNeeded());
    if (fits || near) {
      Fit best = fits ? ranking.fits().get(0) : ranking.near().get(0);
      json.set("best", AnswerJson.tree(JudgedFit.of(job, best, fit -> List.of())));
    }
    return json;
  }

  /** A job that could be read and yet not be computed. */
  public static ObjectNode refused(int row, String name, Refusal refusal) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("row", row).put("name", name).put("verdict", "refused");
    ArrayNode faults = json.putArray("faults");
    for (Fault fault : refusal.faults()) {
      ObjectNode each = faults.addObject().put("column", fault.where());
      each.put("value", String.valueOf(fault.value())).put("expected", fault.bound());
      each.put("code", fault.code());
    }
    return json;
  }

  /** A job in which the gas would leave what can be computed. */
  public static ObjectNode beyond(int row, String name, BeyondEquation gas) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("row", row).put("name", name).put("verdict", "refused");
    GasBeyond.of(gas).addTo(json);
    return json;
  }

  /** The same as a row of CSV. */
  public static List<String> cells(JsonNode result) {
    List<String> cells = new ArrayList<>();
    JsonNode best = result.path("best");
    for (String column : COLUMNS.subList(0, COLUMNS.size() - 1)) {
      JsonNode value = result.path(column);
      value = value.isMissingNode() ? best.path(column) : value;
      value = value.isMissingNode() ? best.at("/figures/" + column.replace('.', '/')) : value;
      cells.add(value.isNull() ? "" : value.asText());
    }
    List<String> codes = new ArrayList<>();
    best.path("blockedBy").forEach(blocker -> codes.add(blocker.path("code").asText()));
    result.path("faults").forEach(fault -> codes.add(fault.path("code").asText()));
    if (result.has("beyond")) {
      codes.add("beyond-" + result.at("/beyond/quantity").asText());
    }
    cells.add(String.join(" ", codes));
    return cells;
  }
}
