package org.staywright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.staywright.database.Databases;
import org.staywright.fit.Job;
import org.staywright.fit.Ranking;
import org.staywright.form.BatchJson;
import org.staywright.form.JobFile;
import org.staywright.form.JobForm;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.SampleRange;
import org.staywright.stock.Stock;

class BatchesTest {

  private static final long SEED = Long.getLong("staywright.seed", 20261125);

  private BatchTable table;
  private CurrentRange current;
  private Tasks tasks;
  private Batches batches;

  DataSource database() {
    return Databases.h2();
  }

  @BeforeEach
  void start() {
    DataSource database = database();
    Stock stock = new Stock(database);
    new SampleRange(stock, true).loadIfFirst();
    table = new BatchTable(database);
    current = new CurrentRange(stock);
    tasks = new Tasks();
    batches = new Batches(table, tasks, current);
  }

  @AfterEach
  void end() {
    tasks.close();
  }

  private static List<JobFile.Row> lids(int count) {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    List<JobFile.Row> rows = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      ObjectNode lid = org.staywright.form.Jobs.lid();
      lid.put("name", "lid " + i);
      ((ObjectNode) lid.get("load")).put("massKg", 2 + random.nextInt(60));
      rows.add(new JobFile.Row(i, JobForm.withDefaults(lid)));
    }
    return rows;
  }

  private List<JsonNode> results(String id) {
    List<JsonNode> results = new ArrayList<>();
    batches.results(id, results::add);
    return results;
  }

  private static void await(BooleanSupplier what) throws InterruptedException {
    for (int tries = 0; !what.getAsBoolean(); tries++) {
      assertTrue(tries < 2400, "two minutes");
      Thread.sleep(50);
    }
  }

  private Batch found(String id) {
    return batches.find(id).orElseThrow();
  }

  @Test
  void judgesEachJobAsItWouldBeJudgedAlone() throws InterruptedException {
    List<JobFile.Row> rows = lids(50);
    String id = batches.begin("fifty lids", rows).id();
    await(() -> found(id).state().over());
    Batch batch = found(id);
    assertEquals(Task.State.DONE, batch.state());
    assertEquals(50, batch.tally().done());
    assertTrue(batch.tally().fits() > 0 && batch.tally().fits() < 50, batch.toString());
    List<JsonNode> results = results(id);
    for (int i = 0; i < rows.size(); i++) {
      Job job = JobForm.read(rows.get(i).document(), current.get());
      JsonNode alone = BatchJson.of(i + 1, "lid " + (i + 1), job, Ranking.of(current.get(), job));
      assertEquals(alone.toString(), results.get(i).toString());
    }
  }

  @Test
  void goesOnAfterARestartWithWhatIsLeft() throws InterruptedException {
    String id = batches.begin("many lids", lids(300)).id();
    await(() -> found(id).tally().done() > 0);
    tasks.close();
    List<JsonNode> before = results(id);
    assertTrue(before.size() > 0 && before.size() < 300, "before: " + before.size());
    assertEquals(Task.State.RUNNING, found(id).state());

    tasks = new Tasks();
    batches = new Batches(table, tasks, current);
    batches.resume();
    await(() -> found(id).state().over());
    assertEquals(Task.State.DONE, found(id).state());
    List<JsonNode> all = results(id);
    assertEquals(300, all.size());
    assertEquals(300, new HashSet<>(all.stream().map(each -> each.get("row")).toList()).size());
    assertEquals(before, all.subList(0, before.size()));
  }

  @Test
  void keepsWhatThereWasWhenItIsStoppedAndNeverGoesOn() throws InterruptedException {
    String id = batches.begin("many lids", lids(300)).id();
    await(() -> found(id).tally().done() > 0);
    batches.stop(id);
    assertEquals(Task.State.STOPPED, found(id).state());
    batches.resume();
    assertEquals(0, tasks.open());
    Thread.sleep(1000);
    int kept = found(id).tally().done();
    assertTrue(kept > 0 && kept < 300, "kept " + kept);
    assertEquals(Task.State.STOPPED, found(id).state());
    batches.stop(id);
    assertFalse(batches.find(id).isPresent());
    assertEquals(List.of(), results(id));
  }

  @Test
  void aJobThatCannotBeComputedSpoilsNoOther() throws InterruptedException {
    List<JobFile.Row> rows = lids(2);
    // As a file would never let it through: a range may change between file and turn.
    rows.get(0).document().putObject("damper").put("partNumber", "GONE-0001");
    String id = batches.begin("two lids", rows).id();
    await(() -> found(id).state().over());
    assertEquals(1, found(id).tally().refused());
    assertEquals(2, found(id).tally().done());
    assertEquals("refused", results(id).get(0).path("verdict").asText());
    assertFalse(results(id).get(0).path("faults").isEmpty());
  }
}
