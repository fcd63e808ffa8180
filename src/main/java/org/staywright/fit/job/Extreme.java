package org.staywright.fit.job;

/**
 * The worst that a figure comes to, and where.
 *
 * @param value SI
 * @param travel where on the way, rad or m
 * @param corner in which it comes to that
 */
public record Extreme(double value, double travel, Corner corner) {}
