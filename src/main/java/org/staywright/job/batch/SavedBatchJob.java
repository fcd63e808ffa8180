package org.staywright.job.batch;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import org.hibernate.Length;

/** A job of a batch as it came, and what came of it. */
@Entity
@Table(name = "batch_job")
@IdClass(SavedBatchJob.Key.class)
public class SavedBatchJob extends PanacheEntityBase {

  /** A job's place in its batch. */
  public record Key(String batch, int number) {}

  @Id
  @Column(name = "batch_id", length = 36)
  public String batch;

  /** Of its row in the file. */
  @Id
  @Column(name = "row_no")
  public int number;

  /** JSON text. */
  @Column(length = Length.LONG32)
  public String document;

  /** Null while it waits. */
  @Column(length = 10)
  public String verdict;

  /** JSON text, null while it waits. */
  @Column(length = Length.LONG32)
  public String result;
}
