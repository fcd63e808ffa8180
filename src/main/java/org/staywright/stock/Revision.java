package org.staywright.stock;

import java.time.Instant;

/**
 * A state of the range.
 *
 * @param number counted from 1
 * @param created when it was made
 * @param origin where its rows came from
 */
public record Revision(int number, Instant created, String origin) {}
