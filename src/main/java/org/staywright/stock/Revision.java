package org.staywright.stock;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** A state of the range. Once there it never changes: nobody else writes its fields. */
@Entity
@Table(name = "stock_revision")
public class Revision extends PanacheEntityBase {

  @Id
  @Column(name = "revision")
  int number;

  /** The database sets it. */
  @Column(insertable = false, updatable = false)
  Instant created;

  @Column(length = 200)
  String origin;

  Revision() {}

  /**
   * @param number of the one before, and 1
   */
  Revision(int number, String origin) {
    this.number = number;
    this.origin = origin;
  }

  /** The newest first. */
  static List<Revision> all() {
    return findAll(Sort.descending("number")).list();
  }

  /** The number of the newest, 0 where there is none. */
  static int newest() {
    return Revision.<Revision>findAll(Sort.descending("number"))
        .firstResultOptional()
        .map(Revision::number)
        .orElse(0);
  }

  /** Until the transaction ends, nobody else makes one. */
  static void hold() {
    findAll().withLock(LockModeType.PESSIMISTIC_WRITE).list();
  }

  /** Counted from 1. */
  public int number() {
    return number;
  }

  /** When it was made. */
  public Instant created() {
    return created;
  }

  /** Where its rows came from. */
  public String origin() {
    return origin;
  }
}
