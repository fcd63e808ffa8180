package org.staywright.web.job;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import org.staywright.document.order.OrderLines;
import org.staywright.document.order.PartsListAnswer;
import org.staywright.document.order.PartsListCsv;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.PartsListXlsx;
import org.staywright.document.order.QuotationRequest;
import org.staywright.form.schema.AnswerJson;
import org.staywright.job.Chosen;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.order.PartsList;
import org.staywright.web.shell.Address;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** One parts list for the jobs that an address names, as a page and as files. */
@Path("/parts-list")
public class CommonListPage {

  private static final String XLSX =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  private final Jobs jobs;
  private final Ordering ordering;

  CommonListPage(Jobs jobs, Ordering ordering) {
    this.jobs = jobs;
    this.ordering = ordering;
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public TemplateInstance show(@QueryParam("job") List<String> ids) {
    Wording wording = PageText.wording();
    Ticked ticked = Ticked.of(ids, jobs, wording);
    List<Chosen> chosen = ordering.chosen(ticked.jobs());
    return Templates.list(
        new CommonView(
            ticked.jobs().stream().map(job -> JobsView.Row.of(job, wording)).toList(),
            ticked.missing(),
            new Address("", Map.of("job", ticked.ids())).toString(),
            chosen.isEmpty() ? null : ListView.of(chosen, ordering.list(chosen), wording)));
  }

  /** The same list as a file. */
  @GET
  @Path("{file}")
  public Response file(@PathParam("file") String file, @QueryParam("job") List<String> ids) {
    Wording wording = PageText.wording();
    Ticked ticked = Ticked.of(ids, jobs, wording);
    if (ticked.jobs().isEmpty() || !ticked.missing().isEmpty()) {
      throw new NotFoundException();
    }
    PartsList list = ordering.list(ordering.chosen(ticked.jobs()));
    return switch (file) {
      case "parts-list.json" ->
          sent(
              AnswerJson.tree(PartsListAnswer.of(list, wording)).toString(),
              MediaType.APPLICATION_JSON,
              file);
      case "parts-list.csv" -> sent(PartsListCsv.of(list, wording), "text/csv;charset=UTF-8", file);
      case "parts-list.xlsx" -> sent(PartsListXlsx.of(list, wording), XLSX, file);
      case "parts-list.pdf" -> sent(PartsListPdf.of(list, wording), "application/pdf", file);
      case "quotation-request.pdf" ->
          sent(QuotationRequest.pdf(list, wording), "application/pdf", file);
      case "order-lines.txt" ->
          sent(OrderLines.of(list, wording), "text/plain;charset=UTF-8", file);
      default -> throw new NotFoundException();
    };
  }

  private static Response sent(Object content, String type, String file) {
    String how = type.equals("application/pdf") ? "inline" : "attachment";
    return Response.ok(content, type)
        .header(HttpHeaders.CONTENT_DISPOSITION, how + "; filename=\"" + file + "\"")
        .build();
  }

  @CheckedTemplate(basePath = "job")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance list(CommonView common);
  }
}
