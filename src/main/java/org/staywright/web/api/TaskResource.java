package org.staywright.web.api;

import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.job.batch.Batches;
import org.staywright.job.task.Task;
import org.staywright.job.task.Tasks;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Prefer;
import org.staywright.web.api.request.Query;
import org.staywright.web.audit.Sender;

/** Long work: how far it is, what came of it, and its stop. */
@Path("/api/v1/tasks")
@Produces(MediaType.APPLICATION_JSON)
public class TaskResource {

  private static final String UNKNOWN = "problem.no-task";

  private final Tasks tasks;
  private final Batches batches;
  private final Sender sender;

  TaskResource(Tasks tasks, Batches batches, Sender sender) {
    this.tasks = tasks;
    this.batches = batches;
    this.sender = sender;
  }

  /** What a caller gets who would rather not wait. */
  static Response begun(Tasks tasks, Task.Work work, UriInfo uri) {
    Task task = tasks.start(progress -> new TaskAnswer.Made(work.run(progress)));
    return Response.accepted(TaskAnswer.of(task))
        .location(uri.getBaseUriBuilder().path("api/v1/tasks").path(task.id()).build())
        .header("Preference-Applied", Prefer.ASYNC)
        .build();
  }

  @GET
  @Path("{id}")
  public TaskAnswer task(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    // A batch outlives the program that began it, and so does its task.
    return batches.find(id).map(BatchResource::task).orElseGet(() -> TaskAnswer.of(find(id)));
  }

  @DELETE
  @Path("{id}")
  public void stopTask(
      @PathParam("id") String id, @HeaderParam(Sender.FROM) String from, UriInfo uri) {
    Query.none(uri);
    if (batches.find(id).isPresent()) {
      batches.stop(sender.sent(from), id);
      return;
    }
    find(id);
    tasks.stop(id);
  }

  /** Work that a page has started has no answer in JSON, and is nobody else's. */
  private Task find(String id) {
    return tasks
        .find(id)
        .filter(task -> task.result() == null || task.result() instanceof TaskAnswer.Made)
        .orElseThrow(() -> new NotThere(UNKNOWN, id));
  }
}
