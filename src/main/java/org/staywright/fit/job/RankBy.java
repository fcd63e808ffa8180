package org.staywright.fit.job;

import org.staywright.part.Coded;

/** What the best fit is best at. */
public enum RankBy implements Coded {
  BALANCED,
  LEAST_EFFORT,
  LOWEST_COST,
  SOONEST,
  MOST_MARGIN
}
