package org.staywright;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ListeningAddressTest {

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "localhost", "::1", "[::1]", "127.3.2.1"})
  void listensToItsOwnComputerUnasked(String host) {
    assertDoesNotThrow(() -> ListeningAddress.check(host, "none"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.1"})
  void listensToOthersOnlyWhereSomebodyAsksWhoIsThere(String host) {
    String refusal = refusal(host, "none");
    assertTrue(refusal.contains("listen at " + host), refusal);
    assertTrue(refusal.contains("STAYWRIGHT_SIGN_IN=proxy"), refusal);
    assertDoesNotThrow(() -> ListeningAddress.check(host, "proxy"));
    assertDoesNotThrow(() -> ListeningAddress.check(host, "PROXY"));
  }

  @Test
  void saysWhatItDoesNotKnow() {
    assertTrue(refusal("127.0.0.1", "perhaps").contains("STAYWRIGHT_SIGN_IN=perhaps is not known"));
    assertTrue(refusal("no-such-host.invalid", "none").contains("no-such-host.invalid"));
  }

  private static String refusal(String host, String signIn) {
    return assertThrows(CannotStart.class, () -> ListeningAddress.check(host, signIn)).getMessage();
  }
}
