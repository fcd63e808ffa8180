package org.staywright.fit.job;

import org.jspecify.annotations.Nullable;
import org.staywright.unit.Unit;

/**
 * By how much a part is out. SI.
 *
 * @param needed the limit it would have to keep
 * @param has what it has
 * @param unit of both at the boundary, null for a plain number
 */
public record Shortfall(double needed, double has, @Nullable Unit unit) {}
