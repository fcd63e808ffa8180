package org.staywright.document.view;

/**
 * Where a mechanism stands in its side view.
 *
 * @param q of its travel, rad or m
 * @param out whether the spring that is meant cannot reach its mounts
 */
public record ViewPosition(double q, boolean out) {

  /** At the start of the travel. */
  public static final ViewPosition START = new ViewPosition(0, false);
}
