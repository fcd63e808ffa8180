package org.staywright.fit.job;

import org.jspecify.annotations.Nullable;

/**
 * Where a load is to stay put, with nominal springs.
 *
 * @param from rad or m, null for the start of the travel
 * @param to rad or m, null for its end
 */
public record Still(@Nullable Double from, @Nullable Double to) {}
