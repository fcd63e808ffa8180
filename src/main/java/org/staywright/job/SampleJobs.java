package org.staywright.job;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.staywright.database.Author;
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
  private final Stock stock;
  private final boolean wanted;

  /**
   * @param wanted whether an empty database is filled with samples
   */
  public SampleJobs(
      Jobs jobs,
      Stock stock,
      @ConfigProperty(name = "staywright.samples", defaultValue = "true") boolean wanted) {
    this.jobs = jobs;
    this.stock = stock;
    this.wanted = wanted;
  }

  @Transactional
  void onStart(@Observes @Priority(SECOND) StartupEvent started) {
    // Of two instances that start at once the second waits here.
    stock.hold();
    if (wanted && LoadedSamples.count() == 0) {
      for (JsonNode job : file()) {
        jobs.add(Author.PROGRAM, JobForm.withDefaults(job));
      }
      LoadedSamples mark = new LoadedSamples();
      mark.loaded = Instant.now().truncatedTo(ChronoUnit.MILLIS);
      mark.persist();
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
