package org.staywright.job.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.staywright.Patience;
import org.staywright.backup.Emptied;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.batch.BatchResultAnswer;
import org.staywright.form.job.JobFile;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.AnswerJson;
import org.staywright.job.task.Task;
import org.staywright.job.task.Tasks;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.EmptyStock;
import org.staywright.stock.SampleRange;
import org.staywright.stock.Stock;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
@TestInstance(Lifecycle.PER_CLASS)
class BatchesTest {

  private static final long SEED = 20261125;

  private final long seed = Long.getLong("staywright.seed", SEED);

  /** Some pieces, so that there is a while between the first and the last. */
  private static final int MANY = 130;

  @Inject Batches program;
  @Inject BatchTable table;
  @Inject Stock stock;
  @Inject DataSource database;

  private CurrentRange current;
  private Tasks tasks;
  private Batches batches;

  /** The program itself looks for no batches: the instances here are the test's own. */
  @BeforeAll
  void fillTheStock() {
    program.close();
    Emptied.all(database);
    new SampleRange(stock, true).loadIfFirst();
  }

  @BeforeEach
  void start() {
    Emptied.ofBatches(database);
    current = new CurrentRange(stock);
    tasks = new Tasks();
    batches = new Batches(table, tasks, current);
  }

  @AfterEach
  void end() {
    batches.close();
  }

  private List<JobFile.Row> lids(int count) {
    System.out.println("BatchesTest seed " + seed);
    return lids(count, seed);
  }

  static List<JobFile.Row> lids(int count, long seed) {
    Random random = new Random(seed);
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

  private Batch found(String id) {
    return batches.find(id).orElseThrow();
  }

  @Test
  void judgesEachJobAsItWouldBeJudgedAlone() throws InterruptedException {
    List<JobFile.Row> rows = lids(50);
    String id = batches.begin(ANNA, "fifty lids", rows).id();
    Patience.until(() -> found(id).state().over());
    Batch batch = found(id);
    assertEquals(Task.State.DONE, batch.state());
    assertEquals(50, batch.tally().done());
    if (seed == SEED) {
      assertTrue(batch.tally().fits() > 0 && batch.tally().fits() < 50, batch.toString());
    }
    List<JsonNode> results = results(id);
    for (int i = 0; i < rows.size(); i++) {
      Job job = JobForm.read(rows.get(i).document(), current.get());
      Ranking ranking = Ranking.of(current.get(), job);
      var alone = BatchResultAnswer.of(i + 1, "lid " + (i + 1), job, ranking);
      assertEquals(AnswerJson.tree(alone).toString(), results.get(i).toString());
    }
  }

  @Test
  void goesOnAfterARestartWithWhatIsLeft() throws InterruptedException {
    String id = batches.begin(ANNA, "many lids", lids(MANY)).id();
    Patience.until(() -> found(id).tally().done() > 0);
    batches.close();
    List<JsonNode> before = results(id);
    assertTrue(before.size() > 0 && before.size() < MANY, "before: " + before.size());
    assertEquals(Task.State.RUNNING, found(id).state());

    tasks = new Tasks();
    batches = new Batches(table, tasks, current);
    batches.look();
    Patience.until(() -> found(id).state().over());
    assertEquals(Task.State.DONE, found(id).state());
    List<JsonNode> all = results(id);
    assertEquals(MANY, all.size());
    assertEquals(MANY, new HashSet<>(all.stream().map(each -> each.get("row")).toList()).size());
    assertEquals(before, all.subList(0, before.size()));
  }

  @Test
  void keepsWhatThereWasWhenItIsStoppedAndNeverGoesOn() throws InterruptedException {
    String id = batches.begin(ANNA, "many lids", lids(MANY)).id();
    Patience.until(() -> found(id).tally().done() > 0);
    batches.stop(ANNA, id);
    assertEquals(Task.State.STOPPED, found(id).state());
    batches.look();
    assertEquals(0, tasks.open());
    // One after the other: what was under way is over when this is.
    Task after = tasks.start(progress -> null);
    Patience.until(() -> after.state().over());
    int kept = found(id).tally().done();
    assertTrue(kept > 0 && kept < MANY, "kept " + kept);
    assertEquals(Task.State.STOPPED, found(id).state());
    batches.stop(ANNA, id);
    assertFalse(batches.find(id).isPresent());
    assertEquals(List.of(), results(id));
  }

  @Test
  void aJobThatCannotBeComputedSpoilsNoOther() throws InterruptedException {
    List<JobFile.Row> rows = lids(2);
    // As a file would never let it through: a range may change between file and turn.
    rows.get(0).document().putObject("damper").put("partNumber", "GONE-0001");
    String id = batches.begin(ANNA, "two lids", rows).id();
    Patience.until(() -> found(id).state().over());
    assertEquals(1, found(id).tally().refused());
    assertEquals(2, found(id).tally().done());
    assertEquals("refused", results(id).get(0).path("verdict").asText());
    assertFalse(results(id).get(0).path("faults").isEmpty());
  }

  @Test
  void twoInstancesShareTheBatchesAndJudgeNothingTwice() throws InterruptedException {
    Tasks others = new Tasks();
    Batches other = new Batches(table, others, current);
    try {
      List<String> ids = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        ids.add(batches.begin(ANNA, "lids", lids(40)).id());
      }
      Patience.until(
          () -> {
            batches.look();
            other.look();
            return ids.stream().allMatch(id -> found(id).state().over());
          });
      for (String id : ids) {
        assertEquals(Task.State.DONE, found(id).state());
        assertEquals(40, found(id).tally().done());
      }
      assertEquals(120, batches.judged() + other.judged());
      assertTrue(other.judged() > 0, "the other only watched");
    } finally {
      other.close();
    }
  }

  @Test
  void takesUpABatchWhoseInstanceDiedOnceItsLeaseHasRunOut() throws Exception {
    Tasks dying = new Tasks();
    Batches dead = new Batches(table, Duration.ofHours(1), dying, current);
    String id = dead.begin(ANNA, "many lids", lids(MANY)).id();
    Patience.until(() -> found(id).tally().done() > 0);
    // As if its process had been killed: nothing is given back.
    dying.close();
    batches.look();
    assertEquals(0, tasks.open(), "still leased");
    anHourGoesBy();
    Patience.until(
        () -> {
          batches.look();
          return found(id).state().over();
        });
    assertEquals(Task.State.DONE, found(id).state());
    assertEquals(MANY, results(id).size());
    assertTrue(batches.judged() > 0);
  }

  private void anHourGoesBy() throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.executeUpdate("update batch set held_until = held_until - interval '1' hour");
    }
  }
}
