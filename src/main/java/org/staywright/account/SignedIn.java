package org.staywright.account;

/**
 * Who somebody is and what he may.
 *
 * @param account its number
 * @param name as it was given
 */
public record SignedIn(long account, String name, Role role) {}
