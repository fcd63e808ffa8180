package org.staywright.part;

/** How a spring wants to hang at rest. */
public enum Mounting implements Coded {
  ROD_DOWN,
  ANY
}
