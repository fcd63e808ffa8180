package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
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
  void nothingCanBeOrderedWhileTheForceIsNotKnown() {
    String answer = page(MEASURED, 200);
    assertTrue(answer.contains("The force is not known"), answer);
    String first =
        answer.substring(answer.indexOf("<ol"), answer.indexOf("</li>", answer.indexOf("<ol")));
    assertFalse(first.contains("/replace/list"), first);
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
