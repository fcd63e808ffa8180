package org.staywright.document.draw;

import java.util.Locale;

/** What a shape stands for; how that looks is for the stylesheet and {@code Paper} to say. */
public enum Role {
  OUTLINE,
  METAL,
  HIDDEN,
  CENTRE_LINE,
  DIMENSION,
  GRID,
  AXIS,
  CURVE_1,
  CURVE_2,
  CURVE_3,
  CURVE_4,
  CURVE_5,
  FAST,
  BAND_1,
  BAND_2,
  BAND_3,
  LIMIT,
  FRAME,
  FLAP,
  TUBE,
  ROD,
  GHOST,
  REACH,
  TRAVEL,
  ZONE,
  KEEP_OUT,
  GRAVITY,
  MARK,
  LABEL;

  /** Class of the shape in SVG: "d-curve-1". */
  String cssClass() {
    return "d-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
