package org.staywright.unit;

/** What a number measures; units of one dimension stand for each other. */
public enum Dimension {
  LENGTH,
  AREA,
  VOLUME,
  FORCE,
  MOMENT,
  ENERGY,
  MASS,
  PRESSURE,
  STIFFNESS,
  SPEED,
  TIME,
  TEMPERATURE,
  ANGLE,
  SHARE
}
