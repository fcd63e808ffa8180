package org.staywright.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.staywright.document.job.JobSheet;
import org.staywright.document.order.OrderLines;
import org.staywright.document.order.PartsListAnswer;
import org.staywright.document.order.PartsListCsv;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.PartsListXlsx;
import org.staywright.document.order.QuotationRequest;
import org.staywright.job.Chosen;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.order.PartsList;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Preference;

/** What must be ordered for a job, and the sheet that goes with it. */
@Path("/api/v1/jobs/{id}")
public class PartsListResource {

  static final String CSV = "text/csv;charset=UTF-8";
  public static final String PDF = "application/pdf";
  public static final String XLSX =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  private final Jobs jobs;
  private final Ordering ordering;

  PartsListResource(Jobs jobs, Ordering ordering) {
    this.jobs = jobs;
    this.ordering = ordering;
  }

  @GET
  @Path("parts-list.json")
  @Produces(MediaType.APPLICATION_JSON)
  public PartsListAnswer partsList(@PathParam("id") String id, UriInfo uri) {
    return PartsListAnswer.of(list(id, uri), Preference.now().metric());
  }

  @GET
  @Path("parts-list.csv")
  @Produces(CSV)
  public Response partsListCsv(@PathParam("id") String id, UriInfo uri) {
    return attached(
        PartsListCsv.of(list(id, uri), Preference.now().wording()), "parts-list-" + id + ".csv");
  }

  @GET
  @Path("parts-list.xlsx")
  @Produces(XLSX)
  public Response partsListXlsx(@PathParam("id") String id, UriInfo uri) {
    return attached(
        PartsListXlsx.of(list(id, uri), Preference.now().wording()), "parts-list-" + id + ".xlsx");
  }

  @GET
  @Path("parts-list.pdf")
  @Produces(PDF)
  public Response partsListPdf(@PathParam("id") String id, UriInfo uri) {
    return shown(
        PartsListPdf.of(list(id, uri), Preference.now().wording()), "parts-list-" + id + ".pdf");
  }

  @GET
  @Path("quotation-request.pdf")
  @Produces(PDF)
  public Response quotationRequest(@PathParam("id") String id, UriInfo uri) {
    return shown(
        QuotationRequest.pdf(list(id, uri), Preference.now().wording()),
        "quotation-request-" + id + ".pdf");
  }

  @GET
  @Path("order-lines.txt")
  @Produces("text/plain;charset=UTF-8")
  public String orderLines(@PathParam("id") String id, UriInfo uri) {
    return OrderLines.of(list(id, uri), Preference.now().wording());
  }

  @GET
  @Path("job-sheet.pdf")
  @Produces(PDF)
  public Response jobSheet(@PathParam("id") String id, UriInfo uri) {
    Chosen chosen = chosen(id, uri);
    byte[] pdf = JobSheet.pdf(chosen, ordering.list(List.of(chosen)), Preference.now().wording());
    return shown(pdf, "job-sheet-" + id + ".pdf");
  }

  private PartsList list(String id, UriInfo uri) {
    return ordering.list(List.of(chosen(id, uri)));
  }

  private Chosen chosen(String id, UriInfo uri) {
    Query.document(uri);
    SavedJob job = FoundJob.by(id, jobs);
    if (job.choice == null) {
      throw new NotThere("problem.no-choice", id);
    }
    return ordering.chosen(job);
  }

  static Response attached(Object content, String name) {
    return named(content, "attachment", name);
  }

  static Response shown(byte[] pdf, String name) {
    return named(pdf, "inline", name);
  }

  private static Response named(Object content, String how, String name) {
    return Response.ok(content)
        .header(HttpHeaders.CONTENT_DISPOSITION, how + "; filename=\"" + name + "\"")
        .build();
  }
}
