package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.staywright.document.job.OrderFile;
import org.staywright.document.order.PartsListAnswer;
import org.staywright.form.order.ListRequest;
import org.staywright.form.schema.JsonText;
import org.staywright.job.Chosen;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Download;
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
    return PartsListAnswer.of(ordering.list(chosen(body, uri)), Preference.now().metric());
  }

  @POST
  @Path("parts-lists.csv")
  @Produces(PartsListResource.CSV)
  public Response commonListCsv(byte[] body, UriInfo uri) {
    return file(OrderFile.CSV, body, uri);
  }

  @POST
  @Path("parts-lists.xlsx")
  @Produces(PartsListResource.XLSX)
  public Response commonListXlsx(byte[] body, UriInfo uri) {
    return file(OrderFile.XLSX, body, uri);
  }

  @POST
  @Path("parts-lists.pdf")
  @Produces(PartsListResource.PDF)
  public Response commonListPdf(byte[] body, UriInfo uri) {
    return file(OrderFile.PDF, body, uri);
  }

  private Response file(OrderFile file, byte[] body, UriInfo uri) {
    List<Chosen> jobs = chosen(body, uri);
    Object content = file.of(jobs, ordering.list(jobs), Preference.now().wording());
    return Download.of(file, content, file.file());
  }

  private List<Chosen> chosen(byte[] body, UriInfo uri) {
    Query.document(uri);
    return ordering.chosen(jobs.all(ListRequest.read(JsonText.read(body))));
  }
}
