package org.staywright.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.staywright.part.Part;
import org.staywright.part.PressureDirective;
import org.staywright.part.Transport;
import org.staywright.part.TransportText;
import org.staywright.unit.Unit;

/**
 * How a part stands under published texts, in words; information only. In metric units for every
 * reader: the texts draw their lines in them.
 */
public final class LawText {

  private final Wording wording;

  private LawText(Wording wording) {
    this.wording = wording.metric();
  }

  public static LawText in(Wording wording) {
    return new LawText(wording);
  }

  /** Text with its finding, a pair each. */
  public List<String[]> pairs(Part part) {
    List<String[]> pairs = new ArrayList<>();
    PressureDirective.of(part)
        .ifPresent(
            directive ->
                pairs.add(new String[] {wording.text("law.directive"), finding(directive)}));
    part.charge()
        .map(Transport::of)
        .ifPresent(
            transport -> {
              pairs.add(new String[] {names(true), finding(transport, "")});
              pairs.add(new String[] {names(false), finding(transport, "same.")});
            });
    if (pairs.isEmpty()) {
      pairs.add(new String[] {wording.text("law.no-gas"), wording.text("law.no-gas.finding")});
    }
    return pairs;
  }

  private String finding(PressureDirective directive) {
    return wording.text(
        "law.directive." + directive.standing().code(),
        wording.quantity(directive.pressure(), Unit.BAR, 0),
        litres(directive.volume()),
        product(directive.product()),
        litres(PressureDirective.SMALL),
        wording.quantity(PressureDirective.MOST_PRESSURE, Unit.BAR, 0),
        product(PressureDirective.MOST_PRODUCT),
        wording.quantity(PressureDirective.LEAST_PRESSURE, Unit.BAR, 1));
  }

  /** The texts whose figures were read, or those whose figures are remembered. */
  private String names(boolean seen) {
    return Arrays.stream(TransportText.values())
        .filter(text -> text.seen() == seen)
        .map(text -> wording.text("law.transport." + text.code()))
        .collect(Collectors.joining("; "));
  }

  private String finding(Transport transport, String same) {
    String found = transport.withinFigures() ? "kept" : "passed";
    return wording.text(
        "law.transport." + same + found,
        litres(transport.gasSpace()),
        litres(Transport.MOST_GAS_SPACE),
        wording.quantity(transport.charge(), Unit.BAR, 0),
        wording.quantity(Transport.MOST_CHARGE, Unit.BAR, 0),
        product(transport.product()),
        product(Transport.MOST_PRODUCT),
        wording.number(transport.burstFactor(), 0),
        wording.quantity(transport.burstFactor() * transport.charge(), Unit.BAR, 0));
  }

  private String litres(double volume) {
    return wording.shortest(Unit.LITRE.of(volume), 3) + "\u00a0" + Unit.LITRE.symbol();
  }

  private String product(double pressureByVolume) {
    String bars = wording.shortest(Unit.LITRE.of(Unit.BAR.of(pressureByVolume)), 1);
    return bars + "\u00a0" + Unit.BAR.symbol() + "·" + Unit.LITRE.symbol();
  }
}
