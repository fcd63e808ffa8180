package org.staywright.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import io.quarkus.arc.Arc;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.database.Audit;
import org.staywright.unit.Refusal;

@QuarkusTest
@Tag("server")
class SigningInTest {

  private static final String PASSWORD = "a hatch, a lid and a guard";

  private final String name = "somebody " + UUID.randomUUID();

  /** What is done so much later, as a request does it. */
  private static <T> T after(Duration later, Function<SigningIn, T> work) {
    SigningIn then = new SigningIn(Clock.offset(Clock.systemUTC(), later), audit());
    return QuarkusTransaction.requiringNew().call(() -> work.apply(then));
  }

  private static Audit audit() {
    return Arc.container().instance(Audit.class).get();
  }

  private static <T> T now(Function<SigningIn, T> work) {
    return after(Duration.ZERO, work);
  }

  private static <T> T keep(Function<Accounts, T> work) {
    return QuarkusTransaction.requiringNew().call(() -> work.apply(new Accounts(audit())));
  }

  private Account account() {
    return keep(any -> Account.named(name).orElseThrow());
  }

  private void welcome(Role role) {
    String word = keep(accounts -> accounts.add(ANNA, name, role));
    assertTrue((boolean) now(in -> in.choosePassword(ANNA, name, word, PASSWORD)));
  }

  private Optional<String> signIn(Duration later, String password) {
    return after(later, in -> in.signIn(ANNA, name, password));
  }

  private static boolean lasts(Duration later, String secret) {
    return after(later, in -> in.session(secret)).isPresent();
  }

  @Test
  void aSessionEndsAfterEightHoursOfRestAndAfterSevenDaysOfWork() {
    welcome(Role.EDITOR);
    String secret = signIn(Duration.ZERO, PASSWORD).orElseThrow();
    assertFalse(lasts(Duration.ofHours(8), secret));
    for (int hours = 7; hours < 7 * 24; hours += 7) {
      assertTrue(lasts(Duration.ofHours(hours), secret), hours + " h");
    }
    assertFalse(lasts(Duration.ofHours(7 * 24), secret));
  }

  @Test
  void aSessionEndsWithTheAccountWithAnotherPasswordAndOnceItIsLeft() {
    welcome(Role.EDITOR);
    String left = signIn(Duration.ZERO, PASSWORD).orElseThrow();
    String other = signIn(Duration.ZERO, PASSWORD).orElseThrow();
    now(
        in -> {
          in.signOut(left);
          return null;
        });
    assertFalse(lasts(Duration.ZERO, left));
    assertTrue(lasts(Duration.ZERO, other));
    assertTrue(
        (boolean)
            now(
                in ->
                    in.changePassword(ANNA, account().id, PASSWORD, "three springs and a damper")));
    assertFalse(lasts(Duration.ZERO, other));
    String last = signIn(Duration.ZERO, "three springs and a damper").orElseThrow();
    keep(
        accounts -> {
          accounts.change(ANNA, account().id, Role.EDITOR, false);
          return null;
        });
    assertFalse(lasts(Duration.ZERO, last));
    assertTrue(signIn(Duration.ZERO, "three springs and a damper").isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"5, 0", "6, 30", "7, 60", "8, 120", "9, 240", "10, 480", "11, 900", "12, 900"})
  void locksLongerWithEachWrongPassword(int wrong, int seconds) {
    welcome(Role.READER);
    Duration at = Duration.ZERO;
    for (int i = 0; i < wrong; i++) {
      // Each only after the lock of the one before.
      at = at.plus(SigningIn.LONGEST_LOCK);
      assertTrue(signIn(at, "wrong").isEmpty());
    }
    // A second for the time that the test takes by itself.
    if (seconds > 0) {
      assertTrue(signIn(at.plusSeconds(seconds - 10), PASSWORD).isEmpty());
    }
    assertTrue(signIn(at.plusSeconds(seconds + 1), PASSWORD).isPresent());
    // What was wrong before is forgiven.
    assertTrue(signIn(at.plusSeconds(seconds + 1), "wrong").isEmpty());
    assertTrue(signIn(at.plusSeconds(seconds + 1), PASSWORD).isPresent());
  }

  @Test
  void aTokenEndsOnItsDayAndMayNoMoreThanItsAccount() {
    welcome(Role.KEEPER);
    long id = account().id;
    String token = keep(accounts -> accounts.addToken(ANNA, id, "nightly import", Role.KEEPER, 2));
    assertEquals(Role.KEEPER, now(in -> in.token(token)).orElseThrow().role());
    assertEquals(name, now(in -> in.token(token)).orElseThrow().name());
    assertTrue(after(Duration.ofHours(47), in -> in.token(token)).isPresent());
    assertTrue(after(Duration.ofHours(48), in -> in.token(token)).isEmpty());
    keep(
        accounts -> {
          accounts.change(ANNA, id, Role.READER, true);
          return null;
        });
    assertEquals(Role.READER, now(in -> in.token(token)).orElseThrow().role());
    keep(
        accounts -> {
          accounts.change(ANNA, id, Role.READER, false);
          return null;
        });
    assertTrue(now(in -> in.token(token)).isEmpty());
  }

  @Test
  void aTokenIsRefusedThatMayMoreThanItsAccountOrLastsTooLong() {
    welcome(Role.EDITOR);
    long id = account().id;
    Refusal refusal =
        assertThrows(
            Refusal.class,
            () -> keep(accounts -> accounts.addToken(ANNA, id, " ", Role.KEEPER, 367)));
    assertEquals(
        "[account-name, account-token-role, account-token-days]",
        refusal.faults().stream().map(fault -> fault.code()).toList().toString());
  }

  @Test
  void onlyDigestsAreKept() {
    welcome(Role.EDITOR);
    String secret = signIn(Duration.ZERO, PASSWORD).orElseThrow();
    String token = keep(accounts -> accounts.addToken(ANNA, account().id, "test", Role.EDITOR, 1));
    assertTrue(account().passwordHash.startsWith("$argon2id$v=19$m=19456,t=2,p=1$"));
    assertEquals(1, (long) keep(any -> Session.count("digest", Secret.digest(secret))));
    assertEquals(0, (long) keep(any -> Session.count("digest", secret)));
    assertEquals(0, (long) keep(any -> Token.count("digest", token)));
  }

  @Test
  void aWordEndsAfterSevenDays() {
    String word = keep(accounts -> accounts.add(ANNA, name, Role.READER));
    Duration week = Duration.ofDays(7);
    assertFalse((boolean) after(week, in -> in.choosePassword(ANNA, name, word, PASSWORD)));
    assertTrue(
        (boolean)
            after(
                week.minusMinutes(1),
                in -> in.choosePassword(ANNA, name, word.toLowerCase(Locale.ROOT), PASSWORD)));
  }

  @Test
  void whoNamesNobodyWaitsAsLongAsWhoNamesTheWrongPassword() {
    welcome(Role.READER);
    int each = 15;
    long[] somebody = new long[each];
    long[] nobody = new long[each];
    for (int i = 0; i < each; i++) {
      long start = System.nanoTime();
      now(in -> in.signIn(ANNA, name, "wrong"));
      long between = System.nanoTime();
      now(in -> in.signIn(ANNA, "nobody", "wrong"));
      somebody[i] = between - start;
      nobody[i] = System.nanoTime() - between;
    }
    Arrays.sort(somebody);
    Arrays.sort(nobody);
    double ratio = (double) nobody[each / 2] / somebody[each / 2];
    assertTrue(ratio > 0.6 && ratio < 1.6, "nobody/somebody " + ratio);
  }
}
