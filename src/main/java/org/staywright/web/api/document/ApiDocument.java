package org.staywright.web.api.document;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.staywright.form.job.JobAnswer;
import org.staywright.form.mounts.FoundAnswer;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Shape;
import org.staywright.form.stock.StockShape;
import org.staywright.web.api.PartsListResource;
import org.staywright.web.api.StockResource;
import org.staywright.web.api.request.Prefer;
import org.staywright.web.api.request.Problem;
import org.staywright.wording.Wording;

/** The OpenAPI document, made from the same shapes that the input is read with. */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public final class ApiDocument implements OASFilter {

  private static final Pattern NAME = Pattern.compile("\\{(\\w+)}");

  /** What a file may be that is sent as a body, by operation. */
  private static final Map<String, List<String>> FILES =
      Map.of(
          "importStock",
          List.of(StockResource.CSV, PartsListResource.XLSX, "application/octet-stream"),
          "addBatch",
          List.of(StockResource.CSV, PartsListResource.XLSX, "application/json"));

  private final Wording wording = Wording.english();
  private final Map<String, Schema> schemas = new LinkedHashMap<>();

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
    document.setPaths(OASFactory.createPaths());
    for (Route route : Route.ALL) {
      String path = "/api/v1" + route.path();
      PathItem item = document.getPaths().getPathItem(path);
      if (item == null) {
        item = OASFactory.createPathItem();
        document.getPaths().addPathItem(path, item);
      }
      item.setOperation(PathItem.HttpMethod.valueOf(route.method()), operation(route));
    }
    document.setComponents(OASFactory.createComponents().schemas(schemas));
  }

  private Operation operation(Route route) {
    Operation operation =
        OASFactory.createOperation()
            .operationId(route.id())
            .summary(wording.text("api." + route.id()))
            .responses(OASFactory.createAPIResponses());
    Matcher names = NAME.matcher(route.path());
    while (names.find()) {
      operation.addParameter(parameter(names.group(1), Parameter.In.PATH, text()).required(true));
    }
    if (route.query() != null) {
      for (Field field : route.query().fields().values()) {
        operation.addParameter(
            parameter(field.name(), Parameter.In.QUERY, SchemaOf.field(queried(field))));
      }
    }
    if (route.guarded()) {
      operation.addParameter(parameter("If-Match", Parameter.In.HEADER, text()).required(true));
    }
    if (FoundAnswer.FOUND.equals(route.answer()) || StockShape.IMPORTED.equals(route.answer())) {
      Schema async = text().addEnumeration(Prefer.ASYNC);
      operation.addParameter(parameter(Prefer.HEADER, Parameter.In.HEADER, async));
      operation.getResponses().addAPIResponse("202", accepted());
    }
    if (route.body() != null) {
      operation.setRequestBody(
          OASFactory.createRequestBody()
              .required(true)
              .content(content("application/json", reference(route.body()))));
    }
    List<String> files = FILES.getOrDefault(route.id(), List.of());
    if (!files.isEmpty()) {
      Content content = OASFactory.createContent();
      Schema bytes = text().format("binary");
      files.forEach(type -> content.addMediaType(type, OASFactory.createMediaType().schema(bytes)));
      operation.setRequestBody(OASFactory.createRequestBody().required(true).content(content));
    }
    operation.getResponses().addAPIResponse(Integer.toString(route.status()), success(route));
    for (int status : route.problems()) {
      operation
          .getResponses()
          .addAPIResponse(
              Integer.toString(status),
              OASFactory.createAPIResponse()
                  .description(wording.text("problem.title." + status))
                  .content(content(Problem.TYPE, reference(AnswerShape.PROBLEM))));
    }
    return operation;
  }

  private APIResponse accepted() {
    return OASFactory.createAPIResponse()
        .description(wording.text("api.status.202"))
        .content(content("application/json", reference(FoundAnswer.TASK)))
        .addHeader("Location", OASFactory.createHeader().schema(text()));
  }

  private APIResponse success(Route route) {
    APIResponse response =
        OASFactory.createAPIResponse().description(wording.text("api.status." + route.status()));
    if (route.type() != null) {
      Schema schema = route.answer() == null ? text() : reference(route.answer());
      response.setContent(content(route.type(), schema));
    }
    if (route.status() == 201 || route.status() == 202) {
      response.addHeader("Location", OASFactory.createHeader().schema(text()));
    }
    if (JobAnswer.SAVED_JOB.equals(route.answer())) {
      response.addHeader("ETag", OASFactory.createHeader().schema(text()));
    }
    return response;
  }

  /** A parameter has no null: it is left out instead. */
  private static Field queried(Field field) {
    return new Field(field.name(), field.kind(), true, field.fallback(), null);
  }

  private static Parameter parameter(String name, Parameter.In in, Schema schema) {
    return OASFactory.createParameter().name(name).in(in).schema(schema);
  }

  private Schema reference(Shape shape) {
    schemas.computeIfAbsent(shape.name(), name -> SchemaOf.kind(shape));
    return OASFactory.createSchema().ref("#/components/schemas/" + shape.name());
  }

  private static Content content(String type, Schema schema) {
    return OASFactory.createContent()
        .addMediaType(type, OASFactory.createMediaType().schema(schema));
  }

  private static Schema text() {
    return OASFactory.createSchema().addType(Schema.SchemaType.STRING);
  }
}
