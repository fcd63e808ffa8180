package org.staywright.document;

/** Something that shapes can be drawn with. */
interface Pen {

  void draw(Shape.Path path);

  void draw(Shape.Circle circle);

  void draw(Shape.Arc arc);

  void draw(Shape.Text text);

  void draw(Shape.Moved moved);
}
