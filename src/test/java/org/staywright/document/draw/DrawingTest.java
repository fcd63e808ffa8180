package org.staywright.document.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.staywright.document.Stocked;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.sheet.PdfPen;
import org.staywright.document.view.SideView;
import org.staywright.document.view.SpringOutline;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.w3c.dom.Element;

class DrawingTest {

  @Test
  void everyDrawingIsWellFormedAndLeavesItsLookToTheStylesheet() throws Exception {
    String sheet =
        Files.readString(Path.of("src/main/resources/META-INF/resources/css/drawing.css"));
    for (Drawing drawing : Stocked.drawings()) {
      String svg = Svg.of(drawing);
      Element root = parsed(svg);
      assertEquals("img", root.getAttribute("role"));
      assertEquals(drawing.title(), root.getElementsByTagName("title").item(0).getTextContent());
      assertEquals(
          drawing.description(), root.getElementsByTagName("desc").item(0).getTextContent());
      assertFalse(svg.contains("style") || svg.contains("<script"), svg);
      assertFalse(svg.contains("NaN") || svg.contains("Infinity"), svg);
      for (Graphic shape : drawing.shapes()) {
        assertTrue(
            shape.role() == Role.LABEL || sheet.contains("." + shape.role().cssClass() + " {"),
            shape.role() + " has no look");
      }
    }
  }

  @Test
  void textIsEscaped() throws Exception {
    Sketch sketch = new Sketch(1);
    sketch.text(Role.LABEL, new Point(0, 0), Anchor.START, Size.NORMAL, "<b> & \"c\"");
    Element root = parsed(Svg.of(sketch.drawing("a < b", "c & d", 1)));
    assertEquals("<b> & \"c\"", root.getElementsByTagName("text").item(0).getTextContent());
    assertEquals("a < b", root.getElementsByTagName("title").item(0).getTextContent());
  }

  @Test
  void screenAndPaperShowTheSameShapes() throws Exception {
    for (Drawing drawing : Stocked.drawings()) {
      long texts = drawing.shapes().stream().filter(Graphic.Text.class::isInstance).count();
      long others = drawing.shapes().size() - texts;

      Element svg = parsed(Svg.of(drawing));
      int paths = svg.getElementsByTagName("path").getLength();
      int circles = svg.getElementsByTagName("circle").getLength();
      assertEquals(others, paths + circles, drawing.title());
      assertEquals(texts, svg.getElementsByTagName("text").getLength(), drawing.title());

      String page = onPaper(drawing);
      // Each text has a white patch beneath it, painted as one more path.
      assertEquals(others + texts, count(page, "(?m)^(S|f|B)$"), drawing.title());
      assertEquals(texts, count(page, "(?m)Tj$"), drawing.title());
    }
  }

  @Test
  void aSideViewHoldsAllOfItsShapesWhateverTheFlap() {
    long seed = 20261121;
    System.out.println("side views: seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 400; i++) {
      HingedFlap flap = randomFlap(random);
      if (!flap.faults().isEmpty()) {
        continue;
      }
      Drawing drawing = SideView.of(flap, Stocked.ENGLISH);
      for (Graphic shape : drawing.shapes()) {
        Box bounds = shape.bounds();
        for (Point corner :
            List.of(
                new Point(bounds.left(), bounds.bottom()),
                new Point(bounds.right(), bounds.top()))) {
          assertTrue(drawing.box().contains(corner), "case " + i + ": " + flap + " " + shape);
        }
      }
    }
  }

  @Test
  void labelsOfASideViewStayClearOfEachOther() {
    long seed = 20261122;
    System.out.println("labels: seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 400; i++) {
      HingedFlap flap = randomFlap(random);
      if (!flap.faults().isEmpty()) {
        continue;
      }
      List<Box> labels =
          SideView.of(flap, Stocked.ENGLISH).shapes().stream()
              .filter(Graphic.Text.class::isInstance)
              .map(Graphic::bounds)
              .toList();
      for (int j = 0; j < labels.size(); j++) {
        for (int k = 0; k < j; k++) {
          assertFalse(labels.get(j).meets(labels.get(k)), "case " + i + ": " + flap);
        }
      }
    }
  }

  @Test
  void aLiftsSideViewHoldsAllOfItsShapesAndKeepsItsLabelsApart() {
    long seed = 20261126;
    System.out.println("lifts: seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 400; i++) {
      StraightLift lift = randomLift(random);
      if (!lift.faults().isEmpty()) {
        continue;
      }
      Drawing drawing = SideView.of(lift, Stocked.ENGLISH);
      List<Box> labels = new ArrayList<>();
      for (Graphic shape : drawing.shapes()) {
        Box bounds = shape.bounds();
        assertTrue(
            drawing.box().contains(new Point(bounds.left(), bounds.bottom()))
                && drawing.box().contains(new Point(bounds.right(), bounds.top())),
            "case " + i + ": " + lift + " " + shape);
        if (shape instanceof Graphic.Text) {
          for (Box other : labels) {
            assertFalse(bounds.meets(other), "case " + i + ": " + lift);
          }
          labels.add(bounds);
        }
      }
      assertEquals(5, labels.size());
    }
  }

