package org.staywright.web.audit;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import org.staywright.form.Jobs;
import org.staywright.web.PageForm;
import org.staywright.web.shell.PagesTest;

/** A route that changes something, how it is asked, and the rows that this leaves. */
enum Deed {
  ADD_JOB(
      "POST /api/v1/jobs", () -> as -> json(as).body(Deed.LID).post("/api/v1/jobs"), "job.added"),
  CHANGE_JOB(
      "PUT /api/v1/jobs/{id}", () -> Job.saved().sending(Deed.LID, "PUT", ""), "job.changed"),
  REMOVE_JOB(
      "DELETE /api/v1/jobs/{id}", () -> Job.saved().sending("", "DELETE", ""), "job.removed"),
  CHOOSE(
      "PUT /api/v1/jobs/{id}/choice",
      () -> Job.saved().sending(Job.WISH, "PUT", "/choice"),
      "job.chosen"),
  ORDER(
      "PUT /api/v1/jobs/{id}/choice",
      () -> Job.chosen().sending(Job.WISH.replace(":2", ":5"), "PUT", "/choice"),
      "job.ordered"),
  UNCHOOSE(
      "DELETE /api/v1/jobs/{id}/choice",
      () -> Job.chosen().sending("", "DELETE", "/choice"),
      "job.unchosen"),
  SAVE(
      "POST /jobs",
      () -> form(PagesTest.lid().get("/flap"), "id=\"choose\"", "/jobs"),
      "job.added"),
  SAVE_AND_CHOOSE(
      "POST /jobs",
      () -> form(PagesTest.lid().get("/flap"), "id=\"choose\"", "/jobs", "pick", Job.PICK),
      "job.added",
      "job.chosen"),
  SAVE_AND_CHOOSE_ANOTHER(
      "POST /jobs",
      () -> {
        Job job = Job.chosen();
        Response again = PagesTest.lid().queryParam("saved", job.seen()).get("/flap");
        return form(again, "id=\"choose\"", "/jobs", "pick", Job.PICK);
      },
      "job.unchosen",
      "job.changed",
      "job.chosen"),
  ORDER_ON_THE_PAGE(
      "POST /jobs/{id}/choice",
      () -> {
        Job job = Job.chosen();
        String page = "/jobs/" + job.id();
        return form(given().get(page), page + "/choice\"", page + "/choice", "sets", "7");
      },
      "job.ordered"),
  COPY(
      "POST /jobs/{id}/copy",
      () -> {
        Job job = Job.chosen();
        String page = "/jobs/" + job.id();
        return form(given().get(page), page + "/copy\"", page + "/copy");
      },
      "job.added",
      "job.chosen"),
  REMOVE_ON_THE_PAGE(
      "POST /jobs/{id}/removal",
      () -> {
        String page = "/jobs/" + Job.chosen().id() + "/removal";
        return form(given().get(page), page + "\"", page);
      },
      "job.removed"),
  IMPORT(
      "POST /api/v1/stock/imports",
      () -> as -> csv(as).body(Deed.PART).post("/api/v1/stock/imports?mode=update"),
      "range.imported"),
  IMPORT_AGAIN(
      "POST /api/v1/stock/imports/{id}",
      () -> {
        String id = tried();
        return as -> json(as).post("/api/v1/stock/imports/" + id + "?mode=update");
      },
      "range.imported"),
  IMPORT_LATER(
      "POST /api/v1/stock/imports",
      () ->
          as ->
              csv(as)
                  .header("Prefer", "respond-async")
                  .body(Deed.PART)
                  .post("/api/v1/stock/imports?mode=update"),
      "range.imported"),
  IMPORT_ON_THE_PAGE(
      "POST /stock/imports/{id}/write",
      () -> {
        String plan = "/stock/imports/" + tried() + "?mode=update&friction=half&columns=";
        Response shown = given().get(plan);
        String base = PageForm.first("name=\"base\" value=\"(\\d+)\"", shown.asString());
        String write = PageForm.first("action=\"(/stock/imports/[^\"]+/write)\"", shown.asString());
        return form(shown, "/write\"", write, "base", base);
      },
      "range.imported"),
  ROLL_BACK(
      "POST /api/v1/stock/revisions/{n}/restore",
      () -> as -> json(as).post("/api/v1/stock/revisions/1/restore"),
      "range.restored"),
  ROLL_BACK_ON_THE_PAGE(
      "POST /stock/restore",
      () -> {
        json(Names.NONE).post("/api/v1/stock/revisions/1/restore");
        return form(
            given().get("/stock"), "action=\"/stock/restore\"", "/stock/restore", "revision", "1");
      },
      "range.restored"),
  PUT_BACK(
      "POST /api/v1/restore",
      () -> {
        byte[] backup = given().get("/api/v1/backup.zip").asByteArray();
        return as -> from(as).contentType("application/zip").body(backup).post("/api/v1/restore");
      },
      "everything.restored"),
  PUT_BACK_ON_THE_PAGE(
      "POST /backup/restore",
      () -> {
        byte[] backup = given().get("/api/v1/backup.zip").asByteArray();
        Response page = given().get("/backup");
        Response checked = upload(page, "backup.zip", backup, Names.NONE).post("/backup");
        PageForm form = PageForm.of(checked, "action=\"/backup/restore\"");
        // The token came with the first page.
        form.with("csrf-token", PageForm.empty(page).values().get("csrf-token").get(0));
        return sending(page, form.with("confirmed", "yes"), "/backup/restore");
      },
      "everything.restored"),
  BEGIN_BATCH(
      "POST /api/v1/batches",
      () -> as -> json(as).body("[" + Deed.LID + "]").post("/api/v1/batches"),
      "batch.begun"),
  BEGIN_BATCH_ON_THE_PAGE(
      "POST /batches",
      () -> {
        Response page = given().get("/batches");
        byte[] file = ("[" + Deed.LID + "]").getBytes(StandardCharsets.UTF_8);
        return as -> upload(page, "jobs.json", file, as).post("/batches");
      },
      "batch.begun"),
  REMOVE_BATCH(
      "DELETE /api/v1/tasks/{id}",
      () -> {
        String id = judged();
        return as -> json(as).delete("/api/v1/tasks/" + id);
      },
      "batch.removed"),
  REMOVE_BATCH_ON_THE_PAGE(
      "POST /batches/{id}/stop",
      () -> {
        String stop = "/batches/" + judged() + "/stop";
        return form(given().get(stop.replace("/stop", "")), stop + "\"", stop);
      },
      "batch.removed");

