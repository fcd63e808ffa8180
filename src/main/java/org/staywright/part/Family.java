package org.staywright.part;

/** Kinds of parts that push, pull or damp. */
public enum Family implements Coded {
  GAS_SPRING
}
