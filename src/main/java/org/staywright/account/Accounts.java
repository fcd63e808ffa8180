package org.staywright.account;

import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** The accounts and their tokens, as an administrator and their owners keep them. */
@ApplicationScoped
@Transactional
public class Accounts {

  /** Who runs the program for the first time. */
  public static final String FIRST = "administrator";

  public static final int SHORTEST_PASSWORD = 12;
  public static final int LONGEST_PASSWORD = 128;
  public static final int LONGEST_NAME = 64;
  public static final int LONGEST_TOKEN_DAYS = 366;

  private static final Duration WORD_LASTS = Duration.ofDays(7);

  private final Clock clock;

  public Accounts() {
    this(Clock.systemUTC());
  }

  Accounts(Clock clock) {
    this.clock = clock;
  }

  /** A new word for the first administrator, as long as nobody has ever signed in. */
  public Optional<String> firstWord() {
    if (Account.count("passwordHash is not null") > 0) {
      return Optional.empty();
    }
    Account first = Account.named(FIRST).orElse(null);
    return Optional.of(first == null ? add(FIRST, Role.ADMINISTRATOR) : invite(first.id));
  }

  /** A new word for somebody who cannot be asked for one: empty where there is no such account. */
  public Optional<String> wordFor(String name) {
    return Account.named(name).map(account -> invite(account.id));
  }

  public List<Account> all() {
    return Account.listAll(Sort.by("folded"));
  }

  public Optional<Account> find(long id) {
    return Account.findByIdOptional(id);
  }

  /** The word with which its owner chooses a password. */
  public String add(String name, Role role) {
    String plain = name.strip();
    if (plain.isEmpty() || plain.length() > LONGEST_NAME) {
      throw refused("name", name, "1–" + LONGEST_NAME, "account-name");
    }
    if (Account.named(plain).isPresent()) {
      throw refused("name", name, "", "account-there");
    }
    Account account = new Account();
    account.name = plain;
    account.folded = Account.fold(plain);
    account.role = role;
    account.active = true;
    account.created = now();
    account.persist();
    return invite(account.id);
  }

  /** A new word for one who has forgotten his password; whoever was signed in is not any more. */
  public String invite(long id) {
    Account account = Account.findById(id);
    String word = Secret.word();
    account.wordDigest = Secret.digest(word);
    account.wordEnds = now().plus(WORD_LASTS);
    account.passwordHash = null;
    Session.delete("account", account);
    return word;
  }

  public void change(long id, Role role, boolean active) {
    Account account = Account.findById(id);
    boolean stays = active && role == Role.ADMINISTRATOR;
    if (!stays && lastAdministrator(account)) {
      throw refused("role", role.code(), Role.ADMINISTRATOR.code(), "account-last");
    }
    account.role = role;
    account.active = active;
    if (!active) {
      Session.delete("account", account);
    }
  }

  private static boolean lastAdministrator(Account account) {
    return account.role == Role.ADMINISTRATOR
        && account.active
        && Account.count("role = ?1 and active = true and id <> ?2", account.role, account.id) == 0;
  }

  public List<Token> tokens(long account) {
    return Token.list("account.id", Sort.by("created"), account);
  }

  /** The secret, which is shown once. */
  public String addToken(long account, String name, Role role, int days) {
    Account owner = Account.findById(account);
    List<Fault> faults = new ArrayList<>();
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      faults.add(new Fault("name", name, "1–" + LONGEST_NAME, "account-name"));
    }
    if (!owner.role.may(role)) {
      faults.add(new Fault("role", role.code(), owner.role.code(), "account-token-role"));
    }
    if (days < 1 || days > LONGEST_TOKEN_DAYS) {
      faults.add(new Fault("days", days, "1–" + LONGEST_TOKEN_DAYS, "account-token-days"));
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    String secret = Token.PREFIX + Secret.drawn();
    Token token = new Token();
    token.account = owner;
    token.name = name.strip();
    token.digest = Secret.digest(secret);
    token.role = role;
    token.created = now();
    token.ends = now().plus(Duration.ofDays(days));
    token.persist();
    return secret;
  }

  /** False where there is none of that account. */
  public boolean removeToken(long account, long token) {
    return Token.delete("id = ?1 and account.id = ?2", token, account) == 1;
  }

  /** Refuses what is too short, too long or the name itself. */
  public static void requireGood(String password, String name) {
    int length = password.codePointCount(0, password.length());
    if (length < SHORTEST_PASSWORD || length > LONGEST_PASSWORD) {
      String bound = SHORTEST_PASSWORD + "–" + LONGEST_PASSWORD;
      throw refused("password", length, bound, "account-password-length");
    }
    if (Account.fold(password).contains(Account.fold(name))) {
      throw refused("password", "", "", "account-password-name");
    }
  }

  private static Refusal refused(String where, Object value, String bound, String code) {
    return new Refusal(new Fault(where, value, bound, code));
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
