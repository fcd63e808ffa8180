package org.staywright.fit.job;

/**
 * Where a load is to stay put, with nominal springs.
 *
 * @param from rad or m, null for the start of the travel
 * @param to rad or m, null for its end
 */
public record Still(Double from, Double to) {}
