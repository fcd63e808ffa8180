package org.staywright.job.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.job.task.Task;
import org.staywright.job.task.Tasks;
import org.staywright.web.DatabaseOfItsOwn;

@QuarkusTest
@Tag("server")
@TestProfile(DatabaseOfItsOwn.class)
class LostDatabaseTest {

  private static final int MANY = 300;

  @Inject Batches batches;
  @Inject Tasks tasks;

  private Batch found(String id) {
    return batches.find(id).orElseThrow();
  }

  @Test
  void aBatchGoesOnByItselfOnceTheDatabaseIsBack() throws InterruptedException {
    String id = batches.begin("many lids", BatchesTest.lids(MANY, 1)).id();
    Patience.until(() -> found(id).tally().done() > 0);
    DatabaseOfItsOwn.kill();
    try {
      Patience.until(() -> tasks.open() == 0);
    } finally {
      DatabaseOfItsOwn.start();
    }
    Batch before = found(id);
    assertTrue(before.tally().done() < MANY, "done before the database was gone");
    assertEquals(Task.State.RUNNING, before.state());
    Patience.until(() -> found(id).state().over());
    assertEquals(Task.State.DONE, found(id).state());
    List<Object> results = new ArrayList<>();
    batches.results(id, results::add);
    assertEquals(MANY, results.size());
  }
}
