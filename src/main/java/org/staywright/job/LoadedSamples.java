package org.staywright.job;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A mark beside the saved jobs once the samples are among them: deleted ones stay deleted. */
@Entity
@Table(name = "sample_jobs")
public class LoadedSamples extends PanacheEntityBase {

  @Id public Instant loaded;
}
