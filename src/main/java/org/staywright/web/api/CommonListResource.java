package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.document.order.PartsListAnswer;
import org.staywright.document.order.PartsListCsv;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.PartsListXlsx;
import org.staywright.form.order.ListRequest;
import org.staywright.form.schema.JsonText;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.order.PartsList;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Preference;

/** One parts list for several jobs, like parts added up. */
@Path("/api/v1")
@Consumes(MediaType.APPLICATION_JSON)
public class CommonListResource {

  private final Jobs jobs;
  private final Ordering ordering;

  CommonListResource(Jobs jobs, Ordering ordering) {
    this.jobs = jobs;
    this.ordering = ordering;
  }

  @POST
  @Path("parts-lists.json")
  @Produces(MediaType.APPLICATION_JSON)
  public PartsListAnswer commonList(byte[] body, UriInfo uri) {
    return PartsListAnswer.of(list(body, uri), Preference.now().metric());
  }

  @POST
  @Path("parts-lists.csv")
  @Produces(PartsListResource.CSV)
  public Response commonListCsv(byte[] body, UriInfo uri) {
    return PartsListResource.attached(
        PartsListCsv.of(list(body, uri), Preference.now().wording()), "parts-list.csv");
  }

  @POST
  @Path("parts-lists.xlsx")
  @Produces(PartsListResource.XLSX)
  public Response commonListXlsx(byte[] body, UriInfo uri) {
    return PartsListResource.attached(
        PartsListXlsx.of(list(body, uri), Preference.now().wording()), "parts-list.xlsx");
  }

  @POST
  @Path("parts-lists.pdf")
  @Produces(PartsListResource.PDF)
  public Response commonListPdf(byte[] body, UriInfo uri) {
    return PartsListResource.shown(
        PartsListPdf.of(list(body, uri), Preference.now().wording()), "parts-list.pdf");
  }

  private PartsList list(byte[] body, UriInfo uri) {
    Query.document(uri);
    return ordering.list(ordering.chosen(jobs.all(ListRequest.read(JsonText.read(body)))));
  }
}
