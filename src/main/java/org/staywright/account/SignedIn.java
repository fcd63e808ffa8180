package org.staywright.account;

/**
 * Who somebody is and what he may.
 *
 * @param account its number
 * @param name as it was given
 * @param by how he is known
 */
public record SignedIn(long account, String name, Role role, By by) {

  /** How somebody is known. */
  public enum By {
    SESSION,
    TOKEN
  }
}
