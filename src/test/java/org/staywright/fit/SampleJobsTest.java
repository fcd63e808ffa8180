package org.staywright.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.part.Family;
import org.staywright.part.Range;

/** The sample jobs are worth opening: each has parts that fit it, and near misses to learn from. */
class SampleJobsTest {

  private static final Range RANGE = SampleRange.with(Family.SEAT_COLUMN);

  @TestFactory
  Stream<DynamicTest> everySampleJobHasPartsThatFit() throws IOException {
    List<JsonNode> jobs = jobs();
    assertTrue(jobs.size() >= 4, "only " + jobs.size() + " sample jobs");
    return jobs.stream()
        .map(job -> DynamicTest.dynamicTest(job.get("name").asText(), () -> hasFits(job)));
  }

  @Test
  void theStoolHasADozenColumnsThatGiveLessThanThirtyMillimetres() throws IOException {
    ObjectNode stool = (ObjectNode) jobs().get(jobs().size() - 1);
    stool.put("limit", 200);
    Ranking ranking = Ranking.of(RANGE, JobForm.read(stool));
    assertEquals(ranking.fitsTotal(), ranking.fits().size());
    long stiff =
        ranking.fits().stream()
            .filter(fit -> fit.seat().orElseThrow().greatestBounce() < 0.03)
            .count();
    assertTrue(stiff >= 12, stiff + " of " + ranking.fitsTotal());
  }

  private static List<JsonNode> jobs() throws IOException {
    List<JsonNode> jobs = new ArrayList<>();
    try (var in = SampleJobsTest.class.getResourceAsStream("/catalog-data/sample-jobs.json")) {
      new ObjectMapper().readTree(in).forEach(jobs::add);
    }
    return jobs;
  }

  private static void hasFits(JsonNode job) {
    Ranking ranking = Ranking.of(RANGE, JobForm.read(job));
    assertTrue(ranking.fitsTotal() >= 3, "fits: " + ranking.fitsTotal());
    assertTrue(ranking.nearTotal() >= 3, "near: " + ranking.nearTotal());
  }
}
