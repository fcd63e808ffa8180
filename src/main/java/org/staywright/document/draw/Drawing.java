package org.staywright.document.draw;

import java.util.List;

/**
 * Shapes in a coordinate system of their own, y up: the same for screen and paper.
 *
 * @param title for screen readers
 * @param description of what is to be seen, for screen readers
 * @param box all that is to be shown
 * @param em type size of ordinary text, in the drawing's units
 * @param shapes from back to front
 * @param readings what it draws in numbers, null where it is no chart
 */
public record Drawing(
    String title, String description, Box box, double em, List<Graphic> shapes, Readings readings) {

  public Drawing {
    shapes = List.copyOf(shapes);
  }

  Drawing with(Readings numbers) {
    return new Drawing(title, description, box, em, shapes, numbers);
  }

  public void drawWith(Pen pen) {
    for (Graphic shape : shapes) {
      shape.drawWith(pen);
    }
  }
}
