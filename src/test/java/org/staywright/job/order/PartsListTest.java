package org.staywright.job.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.part.Price;
import org.staywright.spring.Cylinder;
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
    PartsList list = list(new Outfit(part(offer()), 2, socket, socket, false), 3, 1);
    assertEquals(List.of("SPRING 7", "SOCKET 13", "STUD-13 13", "CLIP-13 13"), numbers(list));
    assertTrue(list.unmatched().isEmpty());
  }

  @Test
  void bracketsTakeThePlaceOfStuds() {
    PartsList list = list(new Outfit(part(offer()), 1, socket, eyelet, true), 1, 0);
    assertEquals(
        List.of("SPRING 1", "SOCKET 1", "EYELET 1", "CLIP-13 1", "PLATE-13 1", "PLATE-8 1"),
        numbers(list));
  }

  @Test
  void saysWhatTheRangeHasNoMatchFor() {
    Fitting odd = fitting("ODD", FittingType.BALL_SOCKET, Finish.ZINC, 0.021, 0);
    PartsList list = list(new Outfit(part(offer()), 1, odd, odd, false), 1, 0);
    assertEquals(
        List.of(
            new Mate.Missing(FittingType.BALL_STUD, "ODD"),
            new Mate.Missing(FittingType.RETAINING_CLIP, "ODD")),
        list.unmatched());
  }

  @Test
  void buysAtTheBreakForTheRoundedQuantity() {
    Price price = price("EUR", LATE, 10, "1.00", "0.80");
    OrderLine line = OrderLine.of(Item.of(part(new Offer(price, 5, null, 4)), 1), 91, 1, null);
    assertEquals(100, line.quantity());
    assertEquals(new BigDecimal("0.80"), line.unitPrice());
    assertEquals(new BigDecimal("80.00"), line.total());
    assertEquals(4, line.leadTimeDays());
    assertEquals(90, OrderLine.of(line.item(), 90, 1, null).quantity());
  }

  @Test
  void addsUpAndTakesTheEarliestValidity() {
    Offer soon = new Offer(price("EUR", EARLY, 1, "14.20", "12.00"), 100, null, 3);
    PartsList list = list(new Outfit(part(soon), 2, socket, socket, false), 1, 0);
    // 2 · 14.20 + (4 + 4 + 4) · 1.00
    assertEquals(new BigDecimal("40.40"), list.total());
    assertEquals("EUR", list.currency());
    assertEquals(EARLY, list.validUntil());
    assertEquals(0, list.leadTimeDays());
  }

  @Test
  void givesNoSumWhereAPriceIsMissingOrCurrenciesDiffer() {
    Offer none = new Offer(null, 0, null, 9);
    PartsList unpriced = list(new Outfit(part(none), 1, socket, socket, false), 1, 0);
    assertNull(unpriced.total());
    assertEquals(9, unpriced.leadTimeDays());
    Offer other = new Offer(price("GBP", LATE, 1, "1.00", "0.80"), 9, null, 0);
    PartsList mixed = list(new Outfit(part(other), 1, socket, socket, false), 1, 0);
    assertNull(mixed.currency());
    assertNull(mixed.total());
  }

  @Test
  void addsLikePartsOfOneRevisionUpBeforeTheBreak() {
    Outfit pair = new Outfit(part(offer()), 2, socket, socket, false);
    // 30 sets and 25 sets of two springs: 60 + 50 = 110 springs, 0.80 each from 100
    PartsList list = PartsList.of(List.of(wanted(pair, 30, 0, 1), wanted(pair, 25, 0, 1)));
    OrderLine springs = list.lines().get(0);
    assertEquals(110, springs.quantity());
    assertEquals(new BigDecimal("88.00"), springs.total());
    // each alone would be below the break
    PartsList apart = PartsList.of(List.of(wanted(pair, 30, 0, 1), wanted(pair, 25, 0, 2)));
    assertEquals(
        List.of("SPRING 60", "SPRING 50"),
        numbers(apart).subList(0, 2),
        "two revisions, two lines");
    assertEquals(new BigDecimal("1.00"), apart.lines().get(0).unitPrice());
  }

  @Test
  void ordersNotBelowTheMinimumAndInWholeMultiples() {
    Price price =
        new Price("EUR", LATE, 5, 10, List.of(new Price.Break(25, new BigDecimal("2.00"))));
    Item item = Item.of(part(new Offer(price, 5, null, 4)), 1);
    // 3 needed, 25 the least sold, 10 the multiple: 30
    assertEquals(30, OrderLine.of(item, 3, 1, null).quantity());
    assertEquals(new BigDecimal("60.00"), OrderLine.of(item, 3, 1, null).total());
    assertEquals(40, OrderLine.of(item, 31, 1, null).quantity());
  }

  @Test
  void weighsEveryLineAndAllOfIt() {
    PartsList list = list(new Outfit(part(offer()), 2, socket, socket, false), 3, 1);
    // 7 · 0.26 kg, then three lines of 13 · 0.02 kg
    assertEquals(0, new BigDecimal("1.82").compareTo(list.lines().get(0).mass()));
    assertEquals(0, new BigDecimal("0.26").compareTo(list.lines().get(1).mass()));
    assertEquals(0, new BigDecimal("2.60").compareTo(list.mass()));
  }

  @Test
  void tellsWhatASetCostsNowAndOverTenYears() {
    Outfit pair = new Outfit(part(offer()), 2, socket, socket, false);
    ListedJob job = list(pair, 3, 1).jobs().get(0);
    // 2 springs, 4 sockets, 4 studs, 4 clips at 1.00; replaced after 5 years: two sets
    assertEquals(new BigDecimal("14.00"), job.setCost());
    assertEquals(2, job.setsInTenYears());
    assertEquals(new BigDecimal("28.00"), job.tenYearCost());
    assertEquals(4, lasting(pair, 3).setsInTenYears(), "at 0, 3, 6 and 9 years");
    assertEquals(1, lasting(pair, 10).setsInTenYears());
    assertNull(lasting(pair, 0).setsInTenYears());
  }

  @Test
  void pairsAreMarkedAsOfOneBatch() {
    assertEquals(
        2,
        list(new Outfit(part(offer()), 2, socket, socket, false), 1, 0).lines().get(0).matched());
    assertEquals(
        1,
        list(new Outfit(part(offer()), 1, socket, socket, false), 1, 0).lines().get(0).matched());
  }

  @Test
  void anAlternateMustDoInEveryJobOfItsLineAndBeThere() {
    Alternate few = new Alternate("FEW", 3, 40.0, 30.0, -1.0, 2.0, "hinged-flap");
    Alternate gone = new Alternate("ONE-JOB", 99, 40.0, 30.0, -1.0, 2.0, "hinged-flap");
    Alternate here = new Alternate("BOTH", 99, 42.0, 31.0, 1.0, 3.0, "hinged-flap");
    Alternate there = new Alternate("BOTH", 99, 45.0, 30.0, 0.5, 5.0, "hinged-flap");
    Alternate common = Alternate.common(List.of(List.of(few, gone, here), List.of(few, there)), 20);
    assertEquals(
        new Alternate("BOTH", 99, 45.0, 31.0, 1.0, 5.0, "hinged-flap"),
        common,
        "the harder of both");
    assertNull(Alternate.common(List.of(List.of(few)), 4));
  }

  private ListedJob lasting(Outfit outfit, double years) {
    Wanted wanted = new Wanted("lid", outfit, 1, 0, range, 1, years);
    return PartsList.of(List.of(wanted)).jobs().get(0);
  }

  private Wanted wanted(Outfit outfit, int sets, int spares, int revision) {
    return new Wanted("lid", outfit, sets, spares, range, revision, 5);
  }

  private PartsList list(Outfit outfit, int sets, int spares) {
    return PartsList.of(List.of(wanted(outfit, sets, spares, 1)));
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
        new GasSpring(
            new Cylinder(0.008, 0.018, 0.0156, 0.16, 0.388, 0.228, 19, 1.5, 27.7e-6, 0.7e-6), 400),
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
