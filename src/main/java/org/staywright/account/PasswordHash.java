package org.staywright.account;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;

/**
 * Passwords are kept as hashes of Argon2id (RFC 9106), with the least memory and rounds of the
 * OWASP Password Storage Cheat Sheet, quoted from memory: 19 MiB, 2 passes, one lane.
 */
final class PasswordHash {

  private static final int MEMORY_KIB = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int LENGTH = 32;
  private static final int SALT = 16;

  private static final Argon2Function FUNCTION =
      Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, LENGTH, Argon2.ID);

  /** Of nobody: who names no account waits as long as who names one. */
  private static final String NOBODY = of(Secret.drawn());

  private PasswordHash() {}

  static String of(String password) {
    return Password.hash(password).addRandomSalt(SALT).with(FUNCTION).getResult();
  }

  /**
   * @param hash null where there is none
   */
  static boolean matches(String password, String hash) {
    String kept = hash == null ? NOBODY : hash;
    boolean right = Password.check(password, kept).with(Argon2Function.getInstanceFromHash(kept));
    return right && hash != null;
  }
}
