package org.staywright.web.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.PartsListText;
import org.staywright.job.SavedJob;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** What must be ordered for a job. */
@Path("/api/v1/jobs/{id}")
public class PartsListResource {

  private final Jobs jobs;
  private final Ordering ordering;
  private final PartText text = PartText.in(Wording.english());

  PartsListResource(Jobs jobs, Ordering ordering) {
    this.jobs = jobs;
    this.ordering = ordering;
  }

  @GET
  @Path("parts-list.json")
  @Produces(MediaType.APPLICATION_JSON)
  public ObjectNode json(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    return list(id).json();
  }

  @GET
  @Path("parts-list.csv")
  @Produces("text/csv;charset=UTF-8")
  public Response csv(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    return Response.ok(list(id).csv())
        .header(
            HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"parts-list-" + id + ".csv\"")
        .build();
  }

  private PartsListText list(String id) {
    SavedJob job = FoundJob.by(id, jobs);
    if (job.choice == null) {
      throw new NotThere("problem.no-choice", id);
    }
    return new PartsListText(
        ordering.of(job.choice),
        item -> item.part() != null ? text.describe(item.part()) : text.describe(item.fitting()));
  }
}
