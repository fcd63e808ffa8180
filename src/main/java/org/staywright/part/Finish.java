package org.staywright.part;

/** Surface or material of a part. */
public enum Finish implements Coded {
  ZINC,
  STAINLESS
}
