package org.staywright.web.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.JobForm;
import org.staywright.form.part.SearchShape;
import org.staywright.form.table.Page;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.SavedJobAnswer;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.web.api.request.ChangedJob;
import org.staywright.web.api.request.IfMatch;
import org.staywright.web.api.request.JsonBody;
import org.staywright.web.api.request.Query;
import org.staywright.web.audit.Sender;

/** Saved jobs and what was chosen for them. */
@Path("/api/v1/jobs")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class JobResource {

  private final Jobs jobs;
  private final CurrentRange current;
  private final Ordering ordering;
  private final Sender sender;

  JobResource(Jobs jobs, CurrentRange current, Ordering ordering, Sender sender) {
    this.jobs = jobs;
    this.current = current;
    this.ordering = ordering;
    this.sender = sender;
  }

  @GET
  public Page<SavedJobAnswer> listJobs(UriInfo uri) {
    Page.Asked asked = Page.Asked.of(Query.read(SearchShape.PAGES, uri));
    return asked.of(jobs.count(), jobs.page(asked.page(), asked.size()), SavedJobAnswer::of);
  }

  @POST
  @APIResponseSchema(value = SavedJobAnswer.class, responseCode = "201")
  public Response addJob(byte[] body, @HeaderParam(Sender.FROM) String from, UriInfo uri) {
    Query.none(uri);
    ObjectNode document = JobForm.withDefaults(JsonBody.read(body));
    JobForm.read(document, current.get());
    SavedJob saved = jobs.add(sender.sent(from), document);
    URI location = uri.getAbsolutePathBuilder().path(saved.id.toString()).build();
    return Response.created(location)
        .entity(SavedJobAnswer.of(saved))
        .header(HttpHeaders.ETAG, IfMatch.tag(saved))
        .build();
  }

  @GET
  @Path("{id}")
  public RestResponse<SavedJobAnswer> job(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    return tagged(find(id));
  }

  @PUT
  @Path("{id}")
  @Parameter(ref = HttpHeaders.IF_MATCH)
  public RestResponse<SavedJobAnswer> changeJob(
      @PathParam("id") String id,
      byte[] body,
      @HeaderParam(Sender.FROM) String from,
      UriInfo uri,
      HttpHeaders headers) {
    Query.none(uri);
    SavedJob seen = find(id);
    int version = IfMatch.version(headers, seen);
    ObjectNode document = JobForm.withDefaults(ChangedJob.read(JsonBody.read(body)));
    Range range = seen.choice == null ? null : ordering.range(seen.choice.revision());
    JobForm.read(document, range == null ? current.get() : range);
    return tagged(jobs.change(sender.sent(from), seen.id, version, document, range));
  }

  @DELETE
  @Path("{id}")
  @Parameter(ref = HttpHeaders.IF_MATCH)
  public void removeJob(
      @PathParam("id") String id,
      @HeaderParam(Sender.FROM) String from,
      UriInfo uri,
      HttpHeaders headers) {
    Query.none(uri);
    SavedJob seen = find(id);
    jobs.remove(sender.sent(from), seen.id, IfMatch.version(headers, seen));
  }

  @PUT
  @Path("{id}/choice")
  @Parameter(ref = HttpHeaders.IF_MATCH)
  public RestResponse<SavedJobAnswer> choose(
      @PathParam("id") String id,
      byte[] body,
      @HeaderParam(Sender.FROM) String from,
      UriInfo uri,
      HttpHeaders headers) {
    Query.none(uri);
    SavedJob seen = find(id);
    int version = IfMatch.version(headers, seen);
    ChoiceForm wish = ChoiceForm.read(JsonBody.read(body));
    return tagged(jobs.choose(sender.sent(from), seen.id, version, current.get(), wish));
  }

  @DELETE
  @Path("{id}/choice")
  @Parameter(ref = HttpHeaders.IF_MATCH)
  public RestResponse<SavedJobAnswer> unchoose(
      @PathParam("id") String id,
      @HeaderParam(Sender.FROM) String from,
      UriInfo uri,
      HttpHeaders headers) {
    Query.none(uri);
    SavedJob seen = find(id);
    return tagged(jobs.unchoose(sender.sent(from), seen.id, IfMatch.version(headers, seen)));
  }

  private SavedJob find(String id) {
    return FoundJob.by(id, jobs);
  }

  private static RestResponse<SavedJobAnswer> tagged(SavedJob job) {
    return RestResponse.ResponseBuilder.ok(SavedJobAnswer.of(job))
        .header(HttpHeaders.ETAG, IfMatch.tag(job))
        .build();
  }
}
