package org.staywright.account;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;

/** Names and passwords in, sessions out. */
@ApplicationScoped
@Transactional
public class SigningIn {

  /** Wrong passwords in a row that cost nothing. */
  static final int FREE_FAILURES = 5;

  /** After the next; each one more doubles it. */
  static final Duration FIRST_LOCK = Duration.ofSeconds(30);

  static final Duration LONGEST_LOCK = Duration.ofMinutes(15);

  private final Clock clock;
  private final Audit audit;

  @Inject
  SigningIn(Audit audit) {
    this(Clock.systemUTC(), audit);
  }

  SigningIn(Clock clock, Audit audit) {
    this.clock = clock;
    this.audit = audit;
  }

  /**
   * The secret of a new session. Empty for a wrong name, a wrong password and a locked account
   * alike: who guesses is not told which, nor by how long it takes.
   *
   * @param author who tries
   */
  public Optional<String> signIn(Author author, String name, String password) {
    Optional<Account> found = Account.named(name);
    boolean right =
        PasswordHash.matches(password, found.map(account -> account.passwordHash).orElse(null));
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Account account = found.get();
    if (locked(account)) {
      return Optional.empty();
    }
    if (!right || !account.active) {
      fail(author, account.id);
      return Optional.empty();
    }
    return Optional.of(begin(account));
  }

  private boolean locked(Account account) {
    return account.lockedUntil != null && now().isBefore(account.lockedUntil);
  }

  /** Counted in the database: several may guess at once, at several instances. */
  private void fail(Author author, long id) {
    Account.update("failures = failures + 1 where id = ?1", id);
    Account.getEntityManager().clear();
    Account account = Account.findById(id);
    int over = account.failures - FREE_FAILURES;
    if (over > 0) {
      Duration lock = FIRST_LOCK.multipliedBy(1L << Math.min(over - 1, 10));
      Instant until = now().plus(lock.compareTo(LONGEST_LOCK) > 0 ? LONGEST_LOCK : lock);
      String before = Told.of(account);
      Account.update("lockedUntil = ?1 where id = ?2", until, id);
      Account.getEntityManager().refresh(account);
      note(author, Action.LOCKED, before, account);
    }
  }

  private String begin(Account account) {
    Instant now = now();
    account.failures = 0;
    account.lockedUntil = null;
    account.signedIn = now;
    Session.delete("begun < ?1", now.minus(Session.LONGEST));
    String secret = Secret.drawn();
    Session session = new Session();
    session.digest = Secret.digest(secret);
    session.account = account;
    session.begun = now;
    session.seen = now;
    session.persist();
    return secret;
  }

  /**
   * A password chosen with the word that was given for it; whoever was signed in before is not any
   * more. False for a wrong name and a wrong or spent word alike.
   */
  public boolean choosePassword(Author author, String name, String word, String password) {
    Optional<Account> found =
        Account.named(name)
            .filter(account -> account.active && account.wordDigest != null)
            .filter(account -> account.wordDigest.equals(Secret.digest(plain(word))))
            .filter(account -> now().isBefore(account.wordEnds));
    found.ifPresent(account -> set(author, account, password));
    return found.isPresent();
  }

  /** However it was typed. */
  private static String plain(String word) {
    return word.strip().toUpperCase(Locale.ROOT);
  }

  /** False where the old one is wrong. */
  public boolean changePassword(Author author, long id, String old, String password) {
    Account account = Account.findById(id);
    if (account == null || locked(account)) {
      return false;
    }
    if (!PasswordHash.matches(old, account.passwordHash)) {
      fail(author, id);
      return false;
    }
    set(author, account, password);
    return true;
  }

  private void set(Author author, Account account, String password) {
    String before = Told.of(account);
    account.passwordHash = PasswordHash.of(password);
    account.wordDigest = null;
    account.wordEnds = null;
    account.failures = 0;
    account.lockedUntil = null;
    Session.delete("account", account);
    note(author, Action.WELCOMED, before, account);
  }

  private void note(Author author, Action action, String before, Account account) {
    String id = account.id.toString();
    audit.note(author, new Change(Subject.ACCOUNT, id, action, before, Told.of(account)));
  }

  /** Who holds the secret of a session that lasts. */
  public Optional<SignedIn> session(String secret) {
    Instant now = now();
    Session session = Session.findById(Secret.digest(secret));
    if (session == null || !session.lasts(now)) {
      return Optional.empty();
    }
    if (now.isAfter(session.seen.plus(Session.NOTED))) {
      session.seen = now;
    }
    Account account = session.account;
    return Optional.of(new SignedIn(account.id, account.name, account.role));
  }

  public void signOut(String secret) {
    Session.deleteById(Secret.digest(secret));
  }

  /** Who holds a token that lasts; it never may more than the account it belongs to. */
  public Optional<SignedIn> token(String secret) {
    Instant now = now();
    Optional<Token> found =
        Token.<Token>find("digest", Secret.digest(secret)).firstResultOptional();
    return found
        .filter(token -> token.lasts(now))
        .map(
            token -> {
              if (token.used == null || now.isAfter(token.used.plus(Session.NOTED))) {
                token.used = now;
              }
              Role role = token.role.atMost(token.account.role);
              return new SignedIn(token.account.id, token.account.name, role);
            });
  }

  /** As fine as every database keeps it. */
  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
