package org.staywright.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.StreamSupport;

/** The charts on a page, as its own script reads them, to hold its sentences against. */
public final class PageCharts {

  /** Half of the last decimal that the numbers on the page have. */
  private static final double ROUNDED = 0.005;

  private static final Pattern CHART = Pattern.compile("data-chart=\"([^\"]+)\"");

  private final List<JsonNode> charts;

  private PageCharts(List<JsonNode> charts) {
    this.charts = charts;
  }

  public static PageCharts of(String page) {
    return new PageCharts(
        CHART
            .matcher(page)
            .results()
            .map(chart -> read(chart.group(1).replace("&quot;", "\"")))
            .toList());
  }

  private static JsonNode read(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (JsonProcessingException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private JsonNode series(String name) {
    return charts.stream()
        .flatMap(chart -> StreamSupport.stream(chart.get("series").spliterator(), false))
        .filter(each -> each.get("name").asText().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name + " in " + charts))
        .get("y");
  }

  private DoubleStream values(String name) {
    return StreamSupport.stream(series(name).spliterator(), false).mapToDouble(JsonNode::asDouble);
  }

  public double most(String name) {
    return values(name).max().orElseThrow();
  }

  public double least(String name) {
    return values(name).min().orElseThrow();
  }

  public double first(String name) {
    return series(name).get(0).asDouble();
  }

  /** The number told is the greatest of a curve, rounded up. */
  public void holdsMost(String said, String sentence, String name) {
    Matcher told = Pattern.compile(sentence).matcher(said);
    assertTrue(told.find(), sentence + " in " + said);
    BigDecimal number = new BigDecimal(told.group(1));
    double beyond = number.doubleValue() - most(name);
    double last = number.ulp().doubleValue();
    assertTrue(beyond > -ROUNDED && beyond < last + ROUNDED, number + " less " + beyond);
  }
}
