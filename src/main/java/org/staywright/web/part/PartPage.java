package org.staywright.web.part;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.document.chart.FamilyCharts;
import org.staywright.document.draw.Drawing;
import org.staywright.part.Part;
import org.staywright.stock.CurrentRange;
import org.staywright.web.chart.ChartFile;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** One part of the stock. */
@Path("/parts/{partNumber}")
@Produces(MediaType.TEXT_HTML)
public final class PartPage {

  private final CurrentRange stock;

  PartPage(CurrentRange stock) {
    this.stock = stock;
  }

  /** One of its charts as a file. */
  @GET
  @Path(ChartFile.PATH)
  @Produces(MediaType.WILDCARD)
  public RestResponse<String> chart(
      @PathParam("partNumber") String partNumber,
      @PathParam("chart") String chart,
      @PathParam("type") String type) {
    Part part = stock.get().part(partNumber).orElseThrow(NotFoundException::new);
    Wording wording = PageText.wording().about(part.family().code());
    List<Drawing> charts =
        PartView.charts(part, wording).stream().map(FamilyCharts.Chart::drawing).toList();
    return ChartFile.of(charts, chart, type, part.number(), wording);
  }

  @GET
  public TemplateInstance show(@PathParam("partNumber") String partNumber) {
    return Templates.part(
        stock
            .get()
            .part(partNumber)
            .map(part -> PartView.of(part, PageText.wording()))
            .orElseThrow(NotFoundException::new));
  }

  @CheckedTemplate(basePath = "part")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance part(PartView part);
  }
}
