package org.staywright.document.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The stylesheet of drawings, for those that leave the program. */
public final class DrawingStyle {

  private static final String SHEET = "/META-INF/resources/css/drawing.css";
  private static final Pattern NAMED = Pattern.compile("(--[a-z-]+):\\s*(#[0-9a-f]+);");
  private static final Pattern USED = Pattern.compile("var\\((--[a-z-]+)\\)");

  private DrawingStyle() {}

  /** Its rules with the light colours written out, as not every program knows names for them. */
  static String onPaper() {
    String sheet = sheet();
    int rules = sheet.indexOf(".drawing");
    Map<String, String> colours = new HashMap<>();
    Matcher named = NAMED.matcher(sheet.substring(0, rules));
    while (named.find()) {
      // Those for the light come first.
      colours.putIfAbsent(named.group(1), named.group(2));
    }
    String looks = USED.matcher(sheet.substring(rules)).replaceAll(m -> colours.get(m.group(1)));
    return looks.replace("font-family: inherit;", "");
  }

  private static String sheet() {
    try (InputStream in = DrawingStyle.class.getResourceAsStream(SHEET)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
