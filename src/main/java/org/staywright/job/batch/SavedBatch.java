package org.staywright.job.batch;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A batch as it is stored; who works on it is written by {@link Leases} alone. */
@Entity
@Table(name = "batch")
public class SavedBatch extends PanacheEntityBase {

  @Id
  @Column(length = 36)
  public String id;

  @Column(length = 200)
  public String name;

  /** The database sets it: instances order batches by it. */
  @Column(insertable = false, updatable = false)
  public Instant created;

  /** As {@link org.staywright.job.task.Task.State#code}. */
  @Column(length = 10)
  public String state;

  /** Its jobs. */
  public int total;
}
