package org.staywright.document.sheet;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfGState;
import java.awt.Color;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Pen;
import org.staywright.document.draw.Role;
import org.staywright.mechanism.Point;

/** Draws onto a page in vectors, its text as text. */
public final class PdfPen implements Pen {

  /** From the middle of a capital letter down to its foot, over the type size. */
  private static final double FOOT = 0.36;

  private final PdfContentByte page;
  private final Drawing drawing;
  private final double scale;
  private final double left;
  private final double bottom;

  /**
   * @param page to draw on
   * @param drawing to be drawn
   * @param left of the drawing's box on the page, pt
   * @param bottom of it, pt
   * @param scale pt for one of the drawing's units
   */
  public PdfPen(PdfContentByte page, Drawing drawing, double left, double bottom, double scale) {
    this.page = page;
    this.drawing = drawing;
    this.scale = scale;
    this.left = left - drawing.box().left() * scale;
    this.bottom = bottom - drawing.box().bottom() * scale;
  }

  public void draw() {
    drawing.drawWith(this);
  }

  @Override
  public void draw(Graphic.Path path) {
    begin(path.role());
    boolean first = true;
    for (Point point : path.points()) {
      if (first) {
        page.moveTo(x(point.x()), y(point.y()));
      } else {
        page.lineTo(x(point.x()), y(point.y()));
      }
      first = false;
    }
    if (path.closed()) {
      page.closePath();
    }
    end(path.role(), path.closed());
  }

  @Override
  public void draw(Graphic.Circle circle) {
    begin(circle.role());
    page.circle(x(circle.centre().x()), y(circle.centre().y()), (float) (circle.radius() * scale));
    end(circle.role(), true);
  }

  @Override
  public void draw(Graphic.Arc arc) {
    begin(arc.role());
    float x = x(arc.centre().x());
    float y = y(arc.centre().y());
    float radius = (float) (arc.radius() * scale);
    page.arc(
        x - radius,
        y - radius,
        x + radius,
        y + radius,
        (float) Math.toDegrees(arc.from()),
        (float) Math.toDegrees(arc.sweep()));
    end(arc.role(), false);
  }

  /** Paper stands still. */
  @Override
  public void draw(Graphic.Moved moved) {
    moved.shapes().forEach(shape -> shape.drawWith(this));
  }

  @Override
  public void draw(Graphic.Text text) {
    float size = (float) (text.em() * scale);
    String shown = Typeface.REGULAR.shown(text.text());
    float width = Typeface.REGULAR.base().getWidthPoint(shown, size);
    float back = (float) (width * text.anchor().share());
    float foot = (float) (FOOT * size);
    float x = x(text.at().x());
    float y = y(text.at().y());
    page.saveState();
    if (text.turned()) {
      page.concatCTM(0, 1, -1, 0, x, y);
    } else {
      page.concatCTM(1, 0, 0, 1, x, y);
    }
    // Whatever lies beneath makes way for the text.
    page.setColorFill(Color.WHITE);
    page.rectangle(-back - 1, -1.2f * foot, width + 2, 2.4f * foot);
    page.fill();
    page.setColorFill(Paper.text(text.role()));
    page.beginText();
    page.setFontAndSize(Typeface.REGULAR.base(), size);
    page.setTextMatrix(-back, -foot);
    page.showText(shown);
    page.endText();
    page.restoreState();
  }

  private void begin(Role role) {
    Paper.Look look = Paper.of(role);
    page.saveState();
    page.setLineCap(PdfContentByte.LINE_CAP_BUTT);
    page.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
    if (look.stroke() != null) {
      page.setColorStroke(look.stroke());
      page.setLineWidth(look.width());
      page.setLineDash(look.dash(), 0);
    }
    if (look.fill() != null) {
      page.setColorFill(look.fill());
      if (look.opacity() < 1) {
        PdfGState sheer = new PdfGState();
        sheer.setFillOpacity(look.opacity());
        page.setGState(sheer);
      }
    }
  }

  private void end(Role role, boolean closed) {
    Paper.Look look = Paper.of(role);
    boolean filled = closed && look.fill() != null;
    // The head of an arrow is filled even where its role is a line.
    if (closed && !filled && look.stroke() != null) {
      page.setColorFill(look.stroke());
      filled = true;
    }
    if (filled && look.stroke() != null) {
      page.fillStroke();
    } else if (filled) {
      page.fill();
    } else {
      page.stroke();
    }
    page.restoreState();
  }

  private float x(double value) {
    return (float) (left + value * scale);
  }

  private float y(double value) {
    return (float) (bottom + value * scale);
  }
}
