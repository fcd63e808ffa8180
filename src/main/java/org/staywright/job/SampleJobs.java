package org.staywright.job;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.stock.Stock;

/** The invented jobs that come with the program, loaded once. */
@ApplicationScoped
public class SampleJobs {

  private static final String FILE = "/catalog-data/sample-jobs.json";

  /** After the range. */
  private static final int SECOND = 20;

  private final Jobs jobs;
  private final EntityManager database;
  private final boolean wanted;

  /**
   * @param wanted whether an empty database is filled with samples
   */
  public SampleJobs(
      Jobs jobs,
      EntityManager database,
      @ConfigProperty(name = "staywright.samples", defaultValue = "true") boolean wanted) {
    this.jobs = jobs;
    this.database = database;
    this.wanted = wanted;
  }

  @Transactional
  void onStart(@Observes @Priority(SECOND) StartupEvent started) {
    // Of two instances that start at once the second waits here.
    database.createNativeQuery(Stock.HOLD).getResultList();
    long loaded =
        ((Number) database.createNativeQuery("select count(*) from sample_jobs").getSingleResult())
            .longValue();
    if (wanted && loaded == 0) {
      for (JsonNode job : file()) {
        jobs.add(JobForm.withDefaults(job));
      }
      database
          .createNativeQuery("insert into sample_jobs (loaded) values (current_timestamp)")
          .executeUpdate();
    }
  }

  private static JsonNode file() {
    try (InputStream file = SampleJobs.class.getResourceAsStream(FILE)) {
      return JsonText.read(file.readAllBytes()).tree();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + FILE, e);
    }
  }
}
