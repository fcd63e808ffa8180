package org.staywright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.staywright.database.Databases;
import org.staywright.fit.SampleRange;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Weights;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.mechanism.Point;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;

/** Jobs as version 6 of the tables held them are read by today's program. */
class DamperToBesideTest {

  private static final Range RANGE = SampleRange.with(Family.DAMPER);

  /** Every field of those days, as it was written then; %s its damper and its weights. */
  private static final String THEN =
      """
      {"name":"Lid","load":{"type":"hinged-flap","massKg":18,"massTolerancePercent":5,\
      "lightestMassKg":null,"centreOfMassMm":{"x":410,"y":15},"handleMm":{"x":800,"y":0},\
      "opens":"counterclockwise","openingAngleDeg":80,"tiltDeg":0,"hingeFrictionNm":0.5,\
      "sealMomentNm":0,"sealAngleDeg":5,"inertiaKgM2":null},\
      "mounts":{"frameMm":{"x":15,"y":-65},"movingMm":{"x":360,"y":-11},"rodEndAt":"either",\
      "lateralOffsetMm":0},"zones":null,"damper":%s,"springCounts":[1,2],\
      "fittings":{"rodEnd":"ball-socket","tubeEnd":"ball-socket"},\
      "conditions":{"minC":-10,"nominalC":20,"maxC":40,"serviceYears":5,"cyclesPerYear":1000},\
      "requirements":{"maxHandForceN":50,"minHoldRatio":1.1,"compressedReserveMm":5,\
      "extendedReserveMm":4,"openStop":"flap-stop","staysShut":false,"maxHandOpenN":null,\
      "maxHandCloseN":null,"risesFromDeg":null,"risesFromMm":null,"staysPutFromDeg":null,\
      "staysPutToDeg":null,"staysPutFromMm":null,"staysPutToMm":null,"maxLatchPushN":null,\
      "overCentreByDeg":null,"maxStopSpeedMmPerS":null,"maxStopEnergyJ":null,\
      "maxOpeningTimeS":null},\
      "filters":{"families":["gas-spring"],"finish":null,"inStockOnly":false},\
      "rankBy":"balanced","weights":%s,"limit":20}""";

  private static final String USUAL =
      "{\"effort\":0.45,\"margin\":0.25,\"price\":0.15,\"supply\":0.15}";

  private static final String OWN = "{\"effort\":1,\"margin\":0,\"price\":3,\"supply\":0}";

  private Part damper;
  private DataSource database;

  DataSource ofVersion6() {
    return Databases.h2Of("6");
  }

  @BeforeEach
  void fill() throws SQLException {
    // Such a damper on these mounts reaches over the whole travel.
    damper =
        IntStream.range(0, RANGE.size())
            .mapToObj(RANGE::part)
            .filter(part -> part.family() == Family.DAMPER)
            .filter(part -> Math.abs(part.spring().stroke() - 0.1) < 1e-9)
            .filter(part -> Math.abs(part.spring().rodDiameter() - 6e-3) < 1e-9)
            .findFirst()
            .orElseThrow();
    database = ofVersion6();
    String hung =
        "{\"partNumber\":\"%s\",\"count\":null,\"mounts\":{\"frameMm\":{\"x\":15,\"y\":-65},"
            + "\"movingMm\":{\"x\":300,\"y\":-11}}}";
    addJob("hung", THEN.formatted(hung.formatted(damper.number()), USUAL));
    String two = "{\"partNumber\":\"%s\",\"count\":2,\"mounts\":null}".formatted(damper.number());
    addJob("two", THEN.formatted(two, USUAL));
    addJob("none", THEN.formatted("null", OWN));
    run("insert into batch (id, name, state, total) values ('b', 'b', 'running', 2)");
    addBatchJob(1, null);
    addBatchJob(2, "fits");
    Databases.migrate(database);
  }

  private void addJob(String name, String document) throws SQLException {
    run(
        "insert into job (version, name, document, created, changed)"
            + " values (3, ?, ?, current_timestamp, current_timestamp)",
        name,
        document);
  }

  private void addBatchJob(int row, String verdict) throws SQLException {
    run(
        "insert into batch_job (batch_id, row_no, document, verdict) values ('b', %d, ?, ?)"
            .formatted(row),
        THEN.formatted("null", USUAL),
        verdict);
  }

  private void run(String sql, String... values) throws SQLException {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < values.length; i++) {
        statement.setString(i + 1, values[i]);
      }
      statement.executeUpdate();
    }
  }

  private String text(String sql) throws SQLException {
    try (Connection connection = database.getConnection();
        ResultSet row = connection.prepareStatement(sql).executeQuery()) {
      row.next();
      return row.getString(1);
    }
  }

  private Job job(String name) throws SQLException {
    String document = text("select document from job where name = '" + name + "'");
    return JobForm.read(tree(document), RANGE);
  }

  private static JsonNode tree(String document) {
    return JsonText.read(document.getBytes(StandardCharsets.UTF_8)).tree();
  }

  @Test
  void aDamperStandsBesideTheSprings() throws SQLException {
    Job hung = job("hung");
    assertEquals(1, hung.beside().size());
    assertEquals(damper.number(), hung.beside().get(0).part().number());
    assertEquals(1, hung.beside().get(0).count());
    Point moving = hung.beside().get(0).mechanism().mounts().moving();
    assertEquals(0.3, moving.x(), 1e-12);
  }

  @Test
  void aDamperWithoutMountsOfItsOwnStillHangsWhereTheSpringsDo() throws SQLException {
    String document = text("select document from job where name = 'two'");
    JsonNode beside = tree(document).get("beside");
    assertEquals(1, beside.size());
    assertEquals(2, beside.at("/0/count").intValue());
    assertEquals(damper.number(), beside.at("/0/partNumber").textValue());
    assertEquals(true, beside.at("/0/mounts").isNull());
  }

  @Test
  void aJobWithoutOneIsReadAsBefore() throws SQLException {
    assertEquals(0, job("none").beside().size());
    assertEquals(
        18,
        tree(text("select document from job where name = 'none'"))
            .at("/load/massKg")
            .doubleValue());
  }

  @Test
  void usualWeightsStayUsualAndOthersStayWhatTheyWere() throws SQLException {
    assertEquals(Weights.BALANCED, job("hung").weights());
    assertEquals(Weights.of(1, 0, 0, 3, 0), job("none").weights());
  }

  @Test
  void whoHasSeenAJobAsItWasCannotWriteItBack() throws SQLException {
    assertEquals("4", text("select min(version) from job"));
  }

  @Test
  void whatABatchHasStillToJudgeIsReadAndWhatItHasJudgedIsLeft() throws SQLException {
    String waiting = text("select document from batch_job where row_no = 1");
    assertEquals(0, JobForm.read(tree(waiting), RANGE).beside().size());
    assertFalse(tree(waiting).has("damper"));
    String judged = text("select document from batch_job where row_no = 2");
    assertEquals(THEN.formatted("null", USUAL), judged);
  }
}
