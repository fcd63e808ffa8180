package org.staywright.document.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.document.Stocked.ENGLISH;
import static org.staywright.document.Stocked.GERMAN;
import static org.staywright.document.Stocked.RANGE;

import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.caution.Caution;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.Printed;
import org.staywright.document.Sampled;
import org.staywright.document.job.JobSheet;
import org.staywright.document.sheet.Typeface;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.job.Figures;
import org.staywright.form.Jobs;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.unit.Unit;
import org.staywright.wording.CautionText;
import org.staywright.wording.HandText;
import org.staywright.wording.Wording;

/** Job sheets, requests for quotation and order lines read back. */
class OrderDocumentsTest {

  private static final Chosen LID = Orders.lid("Floor locker lid", RANGE);
  private static final PartsList LIST = Orders.list(LID);

  @Test
  void theJobSheetIsTwoPagesWithMountsForcesVerdictsStepsAndSignatures() throws IOException {
    byte[] pdf = JobSheet.pdf(LID, LIST, ENGLISH);
    assertEquals(2, new PdfReader(pdf).getNumberOfPages());
    String text = Printed.text(pdf);
    assertTrue(text.contains("x 15.0, y −65.0"), text);
    assertTrue(text.contains("x 360.0, y −11.0"), text);
    assertTrue(text.contains("≤ 50 N"), text);
    assertTrue(text.contains("Prop the flap"), text);
    assertTrue(text.contains("Signature"), text);
    for (OrderLine line : LIST.lines()) {
      assertTrue(text.contains(line.item().number()), line.toString());
    }
  }

  @Test
  void theJobSheetStaysOnTwoPagesBelowAMark() throws IOException {
    Chosen near = Orders.nearLid(RANGE);
    byte[] pdf = JobSheet.pdf(near, Orders.list(near), ENGLISH);
    assertEquals(2, new PdfReader(pdf).getNumberOfPages());
    assertTrue(Printed.text(pdf).contains("missed"));
  }

  @Test
  void theJobSheetStaysOnTwoPagesInGerman() throws IOException {
    List<Chosen> all =
        List.of(
            LID,
            Orders.nearLid(RANGE),
            Orders.best(Jobs.LIFT, RANGE),
            Orders.best(Jobs.PROFILE, RANGE));
    for (Chosen chosen : all) {
      byte[] pdf = JobSheet.pdf(chosen, Orders.list(chosen), GERMAN);
      assertEquals(2, new PdfReader(pdf).getNumberOfPages(), chosen.job().mechanism().code());
      assertTrue(Printed.text(pdf).contains("Unterschrift"));
    }
  }

  /** 6.8 pt is what the small print of the lists has. */
  @ParameterizedTest
  @MethodSource("sampled")
  void noLetterOfAJobSheetIsSmallerThanTheSmallPrint(Sampled of) throws IOException {
    Chosen chosen = of.chosen();
    for (Wording wording : List.of(ENGLISH, GERMAN)) {
      byte[] pdf = JobSheet.pdf(chosen, Orders.list(chosen), wording);
      assertEquals(2, new PdfReader(pdf).getNumberOfPages(), of.name());
      assertTrue(Printed.smallest(pdf) >= 6.8, of + ": " + Printed.smallest(pdf));
    }
  }

  static List<Sampled> sampled() {
    return Sampled.all();
  }

