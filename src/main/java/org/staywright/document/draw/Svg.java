package org.staywright.document.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.staywright.mechanism.Point;

/**
 * Writes a drawing as inline SVG. The look comes from {@code css/drawing.css} by classes alone, as
 * the pages allow no style of their own.
 */
public final class Svg implements Pen {

  /** Type size of ordinary text on the screen, in the view box's units: so lines fit it too. */
  private static final double EM = 12;

  /** From the middle of a capital letter down to its foot, over the type size. */
  private static final double FOOT = 0.36;

  private final StringBuilder out = new StringBuilder();
  private final Drawing drawing;
  private final double scale;

  private Svg(Drawing drawing) {
    this.drawing = drawing;
    this.scale = scale(drawing);
  }

  /** The drawing as one {@code <svg>} element. */
  public static String of(Drawing drawing) {
    return new Svg(drawing).write();
  }

  /** The drawing as a file of its own, in its colours on paper. */
  public static String file(Drawing drawing) {
    Svg svg = new Svg(drawing);
    String size =
        " width=\"%s\" height=\"%s\" font-family=\"sans-serif\""
            .formatted(
                number(drawing.box().width() * svg.scale),
                number(drawing.box().height() * svg.scale));
    String written = svg.write();
    int looks = written.indexOf("<title>");
    return "<svg"
        + size
        + written.substring("<svg".length(), looks)
        + "<style>"
        + DrawingStyle.onPaper()
        + "</style>"
        + written.substring(looks);
  }

  /** Units of its view box to one unit of the drawing. */
  public static double scale(Drawing drawing) {
    return EM / drawing.em();
  }

  private String write() {
    Box box = drawing.box();
    out.append(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" viewBox=\"")
        .append(number(0) + ' ' + number(0) + ' ')
        .append(number(box.width() * scale) + ' ' + number(box.height() * scale))
        .append("\"><title>" + escaped(drawing.title()) + "</title>")
        .append("<desc>" + escaped(drawing.description()) + "</desc>");
    drawing.drawWith(this);
    return out.append("</svg>").toString();
  }

  @Override
  public void draw(Graphic.Path path) {
    open("path", path.role()).append("\" d=\"");
    char command = 'M';
    for (Point point : path.points()) {
      out.append(command).append(x(point)).append(' ').append(y(point));
      command = 'L';
    }
    out.append(path.closed() ? "Z\"/>" : "\"/>");
  }

  @Override
  public void draw(Graphic.Circle circle) {
    open("circle", circle.role());
    attribute("cx", x(circle.centre()));
    attribute("cy", y(circle.centre()));
    attribute("r", number(circle.radius() * scale));
    out.append("\"/>");
  }

  @Override
  public void draw(Graphic.Arc arc) {
    String radius = number(arc.radius() * scale);
    // One command draws less than a turn only, so two share the way.
    String turn = " 0 0 " + (arc.sweep() > 0 ? 0 : 1) + ' ';
    open("path", arc.role()).append("\" d=\"M").append(x(arc.at(0)) + ' ' + y(arc.at(0)));
    for (double share : new double[] {1 / 3.0, 2 / 3.0, 1}) {
      Point to = arc.at(share);
      out.append("A" + radius + ' ' + radius + turn + x(to) + ' ' + y(to));
    }
    out.append("\"/>");
  }

  @Override
  public void draw(Graphic.Text text) {
    double foot = FOOT * text.em() * scale;
    double x = (text.at().x() - drawing.box().left()) * scale + (text.turned() ? foot : 0);
    double y = (drawing.box().top() - text.at().y()) * scale + (text.turned() ? 0 : foot);
    open("text", text.role()).append(named(text.anchor())).append(named(text.size()));
    attribute("x", number(x));
    attribute("y", number(y));
    if (text.turned()) {
      attribute("transform", "rotate(-90 " + number(x) + ' ' + number(y) + ')');
    }
    out.append("\">").append(escaped(text.text())).append("</text>");
  }

  /**
   * A group with its whole track, for {@code js/play.js}; without script it stands at the start.
   */
  @Override
  public void draw(Graphic.Moved moved) {
    Track track = moved.track();
    String pivot = x(track.pivot()) + ' ' + y(track.pivot());
    out.append("<g data-pivot=\"").append(pivot).append("\" data-track=\"");
    for (int i = 0; i < track.size(); i++) {
      out.append(i == 0 ? "" : ";").append(pose(track, i));
    }
    String[] first = pose(track, 0).split(" ");
    out.append("\" transform=\"translate(" + first[1] + ' ' + first[2] + ") rotate(")
        .append(first[0] + ' ' + pivot + ")\">");
    moved.shapes().forEach(shape -> shape.drawWith(this));
    out.append("</g>");
  }

  /** Turned clockwise by degrees, then shifted; y runs down here. */
  private String pose(Track track, int i) {
    Point shift = track.shift().get(i);
    return String.join(
        " ",
        number(-Math.toDegrees(track.turn()[i]), 2),
        number(shift.x() * scale, 2),
        number(-shift.y() * scale, 2));
  }

  private StringBuilder open(String element, Role role) {
    return out.append('<').append(element).append(" class=\"").append(role.cssClass());
  }

  private void attribute(String name, String value) {
    out.append("\" ").append(name).append("=\"").append(value);
  }

  private static String named(Enum<?> constant) {
    return " d-" + constant.name().toLowerCase(Locale.ROOT);
  }

  private String x(Point point) {
    return number((point.x() - drawing.box().left()) * scale);
  }

  private String y(Point point) {
    return number((drawing.box().top() - point.y()) * scale);
  }

  /** A tenth of a pixel is as fine as anyone sees. */
  private static String number(double value) {
    return number(value, 1);
  }

  private static String number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
