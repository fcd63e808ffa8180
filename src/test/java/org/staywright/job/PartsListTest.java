package org.staywright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.part.Price;
import org.staywright.spring.GasSpring;

class PartsListTest {

  private static final LocalDate LATE = LocalDate.of(2027, 6, 30);
  private static final LocalDate EARLY = LocalDate.of(2027, 1, 31);

  private final Fitting socket = fitting("SOCKET", FittingType.BALL_SOCKET, Finish.ZINC, 0.013, 0);
  private final Fitting eyelet = fitting("EYELET", FittingType.EYELET, Finish.ZINC, 0, 0.008);
  private final List<Fitting> range =
      List.of(
          socket,
          eyelet,
          fitting("STUD-10", FittingType.BALL_STUD, Finish.ZINC, 0.010, 0),
          fitting("STUD-13", FittingType.BALL_STUD, Finish.ZINC, 0.013, 0),
          fitting("STUD-13S", FittingType.BALL_STUD, Finish.STAINLESS, 0.013, 0),
          fitting("CLIP-13", FittingType.RETAINING_CLIP, Finish.ZINC, 0.013, 0),
          fitting("PLATE-13", FittingType.PLATE, Finish.ZINC, 0.013, 0),
          fitting("PLATE-8", FittingType.PLATE, Finish.ZINC, 0, 0.008));

  @Test
  void countsSpringsFittingsStudsAndClips() {
    PartsList list = list(new PartsList.Outfit(part(offer()), 2, socket, socket, false), 3, 1);
    assertEquals(List.of("SPRING 7", "SOCKET 13", "STUD-13 13", "CLIP-13 13"), numbers(list));
    assertTrue(list.unmatched().isEmpty());
  }

  @Test
  void bracketsTakeThePlaceOfStuds() {
    PartsList list = list(new PartsList.Outfit(part(offer()), 1, socket, eyelet, true), 1, 0);
    assertEquals(
        List.of("SPRING 1", "SOCKET 1", "EYELET 1", "CLIP-13 1", "PLATE-13 1", "PLATE-8 1"),
        numbers(list));
  }

  @Test
  void saysWhatTheRangeHasNoMatchFor() {
    Fitting odd = fitting("ODD", FittingType.BALL_SOCKET, Finish.ZINC, 0.021, 0);
    PartsList list = list(new PartsList.Outfit(part(offer()), 1, odd, odd, false), 1, 0);
    assertEquals(
        List.of(
            new Mate.Missing(FittingType.BALL_STUD, "ODD"),
            new Mate.Missing(FittingType.RETAINING_CLIP, "ODD")),
        list.unmatched());
  }

  @Test
  void buysAtTheBreakForTheRoundedQuantity() {
    Price price = price("EUR", LATE, 10, "1.00", "0.80");
    OrderLine line = OrderLine.of(Item.of(part(new Offer(price, 5, null, 4))), 91);
    assertEquals(100, line.quantity());
    assertEquals(new BigDecimal("0.80"), line.unitPrice());
    assertEquals(new BigDecimal("80.00"), line.total());
    assertEquals(4, line.leadTimeDays());
    assertEquals(90, OrderLine.of(line.item(), 90).quantity());
  }

  @Test
  void addsUpAndTakesTheEarliestValidity() {
    Offer soon = new Offer(price("EUR", EARLY, 1, "14.20", "12.00"), 100, null, 3);
    PartsList list = list(new PartsList.Outfit(part(soon), 2, socket, socket, false), 1, 0);
    // 2 · 14.20 + (4 + 4 + 4) · 1.00
    assertEquals(new BigDecimal("40.40"), list.total());
    assertEquals("EUR", list.currency());
    assertEquals(EARLY, list.validUntil());
    assertEquals(0, list.leadTimeDays());
  }

  @Test
  void givesNoSumWhereAPriceIsMissingOrCurrenciesDiffer() {
    Offer none = new Offer(null, 0, null, 9);
    PartsList unpriced = list(new PartsList.Outfit(part(none), 1, socket, socket, false), 1, 0);
    assertNull(unpriced.total());
    assertEquals(9, unpriced.leadTimeDays());
    Offer other = new Offer(price("GBP", LATE, 1, "1.00", "0.80"), 9, null, 0);
    PartsList mixed = list(new PartsList.Outfit(part(other), 1, socket, socket, false), 1, 0);
    assertNull(mixed.currency());
    assertNull(mixed.total());
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
  void noCellIsTakenForAFormula(String text) {
    PartsList list = list(new PartsList.Outfit(part(offer()), 1, socket, socket, false), 1, 0);
    String csv = new PartsListText(list, item -> text).csv();
    String second = csv.split("\r\n")[1];
    assertTrue(second.contains("'" + text.charAt(0)), second);
    assertTrue(PartsListText.safe(text).startsWith("'"));
  }

  @Test
  void quotesCommasAndQuotationMarks() {
    PartsList list = list(new PartsList.Outfit(part(offer()), 1, socket, socket, false), 1, 0);
    String csv = new PartsListText(list, item -> "a \"b\", c").csv();
    assertTrue(
        csv.contains("1,SPRING,\"a \"\"b\"\", c\",gas-spring,1,1.00,1.00,EUR,2027-06-30,net,"));
  }

  private PartsList list(PartsList.Outfit outfit, int sets, int spares) {
    return PartsList.of(outfit, sets, spares, range);
  }

  private static List<String> numbers(PartsList list) {
    return list.lines().stream().map(l -> l.item().number() + " " + l.quantity()).toList();
  }

  private static Price price(
      String currency, LocalDate until, int multiple, String one, String hundred) {
    return new Price(
        currency,
        until,
        1,
        multiple,
        List.of(
            new Price.Break(1, new BigDecimal(one)),
            new Price.Break(100, new BigDecimal(hundred))));
  }

  private static Offer offer() {
    return new Offer(price("EUR", LATE, 1, "1.00", "0.80"), 1000, null, 5);
  }

  private static Fitting fitting(
      String number, FittingType type, Finish finish, double ball, double pin) {
    return new Fitting(number, null, type, finish, "M8", 0.02, 3000, 0.3, ball, pin, 0.02, offer());
  }

  private static Part part(Offer offer) {
    return new Part(
        "SPRING",
        null,
        Family.GAS_SPRING,
        Finish.ZINC,
        new GasSpring(0.008, 0.018, 0.0156, 0.16, 0.388, 0.228, 400, 19, 1.5, 27.7e-6, 0.7e-6),
        20,
        new Part.Ends("M8", "M8"),
        new Part.Damping(0, 0.6e-3, 2e-3, 4, 3),
        new Part.Limits(243.15, 353.15, 4e7),
        new Part.Wear(0.02, 1.5e-6),
        0.26,
        Mounting.ROD_DOWN,
        offer,
        List.of());
  }
}
