package org.staywright.account;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;

/** Somebody who is signed in at one browser; gone once he signs out. */
@Entity
@Table(name = "account_session")
class Session extends PanacheEntityBase {

  /** Nobody works longer without a break. */
  static final Duration IDLE = Duration.ofHours(8);

  static final Duration LONGEST = Duration.ofDays(7);

  /** So often it is written down that it is used. */
  static final Duration NOTED = Duration.ofMinutes(1);

  @Id
  @Column(length = 64)
  String digest;

  @ManyToOne
  @JoinColumn(name = "account_id")
  Account account;

  Instant begun;

  Instant seen;

  boolean lasts(Instant now) {
    return account.active && now.isBefore(seen.plus(IDLE)) && now.isBefore(begun.plus(LONGEST));
  }
}