  @Test
  void aProfileIsDrawnThroughThePointsThatWereGiven() {
    ForceProfile profile =
        new ForceProfile(
            List.of(
                new ForceProfile.Point(0.3, 100),
                new ForceProfile.Point(0.4, 200),
                new ForceProfile.Point(0.5, 0)));
    Drawing drawing = SideView.of(profile, Stocked.ENGLISH);
    List<Point> marks =
        drawing.shapes().stream()
            .filter(shape -> shape.role() == Role.MARK)
            .map(shape -> ((Graphic.Circle) shape).centre())
            .toList();
    assertEquals(3, marks.size());
    double perNewton = (marks.get(1).y() - marks.get(0).y()) / 100;
    assertEquals(perNewton * 200, marks.get(1).y() - marks.get(2).y(), 1e-9);
    assertEquals(marks.get(0).x() + marks.get(2).x(), 2 * marks.get(1).x(), 1e-9);
    List<Point> curve =
        drawing.shapes().stream()
            .filter(shape -> shape.role() == Role.CURVE_1 && shape instanceof Graphic.Path)
            .map(shape -> ((Graphic.Path) shape).points())
            .findFirst()
            .orElseThrow();
    assertEquals(marks.get(0).y(), curve.get(0).y(), 1e-9);
    assertEquals(marks.get(1).y(), curve.get(30).y(), 1e-9);
    assertEquals(marks.get(2).y(), curve.get(60).y(), 1e-9);
  }

  @Test
  void gravityPointsDownWhateverTheTilt() {
    Random random = new Random(20261123);
    for (int i = 0; i < 50; i++) {
      HingedFlap flap = randomFlap(random);
      if (!flap.faults().isEmpty()) {
        continue;
      }
      List<Graphic.Path> gravity =
          SideView.of(flap, Stocked.ENGLISH).shapes().stream()
              .filter(shape -> shape.role() == Role.GRAVITY && shape instanceof Graphic.Path)
              .map(Graphic.Path.class::cast)
              .toList();
      Point way = gravity.get(0).points().get(1).minus(gravity.get(0).points().get(0));
      List<Point> head = gravity.get(1).points();
      Point tip = head.get(0);
      Point back = head.get(1).minus(tip);
      Point other = head.get(2).minus(tip);
      // Up in the frame after a counterclockwise tilt t is (sin t, cos t).
      assertEquals(-Math.sin(flap.tilt()), way.x() / way.distance(), 1e-9);
      assertEquals(-Math.cos(flap.tilt()), way.y() / way.distance(), 1e-9);
      Point pointing = new Point(-back.x() - other.x(), -back.y() - other.y());
      assertEquals(way.x() / way.distance(), pointing.x() / pointing.distance(), 1e-9);
      assertEquals(way.y() / way.distance(), pointing.y() / pointing.distance(), 1e-9);
    }
  }

  @Test
  void aSpringIsDrawnAtItsTrueLength() {
    Drawing drawing = SpringOutline.of(Stocked.middling(), Stocked.ENGLISH);
    Box tube =
        drawing.shapes().stream()
            .filter(shape -> shape.role() == Role.METAL)
            .findFirst()
            .orElseThrow()
            .bounds();
    assertEquals(220, tube.width(), 1e-9);
    assertEquals(18, tube.height(), 1e-9);
  }

  /** Flaps of a hand's breadth to a barn door's, mounts anywhere. */
  private static HingedFlap randomFlap(Random random) {
    double size = Math.pow(10, -1.3 + 2 * random.nextDouble());
    double mass = 300 * size * size;
    return new HingedFlap(
        new Masses(mass, 1.05 * mass, 0.95 * mass),
        anywhere(random, 0.6 * size),
        anywhere(random, size),
        random.nextBoolean() ? 1 : -1,
        Math.toRadians(5 + 170 * random.nextDouble()),
        Math.toRadians(180 * random.nextDouble() - 90),
        0,
        new Mounts(
            anywhere(random, 0.7 * size),
            anywhere(random, 0.7 * size),
            random.nextBoolean() ? 0 : 0.1 * size,
            RodEnd.values()[random.nextInt(3)]));
  }

  /** Lifts of a hand's breadth to a storey, in any direction. */
  private static StraightLift randomLift(Random random) {
    double size = Math.pow(10, -1 + 1.5 * random.nextDouble());
    double mass = 100 * size;
    return new StraightLift(
        new Masses(mass, 1.05 * mass, 0.95 * mass),
        size * (0.1 + 0.9 * random.nextDouble()),
        2 * Math.PI * random.nextDouble(),
        0,
        new Mounts(
            anywhere(random, 0.7 * size),
            anywhere(random, 0.7 * size),
            random.nextBoolean() ? 0 : 0.1 * size,
            RodEnd.values()[random.nextInt(3)]));
  }

  private static Point anywhere(Random random, double size) {
    return new Point(size * (2 * random.nextDouble() - 1), size * (2 * random.nextDouble() - 1));
  }

  private static Element parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
        .getDocumentElement();
  }

  private static String onPaper(Drawing drawing) throws IOException {
    Document document = new Document();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PdfWriter writer = PdfWriter.getInstance(document, bytes);
    document.open();
    new PdfPen(writer.getDirectContent(), drawing, 20, 20, 500 / drawing.box().width()).draw();
    writer.setPageEmpty(false);
    document.close();
    byte[] content = new PdfReader(bytes.toByteArray()).getPageContent(1);
    assertNotNull(content);
    return new String(content, StandardCharsets.ISO_8859_1);
  }

  private static long count(String text, String pattern) {
    return Pattern.compile(pattern).matcher(text).results().count();
  }
}
