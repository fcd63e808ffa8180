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
import org.jspecify.annotations.Nullable;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
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

  private final Clock clock = Clock.systemUTC();
  private final Audit audit;

  Accounts(Audit audit) {
    this.audit = audit;
  }

  /** A new word for the first administrator, as long as nobody has ever signed in. */
  public Optional<String> firstWord() {
    if (Account.count("passwordHash is not null") > 0) {
      return Optional.empty();
    }
    Account first = Account.named(FIRST).orElse(null);
    return Optional.of(
        first == null
            ? add(Author.PROGRAM, FIRST, Role.ADMINISTRATOR)
            : invite(Author.PROGRAM, first.id));
  }

  /** A new word for somebody who cannot be asked for one: empty where there is no such account. */
  public Optional<String> wordFor(String name) {
    return Account.named(name).map(account -> invite(Author.PROGRAM, account.id));
  }

  public List<Account> all() {
    return Account.listAll(Sort.by("folded"));
  }

  public Optional<Account> find(long id) {
    return Account.findByIdOptional(id);
  }

  /** The word with which its owner chooses a password. */
  public String add(Author author, String name, Role role) {
    String plain = name.strip();
    if (plain.isEmpty() || plain.length() > LONGEST_NAME) {
      throw refused("name", plain.length(), "1–" + LONGEST_NAME, "account-name");
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
    String word = word(account);
    note(author, account, Action.ADDED, null);
    return word;
  }

  /** A new word for one who has forgotten his password; whoever was signed in is not any more. */
  public String invite(Author author, long id) {
    Account account = Account.findById(id);
    String before = Told.of(account);
    String word = word(account);
    account.passwordHash = null;
    Session.delete("account", account);
    note(author, account, Action.INVITED, before);
    return word;
  }

  private String word(Account account) {
    String word = Secret.word();
    account.wordDigest = Secret.digest(word);
    account.wordEnds = now().plus(WORD_LASTS);
    return word;
  }

  private void note(Author author, Account account, Action action, @Nullable String before) {
    String id = account.id.toString();
    audit.note(author, new Change(Subject.ACCOUNT, id, action, before, Told.of(account)));
  }

  public void change(Author author, long id, Role role, boolean active) {
    Account account = Account.findById(id);
    String before = Told.of(account);
    boolean stays = active && role == Role.ADMINISTRATOR;
    if (!stays && lastAdministrator(account)) {
      throw refused("role", role.code(), Role.ADMINISTRATOR.code(), "account-last");
    }
    account.role = role;
    account.active = active;
    if (!active) {
      Session.delete("account", account);
    }
    note(author, account, Action.CHANGED, before);
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
  public String addToken(Author author, long account, String name, Role role, int days) {
    Account owner = Account.findById(account);
    List<Fault> faults = new ArrayList<>();
    String plain = name.strip();
    if (plain.isEmpty() || plain.length() > LONGEST_NAME) {
      faults.add(new Fault("name", plain.length(), "1–" + LONGEST_NAME, "account-name"));
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
    token.name = plain;
    token.digest = Secret.digest(secret);
    token.role = role;
    token.created = now();
    token.ends = now().plus(Duration.ofDays(days));
    token.persist();
    String id = token.id.toString();
    audit.note(author, new Change(Subject.TOKEN, id, Action.ADDED, null, Told.of(token)));
    return secret;
  }

  /** False where there is none of that account. */
  public boolean removeToken(Author author, long account, long id) {
    Token token = Token.findById(id);
    if (token == null || token.account.id != account) {
      return false;
    }
    String before = Told.of(token);
    token.delete();
    audit.note(author, new Change(Subject.TOKEN, Long.toString(id), Action.REMOVED, before, null));
    return true;
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