  static final String LID = Jobs.LID;

  /** Invented, as a maker's table would give it. */
  static final String PART =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "stroke_mm,extended_length_mm,force_class_n,progression,lead_time_days\n"
          + "TRY-0001,gas-spring,zinc,M8,M8,rod-down,8,18,160,380,400,1.35,5\n";

  /** All is there that the deed needs. */
  interface Prepared {
    Response send(Names as);
  }

  final String route;
  final Supplier<Prepared> prepare;
  final List<String> rows;

  Deed(String route, Supplier<Prepared> prepare, String... rows) {
    this.route = route;
    this.prepare = prepare;
    this.rows = List.of(rows);
  }

  /** A job that is saved. */
  record Job(String id, String tag) {

    static final String BEST = best();
    static final String PICK = "1x" + BEST;
    static final String WISH = "{\"partNumber\":\"" + BEST + "\",\"count\":1,\"sets\":2}";

    private static String best() {
      JsonPath fits = json(Names.NONE).body(LID).post("/api/v1/fits").jsonPath();
      return fits.getString("fits.find { it.count == 1 }.partNumber");
    }

    static Job saved() {
      Response saved = json(Names.NONE).body(LID).post("/api/v1/jobs");
      return new Job(saved.jsonPath().getString("id"), saved.header("ETag"));
    }

    static Job chosen() {
      Job job = saved();
      Response chosen = job.sending(WISH, "PUT", "/choice").send(Names.NONE);
      assertEquals(200, chosen.statusCode(), chosen::asString);
      return new Job(job.id, chosen.header("ETag"));
    }

    String path() {
      return "/api/v1/jobs/" + id;
    }

    /** As forms carry it. */
    String seen() {
      return id + "." + tag.replace("\"", "");
    }

    Prepared sending(String body, String method, String more) {
      return as -> json(as).header("If-Match", tag).body(body).request(method, path() + more);
    }
  }

  static RequestSpecification from(Names as) {
    return as.from() == null ? given() : given().header("From", as.from());
  }

  static RequestSpecification json(Names as) {
    return from(as).contentType("application/json");
  }

  static RequestSpecification csv(Names as) {
    return from(as).contentType("text/csv");
  }

  /** The form of a page with some more fields. */
  static Prepared form(Response page, String tag, String path, String... more) {
    PageForm form = PageForm.of(page, tag);
    for (int i = 0; i < more.length; i += 2) {
      form.with(more[i], more[i + 1]);
    }
    return sending(page, form, path);
  }

  private static Prepared sending(Response page, PageForm form, String path) {
    return as -> (as.by() == null ? form : form.with("by", as.by())).post(path);
  }

  private static RequestSpecification upload(Response page, String name, byte[] file, Names as) {
    RequestSpecification form =
        given()
            .redirects()
            .follow(false)
            .cookies(page.cookies())
            .multiPart("csrf-token", PageForm.empty(page).values().get("csrf-token").get(0))
            .multiPart("file", name, file, "application/octet-stream");
    return as.by() == null ? form : form.multiPart("by", as.by());
  }

  /** A file that was read and changed nothing; its id. */
  static String tried() {
    return csv(Names.NONE)
        .body(PART)
        .post("/api/v1/stock/imports?mode=update&dryRun=true")
        .jsonPath()
        .getString("id");
  }

  /** A batch that is over. */
  private static String judged() {
    Response begun = json(Names.NONE).body("[" + LID + "]").post("/api/v1/batches");
    String id = begun.jsonPath().getString("result.id");
    for (int i = 0; i < 10_000; i++) {
      if (given().get("/api/v1/batches/" + id).jsonPath().getString("state").equals("done")) {
        return id;
      }
    }
    throw new AssertionError("not judged: " + id);
  }
}
