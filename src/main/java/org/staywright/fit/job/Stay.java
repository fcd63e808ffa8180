package org.staywright.fit.job;

import org.staywright.part.Coded;

/** How surely a load keeps by itself where it is, in its worst corner, friction left out. */
public enum Stay implements Coded {
  STAYS,
  /** With so little that a knock or a draught may undo it. */
  BARELY,
  LEAVES;

  /** Less than this at the handle barely keeps a load open, N: our choice, no source. */
  public static final double LEAST_OPEN = 5;

  /** Less than this at the handle barely keeps it shut, N: our choice, no source. */
  public static final double LEAST_SHUT = 2;

  /** Against its open stop. */
  public static Stay open(Figures.Hold hold) {
    return of(hold.open().value(), LEAST_OPEN);
  }

  /** Closed, by itself. */
  public static Stay shut(Figures.Hold hold) {
    return of(-hold.latchPush(), LEAST_SHUT);
  }

  private static Stay of(double newtons, double least) {
    return newtons <= 0 ? LEAVES : newtons < least ? BARELY : STAYS;
  }
}
