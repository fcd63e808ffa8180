package org.staywright.web.chart;

import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.document.chart.ChartCsv;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Svg;
import org.staywright.wording.Wording;

/** A chart to take away: its picture, or its numbers. */
public final class ChartFile {

  /** Path of a chart's file below the page that shows it. */
  public static final String PATH = "{chart: [a-z-]+}.{type: svg|csv}";

  private ChartFile() {}

  /**
   * @param charts of a page
   * @param code of the one asked for
   * @param type svg or csv
   */
  public static RestResponse<String> of(
      List<Drawing> charts, String code, String type, String name, Wording wording) {
    Drawing chart =
        charts.stream()
            .filter(each -> each.readings() != null && each.readings().code().equals(code))
            .findFirst()
            .orElseThrow(NotFoundException::new);
    boolean picture = type.equals("svg");
    String file = name + "-" + code + "." + type;
    return RestResponse.ResponseBuilder.ok(
            picture ? Svg.file(chart) : ChartCsv.of(chart.readings(), wording))
        .header(HttpHeaders.CONTENT_TYPE, picture ? "image/svg+xml" : "text/csv;charset=UTF-8")
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + file + "\"")
        .build();
  }
}
