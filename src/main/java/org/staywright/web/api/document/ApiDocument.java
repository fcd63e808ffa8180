package org.staywright.web.api.document;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import jakarta.ws.rs.core.HttpHeaders;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.eclipse.microprofile.openapi.models.security.SecurityScheme;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Shape;
import org.staywright.web.api.Allowed;
import org.staywright.web.api.request.Prefer;
import org.staywright.web.api.request.Problem;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.audit.Sender;
import org.staywright.wording.Wording;

/**
 * The OpenAPI document as the extension finds it in resources and records, and what it cannot find
 * there: what is sent, by the shapes that read it; with which problems it is refused; what it all
 * means.
 */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public final class ApiDocument implements OASFilter {

  private static final String JSON = "application/json";

  private final Wording wording = Wording.english();
  private final Map<String, APIResponse> problems = new TreeMap<>();
  private final Map<String, Method> resources =
      Allowed.methods().stream().collect(Collectors.toMap(Method::getName, Function.identity()));

  @Override
  public void filterOpenAPI(OpenAPI document) {
    document.setInfo(
        OASFactory.createInfo()
            .title("Staywright")
            .version("1")
            .description(wording.text("api.description"))
            .license(
                OASFactory.createLicense()
                    .name("Apache-2.0")
                    .url("https://www.apache.org/licenses/LICENSE-2.0")));
    document.setServers(null);
    document.setTags(null);
    signIn(document);
    Map<String, Schema> told = new TreeMap<>(document.getComponents().getSchemas());
    Schemas schemas = new Schemas(told);
    new AnswerSchemas(Allowed.methods(), schemas).tighten(told);
    Answered.TABLES.forEach(schemas::tell);
    document
        .getPaths()
        .getPathItems()
        .forEach(
            (path, item) ->
                item.getOperations()
                    .forEach((method, operation) -> complete(operation, method, path, schemas)));
    Parameter ifMatch = parameter(HttpHeaders.IF_MATCH, Parameter.In.HEADER, Schemas.text());
    document
        .getComponents()
        .schemas(told)
        .responses(problems)
        .addParameter(HttpHeaders.IF_MATCH, ifMatch.required(true));
  }

  /**
   * By a token, as the browser of somebody signed in, or not at all where there are no accounts.
   */
  private void signIn(OpenAPI document) {
    document
        .getComponents()
        .addSecurityScheme(
            "token",
            OASFactory.createSecurityScheme()
                .type(SecurityScheme.Type.HTTP)
                .scheme("bearer")
                .description(wording.text("api.security.token")))
        .addSecurityScheme(
            "session",
            OASFactory.createSecurityScheme()
                .type(SecurityScheme.Type.APIKEY)
                .in(SecurityScheme.In.COOKIE)
                .name("staywright-session")
                .description(wording.text("api.security.session")));
    document.setSecurity(
        List.of(
            OASFactory.createSecurityRequirement().addScheme("token"),
            OASFactory.createSecurityRequirement().addScheme("session"),
            OASFactory.createSecurityRequirement()));
  }

  private void complete(
      Operation operation, PathItem.HttpMethod method, String path, Schemas schemas) {
    String id = operation.getOperationId();
    operation.setSummary(wording.text("api." + id));
    Shape body = Sent.BODIES.get(id);
    if (body != null) {
      operation.getRequestBody().setContent(content(JSON, schemas.of(body)));
    }
    Shape query = Sent.QUERIES.get(id);
    if (query != null) {
      for (Field field : query.fields().values()) {
        operation.addParameter(
            parameter(field.name(), Parameter.In.QUERY, schemas.of(queried(field))));
      }
    }
    parameters(operation).stream()
        .filter(each -> Sender.FROM.equals(each.getName()))
        .forEach(header -> header.setDescription(wording.text("api.from")));
    answers(operation);
    for (int status : problems(operation, method, path)) {
      String code = Integer.toString(status);
      problems.computeIfAbsent(code, this::problem);
      APIResponse there = OASFactory.createAPIResponse().ref("#/components/responses/" + code);
      operation.getResponses().addAPIResponse(code, there);
    }
  }

  private APIResponse problem(String status) {
    return OASFactory.createAPIResponse()
        .description(wording.text("problem.title." + status))
        .content(content(Problem.TYPE, Schemas.named("Problem")));
  }

  private void answers(Operation operation) {
    APIResponses responses = operation.getResponses();
    prefer(operation)
        .ifPresent(
            header -> {
              header.setSchema(Schemas.text().addEnumeration(Prefer.ASYNC));
              responses.addAPIResponse(
                  "202",
                  OASFactory.createAPIResponse()
                      .content(content(JSON, Schemas.named("TaskAnswer"))));
            });
    responses.getAPIResponses().forEach(this::describe);
  }

  private void describe(String status, APIResponse response) {
    response.setDescription(wording.text("api.status." + status));
    if (status.equals("201") || status.equals("202")) {
      response.addHeader(HttpHeaders.LOCATION, OASFactory.createHeader().schema(Schemas.text()));
    }
    if (response.getContent() == null) {
      return;
    }
    for (MediaType type : response.getContent().getMediaTypes().values()) {
      if (type.getSchema() == null) {
        type.setSchema(Schemas.text());
      }
      if (Schemas.named("SavedJobAnswer").getRef().equals(type.getSchema().getRef())) {
        response.addHeader(HttpHeaders.ETAG, OASFactory.createHeader().schema(Schemas.text()));
      }
    }
  }

  /** What every request of a kind may be refused with, and what its resource adds to that. */
  private Set<Integer> problems(Operation operation, PathItem.HttpMethod method, String path) {
    Set<Integer> problems = new TreeSet<>(Set.of(400, 401, 403));
    if (path.contains("{")) {
      problems.add(404);
    }
    if (!operation.getResponses().hasAPIResponse("204")) {
      problems.add(406);
    }
    if (guarded(operation)) {
      problems.addAll(Set.of(412, 428));
    }
    if (method == PathItem.HttpMethod.POST || method == PathItem.HttpMethod.PUT) {
      problems.add(415);
    }
    if (operation.getRequestBody() != null) {
      problems.addAll(Set.of(413, 422));
    }
    Refuses more = resources.get(operation.getOperationId()).getAnnotation(Refuses.class);
    if (more != null) {
      IntStream.of(more.value()).forEach(problems::add);
    }
    return problems;
  }

  private static boolean guarded(Operation operation) {
    return parameters(operation).stream()
        .anyMatch(each -> each.getRef() != null && each.getRef().endsWith(HttpHeaders.IF_MATCH));
  }

  private static Optional<Parameter> prefer(Operation operation) {
    return parameters(operation).stream()
        .filter(each -> Prefer.HEADER.equals(each.getName()))
        .findFirst();
  }

  private static List<Parameter> parameters(Operation operation) {
    return operation.getParameters() == null ? List.of() : operation.getParameters();
  }

  /** A parameter has no null: it is left out instead. */
  private static Field queried(Field field) {
    return new Field(field.name(), field.kind(), true, field.fallback(), null);
  }

  private static Parameter parameter(String name, Parameter.In in, Schema schema) {
    return OASFactory.createParameter().name(name).in(in).schema(schema);
  }

  private static Content content(String type, Schema schema) {
    return OASFactory.createContent()
        .addMediaType(type, OASFactory.createMediaType().schema(schema));
  }
}
