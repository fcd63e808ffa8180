package org.staywright.web.replace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.staywright.fit.replace.Difference;
import org.staywright.fit.replace.Replacement;
import org.staywright.web.fit.CautionView;
import org.staywright.web.shell.Address;
import org.staywright.wording.PartText;
import org.staywright.wording.ReplacementText;
import org.staywright.wording.Wording;

/**
 * Replacements in words, the likeliest first.
 *
 * @param sentence the answer in one sentence
 * @param matches whether one part explains what was measured
 * @param rows one answer each
 * @param advice what to do next
 * @param cautions of the swap
 * @param steps of the swap, in order
 */
public record SwapView(
    String sentence,
    boolean matches,
    List<Row> rows,
    List<String> advice,
    List<CautionView> cautions,
    List<String> steps) {

  /** Beyond the first few nobody chooses, unless they are likely. */
  private static final int SHOWN = 8;

  private static final int STEPS = 8;

  /**
   * @param number of the part
   * @param description in words
   * @param kind drop-in or what else
   * @param about the kind
   * @param likelihood in percent
   * @param alike numbers of the others, cut short
   * @param differences a sentence each
   * @param note address of old and new side by side
   * @param order address of the parts list, "" where force or end fittings are not known
   */
  public record Row(
      String number,
      String description,
      String kind,
      String about,
      String likelihood,
      String alike,
      List<String> differences,
      String note,
      String order) {}

  /**
   * @param typed what was asked
   */
  static SwapView of(Swap swap, Map<String, List<String>> typed, Wording wording) {
    List<Row> rows = new ArrayList<>();
    for (Replacement one : swap.answer().found().stream().limit(SHOWN).toList()) {
      rows.add(row(swap, one, typed, wording));
    }
    ReplacementText text = ReplacementText.in(wording);
    boolean matches = !swap.answer().matchesNothing() && !rows.isEmpty();
    List<String> steps = new ArrayList<>();
    for (int i = 1; i <= STEPS; i++) {
      steps.add(wording.text("replace.step." + i));
    }
    return new SwapView(
        matches
            ? wording.text(
                "replace.found", rows.get(0).number(), rows.get(0).kind(), rows.get(0).likelihood())
            : wording.text("replace.found.none"),
        matches,
        rows,
        swap.advice().stream().map(text::advice).toList(),
        CautionView.of(swap.cautions(), wording),
        steps);
  }

  private static Row row(
      Swap swap, Replacement one, Map<String, List<String>> typed, Wording wording) {
    ReplacementText text = ReplacementText.in(wording);
    return new Row(
        one.part().number(),
        PartText.in(wording).describe(one.part()),
        text.kind(one.kind()),
        text.about(one.kind()),
        percent(one.likelihood(), wording),
        alike(one.alike(), wording),
        one.differences().stream().map(each -> said(each, text, wording)).toList(),
        new Address("/replace/note.pdf", typed).with("part", one.part().number()).toString(),
        order(swap, one));
  }

  private static String said(Difference each, ReplacementText text, Wording wording) {
    return wording.text(
        "replace.difference",
        text.what(each.what()),
        text.value(each, each.old()),
        text.value(each, each.now()),
        text.effect(each));
  }

  private static String percent(double likelihood, Wording wording) {
    if (likelihood < 0.01) {
      return wording.text("replace.under-one");
    }
    return wording.number(100 * likelihood, 0) + "\u00a0%";
  }

  private static String alike(List<String> numbers, Wording wording) {
    if (numbers.isEmpty()) {
      return "";
    }
    String shown = String.join(", ", numbers.stream().limit(6).toList());
    return numbers.size() > 6
        ? wording.text("replace.alike.more", shown, wording.number(numbers.size() - 6, 0))
        : wording.text("replace.alike", shown);
  }

  private static String order(Swap swap, Replacement one) {
    if (!one.orderable(swap.old())) {
      return "";
    }
    return new Address(
            "/replace/list",
            Map.of(
                "part", List.of(one.part().number()),
                "count", List.of(Integer.toString(swap.old().springCount())),
                "rod", List.of(one.rodFitting().number()),
                "tube", List.of(one.tubeFitting().number())))
        .toString();
  }
}
