package org.staywright.web.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.staywright.document.job.OrderFile;
import org.staywright.document.order.OrderLines;
import org.staywright.document.order.PartsListAnswer;
import org.staywright.job.Chosen;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.order.PartsList;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Download;
import org.staywright.web.shell.Preference;

/** What must be ordered for a job, and the sheet that goes with it. */
@Path("/api/v1/jobs/{id}")
public class PartsListResource {

  static final String CSV = OrderFile.Type.CSV;
  public static final String PDF = OrderFile.Type.PDF;
  public static final String XLSX = OrderFile.Type.XLSX;

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
    return file(OrderFile.CSV, id, uri);
  }

  @GET
  @Path("parts-list.xlsx")
  @Produces(XLSX)
  public Response partsListXlsx(@PathParam("id") String id, UriInfo uri) {
    return file(OrderFile.XLSX, id, uri);
  }

  @GET
  @Path("parts-list.pdf")
  @Produces(PDF)
  public Response partsListPdf(@PathParam("id") String id, UriInfo uri) {
    return file(OrderFile.PDF, id, uri);
  }

  @GET
  @Path("quotation-request.pdf")
  @Produces(PDF)
  public Response quotationRequest(@PathParam("id") String id, UriInfo uri) {
    return file(OrderFile.QUOTATION, id, uri);
  }

  @GET
  @Path("order-lines.txt")
  @Produces(OrderFile.Type.TEXT)
  public String orderLines(@PathParam("id") String id, UriInfo uri) {
    return OrderLines.of(list(id, uri), Preference.now().wording());
  }

  @GET
  @Path("job-sheet.pdf")
  @Produces(PDF)
  public Response jobSheet(@PathParam("id") String id, UriInfo uri) {
    return file(OrderFile.SHEET, id, uri);
  }

  private Response file(OrderFile file, String id, UriInfo uri) {
    List<Chosen> jobs = List.of(chosen(id, uri));
    Object content = file.of(jobs, ordering.list(jobs), Preference.now().wording());
    return Download.of(file, content, file.file(id));
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
}
