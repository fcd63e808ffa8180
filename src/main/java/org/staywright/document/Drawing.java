package org.staywright.document;

import java.util.List;

/**
 * Shapes in a coordinate system of their own, y up: the same for screen and paper.
 *
 * @param title for screen readers
 * @param description of what is to be seen, for screen readers
 * @param box all that is to be shown
 * @param em type size of ordinary text, in the drawing's units
 * @param shapes from back to front
 */
public record Drawing(String title, String description, Box box, double em, List<Shape> shapes) {

  public Drawing {
    shapes = List.copyOf(shapes);
  }

  void drawWith(Pen pen) {
    for (Shape shape : shapes) {
      shape.drawWith(pen);
    }
  }
}
