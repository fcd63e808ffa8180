package org.staywright.account;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** A person who may sign in. */
@Entity
@Table(name = "account")
public class Account extends PanacheEntityBase {

  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  public Long id;

  @Version public int version;

  /** As it was given. */
  @Column(length = 64)
  public String name;

  /** By which it is found, whatever the case. */
  @Column(length = 64, unique = true)
  public String folded;

  @Enumerated(EnumType.STRING)
  @Column(length = 16)
  public Role role;

  /** Null until its owner has chosen a password. */
  @Column(name = "password_hash", length = 200)
  String passwordHash;

  /** Of the word with which the owner chooses one; null where there is none. */
  @Column(name = "word_digest", length = 64)
  String wordDigest;

  @Column(name = "word_ends")
  Instant wordEnds;

  public boolean active;

  /** Since the last right one. */
  int failures;

  @Column(name = "locked_until")
  Instant lockedUntil;

  public Instant created;

  /** Null for never. */
  @Column(name = "signed_in")
  public Instant signedIn;

  /** Whether its owner has chosen a password. */
  public boolean welcomed() {
    return passwordHash != null;
  }

  static Optional<Account> named(String name) {
    return find("folded", fold(name)).firstResultOptional();
  }

  static String fold(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
