package org.staywright.document.sheet;

import java.awt.Color;
import java.util.EnumMap;
import java.util.Map;
import org.staywright.document.draw.Role;

/** Looks on white paper; on the screen {@code css/drawing.css} says the same. */
public final class Paper {

  public static final Color INK = new Color(0x24323b);
  public static final Color SOFT = new Color(0x6b7a82);
  static final Color FAINT = new Color(0xdfe4e4);
  static final Color WASH = new Color(0xf3f6f5);
  static final Color METAL = new Color(0xd5dcdf);
  static final Color COLD = new Color(0x3a6ea5);
  static final Color MILD = new Color(0x2c7a68);
  static final Color HOT = new Color(0xb5562d);
  static final Color VIOLET = new Color(0x7a4a94);
  static final Color OCHRE = new Color(0x8a6a14);
  public static final Color STOP = new Color(0xa32f3f);

  private static final float[] SOLID = {};
  private static final float SHEER = 0.14f;

  /**
   * @param stroke colour of the line, null for none
   * @param width of the line, pt
   * @param dash lengths on and off, pt
   * @param fill colour inside, null for none
   * @param opacity of the fill
   */
  record Look(Color stroke, float width, float[] dash, Color fill, float opacity) {}

  private static final Map<Role, Look> LOOKS = new EnumMap<>(Role.class);

  static {
    LOOKS.put(Role.OUTLINE, solid(INK, 0.8f, Color.WHITE));
    LOOKS.put(Role.METAL, solid(INK, 0.8f, METAL));
    LOOKS.put(Role.HIDDEN, dashed(INK, 0.4f, 2.4f, 1.5f));
    LOOKS.put(Role.CENTRE_LINE, dashed(SOFT, 0.4f, 7, 2, 0.8f, 2));
    LOOKS.put(Role.DIMENSION, solid(SOFT, 0.4f, SOFT));
    LOOKS.put(Role.GRID, line(FAINT, 0.5f));
    LOOKS.put(Role.AXIS, line(SOFT, 0.6f));
    LOOKS.put(Role.CURVE_1, line(COLD, 1));
    LOOKS.put(Role.CURVE_2, line(MILD, 1));
    LOOKS.put(Role.CURVE_3, line(HOT, 1));
    LOOKS.put(Role.CURVE_4, line(VIOLET, 1));
    LOOKS.put(Role.CURVE_5, line(OCHRE, 1));
    LOOKS.put(Role.FAST, dashed(MILD, 0.8f, 3, 2));
    LOOKS.put(Role.BAND_1, new Look(null, 0, SOLID, COLD, SHEER));
    LOOKS.put(Role.BAND_2, new Look(null, 0, SOLID, MILD, SHEER));
    LOOKS.put(Role.BAND_3, new Look(null, 0, SOLID, HOT, SHEER));
    LOOKS.put(Role.LIMIT, dashed(STOP, 0.7f, 4.5f, 2));
    LOOKS.put(Role.FRAME, line(SOFT, 3.6f));
    LOOKS.put(Role.FLAP, solid(INK, 0.8f, METAL));
    LOOKS.put(Role.TUBE, solid(MILD, 0.8f, MILD));
    LOOKS.put(Role.ROD, solid(MILD, 0.8f, Color.WHITE));
    LOOKS.put(Role.GHOST, new Look(SOFT, 0.5f, new float[] {2.5f, 1.8f}, WASH, 0.5f));
    LOOKS.put(Role.REACH, line(MILD, 1));
    LOOKS.put(Role.TRAVEL, line(HOT, 0.6f));
    LOOKS.put(Role.ZONE, new Look(COLD, 0.8f, SOLID, COLD, SHEER));
    LOOKS.put(Role.KEEP_OUT, new Look(STOP, 0.7f, new float[] {4.5f, 2}, STOP, SHEER));
    LOOKS.put(Role.GRAVITY, solid(STOP, 0.8f, STOP));
    LOOKS.put(Role.MARK, new Look(null, 0, SOLID, INK, 1));
    LOOKS.put(Role.LABEL, new Look(null, 0, SOLID, INK, 1));
  }

  private Paper() {}

  static Look of(Role role) {
    return LOOKS.get(role);
  }

  /** Colour of a role's text: that of its lines, but for dimensions, which are to be read. */
  static Color text(Role role) {
    Color stroke = of(role).stroke();
    return stroke == null || role == Role.DIMENSION ? INK : stroke;
  }

  private static Look line(Color colour, float width) {
    return new Look(colour, width, SOLID, null, 1);
  }

  private static Look solid(Color stroke, float width, Color fill) {
    return new Look(stroke, width, SOLID, fill, 1);
  }

  private static Look dashed(Color colour, float width, float... dash) {
    return new Look(colour, width, dash, null, 1);
  }
}
