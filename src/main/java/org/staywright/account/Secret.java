package org.staywright.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * What whoever holds it is known by: drawn at random, so long that it cannot be guessed; only its
 * digest is kept (FIPS 180-4: SHA-256, which needs no slowing down for 256 bits of chance).
 */
public final class Secret {

  private static final SecureRandom CHANCE = new SecureRandom();
  private static final int BYTES = 32;

  /** Letters and digits that nobody mistakes for one another on paper or screen. */
  private static final String PLAIN = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

  /** 32 signs, 5 bits each. */
  private static final int WORD_SIGNS = 20;

  private static final int GROUP = 5;

  private Secret() {}

  static String drawn() {
    byte[] bytes = new byte[BYTES];
    CHANCE.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** A word to be read and typed: 100 bits in groups of five signs. */
  static String word() {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < WORD_SIGNS; i++) {
      if (i > 0 && i % GROUP == 0) {
        word.append('-');
      }
      word.append(PLAIN.charAt(CHANCE.nextInt(PLAIN.length())));
    }
    return word.toString();
  }

  static String digest(String secret) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(secret.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