  /** What the head of the sheet says is what the figures say, and how a spring is hung on. */
  @ParameterizedTest
  @MethodSource("sampled")
  void theJobSheetSaysItsVerdictAndItsHangingAtWorst(Sampled of) throws IOException {
    Chosen chosen = of.chosen();
    String text = Printed.text(JobSheet.pdf(chosen, Orders.list(chosen), ENGLISH));
    Unit way = Figure.OPENING_ANGLE.unit(chosen.job().mechanism().movement());
    Wording words = of.words(ENGLISH);
    HandText said = HandText.of(chosen.fit(), chosen.job().requirements(), way, words);
    for (String sentence : said.headline()) {
      assertTrue(text.contains(Printed.spaced(sentence)), sentence + " in " + text);
    }
    assertTrue(text.contains(Printed.spaced(said.hanging())), said.hanging() + " in " + text);
    Figures has = chosen.fit().figures();
    boolean leaves = has.hold().open().value() <= 0;
    assertEquals(leaves, text.contains("Does not stay"), text);
    String failed = words.quantity(has.oneFailed().hand(), Unit.NEWTON, 0, RoundingMode.CEILING);
    assertTrue(has.oneFailed().hand() <= 0 || text.contains(Printed.spaced(failed)), failed);
  }

  @Test
  void whatDoesNotStayOpenIsToldToTheBuyerInListAndMail() throws IOException {
    Chosen drawer = Sampled.of("Gas bottle drawer, up a ramp").chosen();
    double hold = drawer.fit().figures().hold().open().value();
    assertTrue(hold < 0, "" + hold);
    String newtons = ENGLISH.quantity(-hold, Unit.NEWTON, 0, RoundingMode.CEILING);
    String said = Printed.spaced("Does not stay at the end by itself: " + newtons);
    PartsList list = Orders.list(drawer);
    assertTrue(Printed.text(PartsListPdf.of(list, ENGLISH)).contains(said), said);
    assertTrue(OrderLines.of(list, ENGLISH).contains(said), OrderLines.of(list, ENGLISH));
    assertFalse(OrderLines.of(LIST, ENGLISH).contains("stay"), OrderLines.of(LIST, ENGLISH));
  }

  @Test
  void theOpenMountIsTheClosedOneTurnedByTheOpeningAngle() throws IOException {
    // 360·cos 80° + 11·sin 80° = 73.3, 360·sin 80° − 11·cos 80° = 352.6
    String text = Printed.text(JobSheet.pdf(LID, LIST, ENGLISH));
    assertTrue(text.contains("x 73.3, y 352.6"), text);
  }

  @Test
  void theJobSheetCarriesEveryCautionOfItsFigures() throws IOException {
    String text = Printed.text(JobSheet.pdf(LID, LIST, ENGLISH));
    List<Caution> cautions = Cautions.of(LID.job(), LID.fit());
    assertTrue(cautions.size() >= 10, cautions.toString());
    CautionText words = CautionText.in(ENGLISH.about(LID.job().mechanism().code()));
    for (Caution caution : cautions) {
      assertTrue(text.contains(Printed.spaced(words.sentence(caution))), text);
    }
  }

  @Test
  void aJobSheetOfALiftSaysWhereTheMountStartsAndEnds() throws IOException {
    Chosen lift = Orders.best(Jobs.LIFT, RANGE);
    byte[] pdf = JobSheet.pdf(lift, Orders.list(lift), ENGLISH);
    assertTrue(new PdfReader(pdf).getNumberOfPages() <= 2);
    String text = Printed.text(pdf);
    assertTrue(text.contains("Load mount, lowest"), text);
    assertTrue(text.contains("travel, mm"), text);
  }

  @Test
  void aJobSheetOfAForceProfileHasLengthsButNoMounts() throws IOException {
    Chosen profile = Orders.best(Jobs.PROFILE, RANGE);
    byte[] pdf = JobSheet.pdf(profile, Orders.list(profile), ENGLISH);
    assertTrue(new PdfReader(pdf).getNumberOfPages() <= 2);
    String text = Printed.text(pdf);
    assertTrue(text.contains("400.0 mm"), text);
    assertTrue(text.contains("550.0 mm"), text);
    assertFalse(text.contains("Frame mount"), text);
    assertTrue(text.startsWith("Job sheet Job without a name"), text);
  }

