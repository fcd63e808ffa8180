package org.staywright.web.replace;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@QuarkusTest
@Tag("server")
class ReplacePageTest {

  private static final String MEASURED =
      "/replace?rodDiameterMm.value=8&rodDiameterMm.plusMinus=0.1&tubeDiameterMm.value=18"
          + "&extendedLengthMm.value=440&extendedLengthMm.measured=centre-to-centre"
          + "&strokeMm.value=158&rodEnd=ball-socket&tubeEnd=ball-socket&springCount=2";

  private static String page(String address, int status) {
    return given()
        .urlEncodingEnabled(false)
        .get(address)
        .then()
        .statusCode(status)
        .extract()
        .asString();
  }

  @Test
  void asksOneQuestionAtATimeOrAllAtOnce() {
    assertEquals(
        1, count(page("/replace", 200), "<details class=\"group\" name=\"question\" open>"));
    assertTrue(count(page("/replace?all=true", 200), "<details class=\"group\" open>") >= 8);
  }

  @Test
  void theAnswerLeadsToThePartsListInOneTap() {
    String answer = page(MEASURED + "&label=400%20N%20ABC", 200);
    assertTrue(answer.contains("Drop-in"), answer);
    assertTrue(answer.contains("taken as the printed force"), answer);
    assertTrue(answer.contains("no maker is guessed"), answer);
    Matcher list = Pattern.compile("href=\"(/replace/list\\?[^\"]+)\"").matcher(answer);
    assertTrue(list.find());
    String address = list.group(1).replace("&amp;", "&");
    String order = page(address, 200);
    assertTrue(order.contains("MT6-6YQ"), order);
    byte[] pdf =
        given()
            .urlEncodingEnabled(false)
            .get(address.replace("/replace/list", "/replace/parts-list.pdf"))
            .asByteArray();
    assertEquals("%PDF", new String(pdf, 0, 4));
  }

  @Test
  void theNotePutsOldAndNewSideBySide() throws IOException {
    String answer = page(MEASURED + "&printedForce.value=350&printedForce.unit=N", 200);
    Matcher link = Pattern.compile("href=\"(/replace/note.pdf\\?[^\"]+)\"").matcher(answer);
    assertTrue(link.find());
    String address = link.group(1).replace("&amp;", "&");
    byte[] pdf = given().urlEncodingEnabled(false).get(address).asByteArray();
    Files.write(Path.of("target/replacement-note.pdf"), pdf);
    PdfReader reader = new PdfReader(pdf);
    StringBuilder text = new StringBuilder();
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      text.append(new PdfTextExtractor(reader).getTextFromPage(page)).append(' ');
    }
    String said = text.toString().replace('\u00a0', ' ').replaceAll("\\s+", " ");
    for (String part :
        List.of(
            "Replacement note",
            address.replaceAll(".*[?&]part=", "").replaceAll("&.*", ""),
            "158 mm ± 3 mm",
            "350 N",
            "not measured",
            "Prop the open flap",
            "still charged",
            "Never open, heat or drill",
            "licensed",
            "replaced together")) {
      assertTrue(said.contains(part), part + " in " + said);
    }
    page(address.replaceAll("part=[A-Z0-9-]+", "part=NONE"), 404);
    page("/replace/note.pdf?strokeMm.value=-1&part=NONE", 404);
  }

  @Test
  void nothingCanBeOrderedWhileTheForceIsNotKnown() {
    String answer = page(MEASURED, 200);
    assertTrue(answer.contains("The force is not known"), answer);
    String first =
        answer.substring(answer.indexOf("<ol"), answer.indexOf("</li>", answer.indexOf("<ol")));
    assertFalse(first.contains("/replace/list"), first);
  }

  private static final String WEIGHED =
      "centresOpenMm.value=264.6&flap.propped=true&flap.frameMountMm.value=100"
          + "&flap.movingMountMm.value=300&flap.closedSlopeDeg.value=0&flap.openSlopeDeg.value=60"
          + "&flap.handleMm.value=800&flap.unit=N&flap.first.force.value=80"
          + "&flap.first.slopeDeg.value=0&flap.second.force.value=40"
          + "&flap.second.slopeDeg.value=60";

  @Test
  void theForceThatNobodyKnowsIsFoundAtTheFlap() {
    String answer = page("/replace?rodDiameterMm.value=8&springCount=2&" + WEIGHED, 200);
    assertTrue(answer.contains("The force was found at the flap"), answer);
    assertTrue(answer.contains("/replace/list?"), answer);
  }

  @Test
  void theGuidedPathCarriesAlongWhatWasMeasuredBefore() {
    String path = page("/replace/flap?rodDiameterMm.value=8&flap.unit=kgf&label=AB%20400", 200);
    assertTrue(
        path.contains("<input type=\"hidden\" name=\"rodDiameterMm.value\" value=\"8\">"), path);
    assertTrue(path.contains("name=\"label\" value=\"AB 400\""), path);
    assertEquals(1, count(path, "name=\"flap.unit\""));
    assertEquals(4, count(path, "<svg"));
  }

  @Test
  void aFlapThatIsNotProppedIsNotReckoned() {
    String answer = page("/replace?" + WEIGHED.replace("flap.propped=true&", ""), 200);
    assertTrue(answer.contains("put a prop under the flap"), answer);
    assertFalse(answer.contains("id=\"result\""));
  }

  @Test
  void whatIsMissingOfTheFlapIsNamedAtItsField() {
    String answer =
        page("/replace?" + WEIGHED.replaceAll("&flap.second[a-zA-Z.]*=[0-9]*", ""), 200);
    assertTrue(answer.contains("href=\"#f-flap-second-force-value\""), answer);
    assertTrue(answer.contains("The reading with the flap high"), answer);
  }

  @Test
  void readsInchesAndFractions() {
    String inches = MEASURED.replace("rodDiameterMm.value=8&", "rodDiameterMm.value=5/16%20in&");
    assertTrue(
        page(inches + "&printedForce.value=90&printedForce.unit=lbf", 200).contains("Drop-in"));
  }

  @Test
  void saysBesideTheFieldWhatContradictsWhat() {
    String answer = page("/replace?strokeMm.value=500&extendedLengthMm.value=300", 200);
    assertTrue(answer.contains("contradicts"), answer);
    assertFalse(answer.contains("id=\"result\""));
  }

  @Test
  void whatIsNotThereIsNotFound() {
    page("/replace/list?part=NONE&count=1&rod=MT6-6YQ&tube=MT6-6YQ", 404);
    page("/replace/list", 404);
    page("/replace/parts-list.pdf?part=NONE&count=9", 404);
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }
}
