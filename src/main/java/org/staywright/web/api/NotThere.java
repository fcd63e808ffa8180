package org.staywright.web.api;

/** Thrown where an address names something that does not exist. */
final class NotThere extends RuntimeException {

  private final String key;
  private final String name;

  /**
   * @param key of the sentence
   * @param name that leads nowhere
   */
  NotThere(String key, String name) {
    super(key + ": " + name);
    this.key = key;
    this.name = name;
  }

  String key() {
    return key;
  }

  String name() {
    return name;
  }
}