  @Test
  void aPartThatDoesNotFitIsMarkedOnEveryPageOfEveryDocument() throws IOException {
    for (Chosen misfit : List.of(Orders.nearLid(RANGE), Orders.outLid(RANGE))) {
      PartsList list = Orders.list(misfit);
      for (byte[] pdf :
          List.of(
              JobSheet.pdf(misfit, list, ENGLISH),
              PartsListPdf.of(list, ENGLISH),
              QuotationRequest.pdf(list, ENGLISH))) {
        PdfReader reader = new PdfReader(pdf);
        for (int page = 1; page <= reader.getNumberOfPages(); page++) {
          String text = Printed.page(reader, page);
          assertTrue(text.contains("chosen although: "), "page " + page + ": " + text);
          assertFalse(text.contains("out for this job"), text);
        }
      }
      assertTrue(OrderLines.of(list, ENGLISH).contains("chosen although: "));
      assertTrue(PartsListCsv.of(list, ENGLISH).contains("chosen although: "));
      assertTrue(
          PartsListAnswer.of(list, ENGLISH)
              .jobs()
              .get(0)
              .chosenAlthough()
              .contains("chosen although: "));
    }
    assertFalse(Printed.text(JobSheet.pdf(LID, LIST, ENGLISH)).contains("chosen although"));
  }

  @Test
  void aRequestForQuotationHasNoPricesOfOursAndRoomForTheirs() throws IOException {
    String text = Printed.text(QuotationRequest.pdf(LIST, ENGLISH));
    assertFalse(text.contains(ENGLISH.money(LIST.lines().get(0).unitPrice())), text);
    assertTrue(text.contains("Your price, each"), text);
    assertTrue(text.contains("Offer valid until"), text);
    assertTrue(text.contains("From"), text);
  }

  @Test
  void orderLinesPasteIntoAMail() {
    String text = OrderLines.of(LIST, ENGLISH);
    OrderLine first = LIST.lines().get(0);
    assertTrue(text.startsWith("Order lines: Floor locker lid\n"), text);
    assertTrue(text.contains("1. " + first.quantity() + " pcs. " + first.item().number()), text);
    assertTrue(text.contains("\n   " + ENGLISH.money(first.unitPrice()) + " EUR each, "), text);
    assertTrue(text.contains("Total " + ENGLISH.money(LIST.total()) + " EUR net"), text);
    assertFalse(text.contains("\u00a0"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<b>Lid</b> & \"more\"",
        "Люк пола, кладовая",
        "Καπάκι δαπέδου",
        "Bodenklappe größer als üblich – ½ m²",
        "=HYPERLINK(\"x\")"
      })
  void namesOfManyAlphabetsAndAngleBracketsArePrintedAsTheyAre(String name) throws IOException {
    Chosen lid = Orders.lid(name, RANGE);
    PartsList list = Orders.list(lid);
    assertTrue(Printed.text(JobSheet.pdf(lid, list, ENGLISH)).contains(name));
    assertTrue(Printed.text(PartsListPdf.of(list, ENGLISH)).contains(name));
    assertTrue(OrderLines.of(list, ENGLISH).contains(name));
  }

  @Test
  void aSignThatTheTypeLacksIsShownAsABox() throws IOException {
    PartsList list = Orders.list(Orders.lid("Lid 床蓋 \uD83D\uDEE0 end", RANGE));
    String text = Printed.text(PartsListPdf.of(list, ENGLISH));
    assertTrue(text.contains("Lid □□ □ end"), text);
    assertEquals("□", Typeface.BOLD.shown("床"));
    assertEquals("Lid", Typeface.BOLD.shown("Lid"));
  }

  @Test
  void aNameOfTwoHundredLettersStaysOnThePage() throws IOException {
    for (String name : List.of("W".repeat(200), "Lid and frame ".repeat(14).strip())) {
      Chosen lid = Orders.lid(name, RANGE);
      byte[] pdf = JobSheet.pdf(lid, Orders.list(lid), ENGLISH);
      assertTrue(new PdfReader(pdf).getNumberOfPages() <= 3, name);
    }
  }
}
