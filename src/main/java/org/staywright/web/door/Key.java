package org.staywright.web.door;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** What a request shows: the secret of a session, or the token of a program. */
final class Key extends BaseAuthenticationRequest {

  private final boolean ofProgram;
  private final String secret;

  private Key(boolean ofProgram, String secret) {
    this.ofProgram = ofProgram;
    this.secret = secret;
  }

  static Key ofBrowser(String secret) {
    return new Key(false, secret);
  }

  static Key ofProgram(String token) {
    return new Key(true, token);
  }

  String secret() {
    return secret;
  }

  boolean ofProgram() {
    return ofProgram;
  }
}
