package org.staywright.document.draw;

/** Something that shapes can be drawn with. */
public interface Pen {

  void draw(Shape.Path path);

  void draw(Shape.Circle circle);

  void draw(Shape.Arc arc);

  void draw(Shape.Text text);

  void draw(Shape.Moved moved);
}
