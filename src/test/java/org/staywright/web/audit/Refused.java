package org.staywright.web.audit;

import static io.restassured.RestAssured.given;

import java.util.function.Supplier;
import org.staywright.web.audit.Deed.Job;
import org.staywright.web.shell.PagesTest;

/** What is asked and not done, each by a way of its own. */
enum Refused {
  STALE_CHANGE(412, () -> once(Job.saved()).sending(Deed.LID, "PUT", "")),
  STALE_CHOICE(412, () -> once(Job.saved()).sending(Job.WISH, "PUT", "/choice")),
  STALE_REMOVAL(412, () -> once(Job.saved()).sending("", "DELETE", "")),
  STALE_ORDER_ON_THE_PAGE(
      409,
      () -> {
        Job job = Job.chosen();
        String page = "/jobs/" + job.id();
        Deed.Prepared order =
            Deed.form(given().get(page), page + "/choice\"", page + "/choice", "sets", "7");
        once(job);
        return order;
      }),
  STALE_REMOVAL_ON_THE_PAGE(
      409,
      () -> {
        Job job = Job.saved();
        String page = "/jobs/" + job.id() + "/removal";
        Deed.Prepared removal = Deed.form(given().get(page), page + "\"", page);
        once(job);
        return removal;
      }),
  FAULTY_JOB(
      422,
      () ->
          as ->
              Deed.json(as)
                  .body(Deed.LID.replace("\"massKg\": 18", "\"massKg\": -1"))
                  .post("/api/v1/jobs")),
  /** The choice is dropped first and the whole is taken back then. */
  CHOICE_THAT_NO_LONGER_FITS(
      409,
      () -> {
        Job job = Job.chosen();
        return as ->
            Deed.form(
                    PagesTest.lid().queryParam("saved", job.seen()).get("/flap"),
                    "id=\"choose\"",
                    "/jobs",
                    "load.massKg",
                    "60")
                .send(as);
      }),
  FAULTY_IMPORT(
      422,
      () ->
          as ->
              Deed.csv(as)
                  .body(Deed.PART.replace(",160,", ",-5,"))
                  .post("/api/v1/stock/imports?mode=update")),
  TRIED_IMPORT(
      200,
      () ->
          as -> Deed.csv(as).body(Deed.PART).post("/api/v1/stock/imports?mode=update&dryRun=true")),
  NO_BACKUP(
      422,
      () ->
          as ->
              Deed.from(as)
                  .contentType("application/zip")
                  .body(new byte[9])
                  .post("/api/v1/restore")),
  TRIED_BACKUP(
      200,
      () -> {
        byte[] backup = given().get("/api/v1/backup.zip").asByteArray();
        return as ->
            Deed.from(as)
                .contentType("application/zip")
                .body(backup)
                .post("/api/v1/restore?dryRun=true");
      }),
  NO_SUCH_REVISION(404, () -> as -> Deed.json(as).post("/api/v1/stock/revisions/99/restore")),
  FAULTY_BATCH(422, () -> as -> Deed.json(as).body("[{}]").post("/api/v1/batches"));

  final int status;
  final Supplier<Deed.Prepared> prepare;

  Refused(int status, Supplier<Deed.Prepared> prepare) {
    this.status = status;
    this.prepare = prepare;
  }

  /** Changed by somebody else meanwhile. */
  private static Job once(Job job) {
    job.sending(Deed.LID, "PUT", "").send(Names.NONE);
    return job;
  }
}
