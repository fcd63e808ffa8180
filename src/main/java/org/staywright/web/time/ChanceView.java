package org.staywright.web.time;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.web.field.Labelled;
import org.staywright.web.fit.InTimeText;
import org.staywright.wording.Wording;

/**
 * How sure a fit is, in words.
 *
 * @param figures chances and years
 * @param shares of what strays in what comes of it, what matters most to holding first
 */
public record ChanceView(List<Labelled> figures, List<Share> shares) {

  /**
   * How much of the spread comes from one thing that strays.
   *
   * @param holding of the moment that holds
   * @param hand of the hand's force
   */
  public record Share(String source, String holding, String hand) {}

  static ChanceView of(Chance chance, Wording wording) {
    InTimeText text = new InTimeText(wording);
    List<Labelled> figures = new ArrayList<>();
    InTimeText least = text.least();
    figures.add(text.figure("holds", least.percent(chance.holds())));
    figures.add(text.figure("hand-within", least.percent(chance.handWithinLimit())));
    figures.add(text.figure("stays-shut", least.percent(chance.staysShut())));
    figures.add(text.figure("years", least.years(chance.yearsUntil(0.5))));
    figures.add(text.figure("years-early", least.years(chance.yearsUntil(0.05))));
    if (chance.mattersMost() != null) {
      String share = text.percent(chance.holdShares().get(chance.mattersMost()));
      figures.add(
          text.figure("matters-most", source(chance.mattersMost(), wording) + ", " + share));
    }
    return new ChanceView(figures, shares(chance, text));
  }

  private static List<Share> shares(Chance chance, InTimeText text) {
    Map<Source, Double> holding = chance.holdShares();
    return holding.keySet().stream()
        .sorted(Comparator.comparing(holding::get).reversed())
        .map(
            each ->
                new Share(
                    source(each, text.wording()),
                    text.percent(holding.get(each)),
                    text.percent(chance.handShares().get(each))))
        .toList();
  }

  private static String source(Source source, Wording wording) {
    String code = source.name().toLowerCase(Locale.ROOT).replace('_', '-');
    return wording.text("time.source." + code);
  }
}
