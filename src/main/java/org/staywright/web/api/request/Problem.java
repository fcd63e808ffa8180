package org.staywright.web.api.request;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.schema.GasBeyond;
import org.staywright.unit.Fault;
import org.staywright.wording.Wording;

/** What went wrong, as RFC 9457 has it. */
@Schema
public record Problem(
    String type,
    String title,
    int status,
    String detail,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<FaultAnswer> errors,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable GasBeyond beyond) {

  public static final String TYPE = "application/problem+json";

  /** Faults listed at most; more are as good as a wrong file. */
  private static final int MOST = 1000;

  /** A value is repeated as it was typed: 500, not 5E+2. */
  private static final ObjectMapper TYPED =
      JsonMapper.builder().disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

  /** One fault: at its JSON pointer, or in the parameter of the address. */
  public record FaultAnswer(
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String pointer,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String parameter,
      @Nullable Object value,
      String bound,
      String code,
      String detail) {}

  /** A problem whose status says it all. */
  public static Problem of(Wording wording, int status) {
    return of(wording, status, "problem.detail." + status);
  }

  /** A problem with a sentence of its own. */
  public static Problem of(Wording wording, int status, String key, Object... values) {
    return saying(status, wording.text(key, values), wording);
  }

  /** A problem whose sentence is made already. */
  public static Problem saying(int status, String sentence, Wording wording) {
    String title = wording.text("problem.title." + status);
    return new Problem("about:blank", title, status, sentence, null, null);
  }

  /** Lists faults by their JSON pointers. */
  public Problem at(List<Fault> faults, Wording wording) {
    return listing(faults, fault -> told(fault, fault.where(), null, wording));
  }

  /** Lists faults by the parameters they are in. */
  public Problem in(List<Fault> faults, Wording wording) {
    return listing(faults, fault -> told(fault, null, fault.where(), wording));
  }

  /** Tells where the gas went. */
  public Problem by(GasBeyond gas) {
    return new Problem(type, title, status, detail, errors, gas);
  }

  private Problem listing(List<Fault> faults, Function<Fault, FaultAnswer> told) {
    List<FaultAnswer> listed = faults.stream().limit(MOST).map(told).toList();
    return new Problem(type, title, status, detail, listed, beyond);
  }

  private static FaultAnswer told(
      Fault fault, @Nullable String pointer, @Nullable String parameter, Wording wording) {
    Object value = TYPED.valueToTree(fault.value());
    return new FaultAnswer(
        pointer, parameter, value, fault.bound(), fault.code(), wording.fault(fault));
  }

  public String json() {
    return AnswerJson.tree(this).toString();
  }

  public Response response() {
    return Response.status(status).type(TYPE).entity(json()).build();
  }

  /** With what else is to be told. */
  public Response response(Object more) {
    ObjectNode body = (ObjectNode) AnswerJson.tree(this);
    body.setAll((ObjectNode) AnswerJson.tree(more));
    return Response.status(status).type(TYPE).entity(body.toString()).build();
  }
}
