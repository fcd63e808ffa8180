package org.staywright.job;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.Length;
import org.staywright.job.order.Choice;

/** A job as it is stored: its document with every default filled in. */
@Entity
@Table(name = "job")
public class SavedJob extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  @Version public int version;

  @Column(length = 200)
  public String name;

  /** JSON text, not a large object: PostgreSQL would store that elsewhere. */
  @Column(length = Length.LONG32)
  public String document;

  public Instant created;

  public Instant changed;

  /** Null where nothing is chosen. */
  @Embedded public Choice choice;
}
