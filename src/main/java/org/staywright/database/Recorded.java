package org.staywright.database;

import java.time.Instant;

/**
 * A row of the audit: who did what, and when.
 *
 * @param id rising; where one is missing, something was begun and taken back
 */
public record Recorded(long id, Instant happened, Author author, Change change) {}
