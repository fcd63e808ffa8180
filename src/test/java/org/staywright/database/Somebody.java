package org.staywright.database;

import org.staywright.database.Author.Standing;

/** Who changes things in tests. */
public final class Somebody {

  public static final Author ANNA = new Author(Standing.SAID, "Anna", "192.0.2.7", "request-1");

  private Somebody() {}
}
