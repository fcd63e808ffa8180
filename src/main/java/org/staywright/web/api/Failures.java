package org.staywright.web.api;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.util.Locale;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.staywright.database.Unreachable;
import org.staywright.form.schema.GasBeyond;
import org.staywright.form.schema.Unreadable;
import org.staywright.gas.BeyondEquation;
import org.staywright.job.Stale;
import org.staywright.job.task.Tasks;
import org.staywright.stock.Overtaken;
import org.staywright.unit.Refusal;
import org.staywright.web.api.request.BadQuery;
import org.staywright.web.api.request.IfMatch;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Problem;
import org.staywright.web.fit.BeyondWords;
import org.staywright.web.shell.ErrorPages;
import org.staywright.web.shell.Preference;
import org.staywright.web.shell.ProgramMetrics;
import org.staywright.wording.Wording;

/** Turns what is thrown into answers. */
public final class Failures {

  private static final Logger LOG = Logger.getLogger(Failures.class);

  @ServerExceptionMapper
  public Response faulty(Refusal refusal) {
    return Problem.of(wording(), 422).at(refusal.faults(), wording()).response();
  }

  @ServerExceptionMapper
  public Response beyondEquation(BeyondEquation gas, UriInfo uri) {
    String path = uri.getPath();
    String asked = path.substring(path.lastIndexOf('/') + 1);
    GasBeyond beyond = GasBeyond.of(gas);
    if (!path.startsWith("/api")) {
      String advice = BeyondWords.of(beyond, asked, Preference.now().wording());
      return Response.status(422).entity(ErrorPages.page(422, advice)).build();
    }
    String sentence = BeyondWords.of(beyond, asked, wording());
    return Problem.saying(422, sentence, wording()).by(beyond).response();
  }

  @ServerExceptionMapper
  public Response unreadable(Unreadable unreadable) {
    return Problem.of(
            wording(),
            400,
            "problem.not-json",
            Integer.toString(unreadable.line()),
            Integer.toString(unreadable.column()))
        .response();
  }

  @ServerExceptionMapper
  Response badQuery(BadQuery bad) {
    return Problem.of(wording(), bad.status(), "problem.bad-query")
        .in(bad.faults(), wording())
        .response();
  }

  @ServerExceptionMapper
  Response notThere(NotThere missing) {
    return Problem.of(wording(), 404, missing.key(), missing.name()).response();
  }

  @ServerExceptionMapper
  Response busy(Tasks.Busy busy) {
    Response problem = Problem.of(wording(), 503).response();
    problem.getHeaders().putSingle(HttpHeaders.RETRY_AFTER, "10");
    return problem;
  }

  @ServerExceptionMapper
  Response stale(Stale stale) {
    return Problem.of(wording(), 412).response();
  }

  @ServerExceptionMapper
  Response overtaken(Overtaken other) {
    return Problem.of(wording(), 409).response();
  }

  @ServerExceptionMapper
  Response unconditional(IfMatch.Unconditional change) {
    return Problem.of(wording(), 428).response();
  }

  @ServerExceptionMapper
  public Response refusedByHttp(WebApplicationException thrown, UriInfo uri) {
    Response given = thrown.getResponse();
    if (!uri.getPath().startsWith("/api") || given.getStatus() < 400) {
      return given;
    }
    Response problem = Problem.of(wording(), known(given.getStatus())).response();
    given.getHeaders().forEach((name, values) -> copy(problem, name, values.get(0)));
    if (given.getStatus() == 405) {
      problem.getHeaders().putSingle(HttpHeaders.ALLOW, Allowed.at(uri.getPath()));
    }
    return problem;
  }

  /** What HTTP adds to a status, but not the type of the body that is replaced. */
  private static void copy(Response to, String name, Object value) {
    if (!name.toLowerCase(Locale.ROOT).startsWith("content-")) {
      to.getHeaders().putSingle(name, value);
    }
  }

  private static int known(int status) {
    return switch (status) {
      case 400, 401, 403, 404, 405, 406, 409, 412, 413, 415, 422, 428, 429, 503 -> status;
      default -> status < 500 ? 400 : 500;
    };
  }

  private static Wording wording() {
    return Preference.now().metric();
  }

  /** The client went away, or sends without end. */
  @ServerExceptionMapper
  public Response brokenOff(IOException broken) {
    LOG.debug("a body broke off", broken);
    return Problem.of(wording(), 400).response();
  }

  @ServerExceptionMapper
  public Response unforeseen(Throwable thrown, UriInfo uri) {
    if (Unreachable.caused(thrown)) {
      LOG.warnf("no database at %s: %s", uri.getPath(), thrown.getMessage());
      Response problem = Problem.of(wording(), 503, "problem.no-database").response();
      problem.getHeaders().putSingle(HttpHeaders.RETRY_AFTER, "10");
      return problem;
    }
    ProgramMetrics.unforeseen();
    LOG.errorf(thrown, "unforeseen at %s", uri.getPath());
    return Problem.of(wording(), 500).response();
  }
}
