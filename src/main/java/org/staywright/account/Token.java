package org.staywright.account;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;

/** What a program signs in with, in the name of whoever made it. */
@Entity
@Table(name = "account_token")
public class Token extends PanacheEntityBase {

  /** By which it is told from other words, for those who look for secrets where none should be. */
  public static final String PREFIX = "sw_";

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  @ManyToOne
  @JoinColumn(name = "account_id")
  public Account account;

  /** What it is for. */
  @Column(length = 64)
  public String name;

  @Column(length = 64, unique = true)
  String digest;

  @Enumerated(EnumType.STRING)
  @Column(length = 16)
  public Role role;

  public Instant created;

  public Instant ends;

  /** Null for never. */
  public Instant used;

  boolean lasts(Instant now) {
    return account.active && now.isBefore(ends);
  }
}
