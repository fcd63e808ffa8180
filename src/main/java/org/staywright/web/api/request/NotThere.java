package org.staywright.web.api.request;

/** Thrown where an address names something that does not exist. */
public final class NotThere extends RuntimeException {

  private final String key;
  private final String name;

  /**
   * @param key of the sentence
   * @param name that leads nowhere
   */
  public NotThere(String key, String name) {
    super(key + ": " + name);
    this.key = key;
    this.name = name;
  }

  public String key() {
    return key;
  }

  public String name() {
    return name;
  }
}
