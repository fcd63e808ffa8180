package org.staywright;

import org.staywright.wording.Wording;

/** The program cannot start; its message is a sentence for whoever started it. */
final class CannotStart extends RuntimeException {

  CannotStart(String key, Object... values) {
    super(Wording.english().text(key, values));
  }
}
