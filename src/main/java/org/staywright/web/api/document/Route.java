package org.staywright.web.api.document;

import java.util.List;
import org.staywright.form.batch.BatchJson;
import org.staywright.form.fit.FitAnswer;
import org.staywright.form.fit.IdealJson;
import org.staywright.form.fit.WhyJson;
import org.staywright.form.job.CentreForm;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.CurveRequest;
import org.staywright.form.job.JobAnswer;
import org.staywright.form.job.JobShape;
import org.staywright.form.mounts.FoundAnswer;
import org.staywright.form.mounts.MountsRequest;
import org.staywright.form.order.ListAnswer;
import org.staywright.form.order.ListRequest;
import org.staywright.form.part.RangeAnswer;
import org.staywright.form.part.SearchShape;
import org.staywright.form.replace.ReplacementShape;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Shape;
import org.staywright.form.stock.BackupShape;
import org.staywright.form.stock.StockShape;
import org.staywright.form.time.ChanceRequest;
import org.staywright.form.time.InTimeAnswer;
import org.staywright.form.time.MotionRequest;
import org.staywright.web.api.BackupResource;
import org.staywright.web.api.PartsListResource;

/**
 * One address with a method, as the OpenAPI document describes it.
 *
 * @param id of the operation, and key of its summary
 * @param query parameters, null for none
 * @param body null for none
 * @param guarded whether it takes If-Match
 * @param status of success
 * @param answer its body, null where it is no JSON
 * @param type media type of the answer, null for none
 * @param problems statuses of problems
 */
