package org.staywright.document.draw;

/** Something that shapes can be drawn with. */
public interface Pen {

  void draw(Graphic.Path path);

  void draw(Graphic.Circle circle);

  void draw(Graphic.Arc arc);

  void draw(Graphic.Text text);

  void draw(Graphic.Moved moved);
}
