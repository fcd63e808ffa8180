package org.staywright;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Where the program listens: to other computers only if somebody asks who is there. */
final class ListeningAddress {

  /** Who asks: nobody, this program by its accounts, or a proxy before it. */
  enum SignIn {
    NONE,
    ACCOUNTS,
    PROXY;

    static SignIn of(String word) {
      for (SignIn each : values()) {
        if (each.name().equalsIgnoreCase(word)) {
          return each;
        }
      }
      throw new CannotStart("start.sign-in", word);
    }
  }

  private ListeningAddress() {}

  /**
   * @throws CannotStart where it is open to others and nobody asks
   */
  static void check(String host, String signIn) {
    if (SignIn.of(signIn) == SignIn.NONE && !loopback(host)) {
      throw new CannotStart("start.open", host);
    }
  }

  private static boolean loopback(String host) {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException e) {
      throw new CannotStart("start.unknown-host", host);
    }
  }
}