record Route(
    String method,
    String path,
    String id,
    Shape query,
    Shape body,
    boolean guarded,
    int status,
    Shape answer,
    String type,
    List<Integer> problems) {

  private static final String JSON = "application/json";
  private static final String PDF = PartsListResource.PDF;

  static final List<Route> ALL =
      List.of(
          get("/parts", "listParts", SearchShape.PARTS, AnswerShape.page(RangeAnswer.PART)),
          get("/parts/{partNumber}", "part", null, RangeAnswer.PART),
          refusing(
              get(
                  "/parts/{partNumber}/curve",
                  "partCurve",
                  SearchShape.CURVE,
                  RangeAnswer.PART_CURVE)),
          refusing(
              get(
                  "/parts/{partNumber}/locked-curve",
                  "lockedCurve",
                  SearchShape.LOCKED_CURVE,
                  RangeAnswer.LOCKED_CURVE)),
          file("/parts/{partNumber}/datasheet.pdf", "datasheet", PDF),
          get(
              "/fittings",
              "listFittings",
              SearchShape.FITTINGS,
              AnswerShape.page(RangeAnswer.FITTING)),
          get("/fittings/{partNumber}", "fitting", null, RangeAnswer.FITTING),
          post("/fits", "rank", JobShape.JOB, 200, FitAnswer.FITS),
          post("/fits/ideal", "fitIdeal", JobShape.JOB, 200, IdealJson.IDEAL),
          post("/fits/why", "fitWhy", WhyJson.REQUEST, 200, WhyJson.ANSWER),
          post("/fits/curve", "fitCurve", CurveRequest.SHAPE, 200, FitAnswer.HAND_CURVE),
          post(
              "/replacements",
              "replace",
              ReplacementShape.REPLACEMENT,
              200,
              ReplacementShape.REPLACEMENTS),
          post("/fits/motion", "fitMotion", MotionRequest.SHAPE, 200, InTimeAnswer.MOTION),
          post("/fits/chance", "fitChance", ChanceRequest.SHAPE, 200, InTimeAnswer.CHANCE),
          post("/mounts", "findMounts", MountsRequest.SHAPE, 200, FoundAnswer.FOUND),
          post("/centre-of-mass", "centreOfMass", CentreForm.SHAPE, 200, CentreForm.ANSWER),
          get("/tasks/{id}", "task", null, FoundAnswer.TASK),
          new Route(
              "DELETE",
              "/tasks/{id}",
              "stopTask",
              null,
              null,
              false,
              204,
              null,
              null,
              List.of(400, 404)),
          new Route(
              "POST",
              "/batches",
              "addBatch",
              BatchJson.QUERY,
              null,
              false,
              202,
              FoundAnswer.TASK,
              JSON,
              List.of(400, 406, 413, 415, 422, 503)),
          get("/batches", "listBatches", null, BatchJson.BATCHES),
          get("/batches/{id}", "batch", null, BatchJson.BATCH),
          get("/batches/{id}/results.json", "batchResults", null, BatchJson.RESULTS),
          file("/batches/{id}/results.csv", "batchResultsCsv", "text/csv"),
          new Route(
              "POST",
              "/stock/imports",
              "importStock",
              StockShape.IMPORT,
              null,
              false,
              200,
              StockShape.IMPORTED,
              JSON,
              List.of(400, 406, 409, 413, 415, 422, 503)),
          new Route(
              "POST",
              "/stock/imports/{id}",
              "importAgain",
              StockShape.AGAIN,
              null,
              false,
              200,
              StockShape.IMPORTED,
              JSON,
              List.of(400, 404, 406, 409, 415, 422, 503)),
          file("/stock/imports/{id}/faults.csv", "importFaults", "text/csv"),
          file("/stock/export.csv", "exportStock", "text/csv"),
          file("/stock/sample.csv", "stockSample", "text/csv"),
          file("/stock/sample.xlsx", "stockSampleXlsx", PartsListResource.XLSX),
          get("/stock/revisions", "revisions", null, StockShape.REVISIONS),
          get(
              "/stock/revisions/{n}/changes",
              "revisionChanges",
              StockShape.CHANGES,
              StockShape.DIFFERENCE),
          new Route(
              "POST",
              "/stock/revisions/{n}/restore",
              "restoreRevision",
              null,
              null,
              false,
              200,
              StockShape.RESTORED,
              JSON,
              List.of(400, 404, 406, 409)),
          file("/backup.zip", "backup", BackupResource.ZIP),
          new Route(
              "POST",
              "/restore",
              "restoreBackup",
              BackupShape.QUERY,
              null,
              false,
              200,
              BackupShape.RESTORED,
              JSON,
              List.of(400, 406, 413, 415, 422, 503)),
          get("/jobs", "listJobs", SearchShape.PAGES, AnswerShape.page(JobAnswer.SAVED_JOB)),
          post("/jobs", "addJob", JobShape.JOB, 201, JobAnswer.SAVED_JOB),
          get("/jobs/{id}", "job", null, JobAnswer.SAVED_JOB),
          guarded("PUT", "/jobs/{id}", "changeJob", JobAnswer.CHANGED_JOB, 200),
          guarded("DELETE", "/jobs/{id}", "removeJob", null, 204),
          guarded("PUT", "/jobs/{id}/choice", "choose", ChoiceForm.SHAPE, 200),
          guarded("DELETE", "/jobs/{id}/choice", "unchoose", null, 200),
          get("/jobs/{id}/parts-list.json", "partsList", null, ListAnswer.PARTS_LIST),
          file("/jobs/{id}/parts-list.csv", "partsListCsv", "text/csv"),
          file("/jobs/{id}/parts-list.xlsx", "partsListXlsx", PartsListResource.XLSX),
          file("/jobs/{id}/parts-list.pdf", "partsListPdf", PDF),
          file("/jobs/{id}/quotation-request.pdf", "quotationRequest", PDF),
          file("/jobs/{id}/order-lines.txt", "orderLines", "text/plain"),
          file("/jobs/{id}/job-sheet.pdf", "jobSheet", PDF),
          post("/parts-lists.json", "commonList", ListRequest.SHAPE, 200, ListAnswer.PARTS_LIST),
          list("csv", "commonListCsv", "text/csv"),
          list("xlsx", "commonListXlsx", PartsListResource.XLSX),
          list("pdf", "commonListPdf", PDF));

  private static Route get(String path, String id, Shape query, Shape answer) {
    List<Integer> problems = path.contains("{") ? List.of(400, 404, 406) : List.of(400, 406);
    return new Route("GET", path, id, query, null, false, 200, answer, JSON, problems);
  }

  /** A query that can be read and yet ask for what cannot be computed. */
  private static Route refusing(Route route) {
    return new Route(
        route.method,
        route.path,
        route.id,
        route.query,
        null,
        false,
        route.status,
        route.answer,
        route.type,
        List.of(400, 404, 406, 422));
  }

  private static Route file(String path, String id, String type) {
    return new Route("GET", path, id, null, null, false, 200, null, type, List.of(400, 404, 406));
  }

  private static Route post(String path, String id, Shape body, int status, Shape answer) {
    return new Route(
        "POST",
        path,
        id,
        null,
        body,
        false,
        status,
        answer,
        JSON,
        List.of(400, 406, 413, 415, 422));
  }

  /** One list for several jobs as a file. */
  private static Route list(String ending, String id, String type) {
    Route json = post("/parts-lists." + ending, id, ListRequest.SHAPE, 200, null);
    return new Route("POST", json.path, id, null, json.body, false, 200, null, type, json.problems);
  }

  private static Route guarded(String method, String path, String id, Shape body, int status) {
    List<Integer> problems =
        body == null
            ? List.of(400, 404, 412, 428)
            : List.of(400, 404, 406, 412, 413, 415, 422, 428);
    Shape answer = status == 204 ? null : JobAnswer.SAVED_JOB;
    return new Route(
        method, path, id, null, body, true, status, answer, answer == null ? null : JSON, problems);
  }
}
