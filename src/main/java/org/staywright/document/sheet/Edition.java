package org.staywright.document.sheet;

import java.time.LocalDate;

/**
 * Which stock a document was made from.
 *
 * @param revision of the stock
 * @param date of that revision
 */
public record Edition(int revision, LocalDate date) {}
