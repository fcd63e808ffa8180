package org.staywright.web.api.request;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.staywright.unit.Fault;
import org.staywright.wording.Wording;

/** What went wrong, as RFC 9457 has it. */
public final class Problem {

  public static final String TYPE = "application/problem+json";

  /** Faults listed at most; more are as good as a wrong file. */
  private static final int MOST = 1000;

  /** A value is repeated as it was typed: 500, not 5E+2. */
  private static final ObjectMapper JSON =
      JsonMapper.builder().disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

  private final Wording wording;
  private final ObjectNode body = JsonNodeFactory.instance.objectNode();
  private final int status;

  private Problem(Wording wording, int status, String detail) {
    this.wording = wording;
    this.status = status;
    body.put("type", "about:blank");
    body.put("title", wording.text("problem.title." + status));
    body.put("status", status);
    body.put("detail", detail);
  }

  /** A problem whose status says it all. */
  public static Problem of(Wording wording, int status) {
    return new Problem(wording, status, wording.text("problem.detail." + status));
  }

  /** A problem with a sentence of its own. */
  public static Problem of(Wording wording, int status, String key, Object... values) {
    return new Problem(wording, status, wording.text(key, values));
  }

  /** A problem whose sentence is made already. */
  public static Problem saying(int status, String sentence, Wording wording) {
    return new Problem(wording, status, sentence);
  }

  /** Lists faults by their JSON pointers. */
  public Problem at(List<Fault> faults) {
    return listing(faults, "pointer");
  }

  /** Lists faults by the parameters they are in. */
  public Problem in(List<Fault> faults) {
    return listing(faults, "parameter");
  }

  /** Adds what else is to be told. */
  public Problem with(ObjectNode more) {
    body.setAll(more);
    return this;
  }

  private Problem listing(List<Fault> faults, String place) {
    ArrayNode errors = body.putArray("errors");
    for (Fault fault : faults.subList(0, Math.min(MOST, faults.size()))) {
      ObjectNode error = errors.addObject();
      error.put(place, fault.where());
      error.set("value", JSON.valueToTree(fault.value()));
      error.put("bound", fault.bound());
      error.put("code", fault.code());
      error.put("detail", wording.fault(fault));
    }
    return this;
  }

  public Response response() {
    return Response.status(status).type(TYPE).entity(body.toString()).build();
  }
}
