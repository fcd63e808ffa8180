package org.staywright.web.api.document;

import static java.util.Map.entry;

import java.util.Map;
import org.staywright.form.batch.BatchRequest;
import org.staywright.form.fit.WhyRequest;
import org.staywright.form.job.CentreForm;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.CurveRequest;
import org.staywright.form.job.JobShape;
import org.staywright.form.mounts.MountsRequest;
import org.staywright.form.order.ListRequest;
import org.staywright.form.part.SearchShape;
import org.staywright.form.replace.ReplacementShape;
import org.staywright.form.schema.Shape;
import org.staywright.form.stock.StockShape;
import org.staywright.form.time.ChanceRequest;
import org.staywright.form.time.MotionRequest;
import org.staywright.web.api.request.ChangedJob;
import org.staywright.web.audit.ChangesQuery;

/** The shapes by which a request is read, by the id of its operation. */
final class Sent {

  static final Map<String, Shape> BODIES =
      Map.ofEntries(
          entry("rank", JobShape.JOB),
          entry("fitIdeal", JobShape.JOB),
          entry("fitWhy", WhyRequest.SHAPE),
          entry("fitCurve", CurveRequest.SHAPE),
          entry("fitMotion", MotionRequest.SHAPE),
          entry("fitChance", ChanceRequest.SHAPE),
          entry("replace", ReplacementShape.REPLACEMENT),
          entry("findMounts", MountsRequest.SHAPE),
          entry("centreOfMass", CentreForm.SHAPE),
          entry("addJob", JobShape.JOB),
          entry("changeJob", ChangedJob.SHAPE),
          entry("choose", ChoiceForm.SHAPE),
          entry("commonList", ListRequest.SHAPE),
          entry("commonListCsv", ListRequest.SHAPE),
          entry("commonListXlsx", ListRequest.SHAPE),
          entry("commonListPdf", ListRequest.SHAPE));

  static final Map<String, Shape> QUERIES =
      Map.ofEntries(
          entry("listParts", SearchShape.PARTS),
          entry("partCurve", SearchShape.CURVE),
          entry("lockedCurve", SearchShape.LOCKED_CURVE),
          entry("listFittings", SearchShape.FITTINGS),
          entry("listJobs", SearchShape.PAGES),
          entry("addBatch", BatchRequest.QUERY),
          entry("importStock", StockShape.IMPORT),
          entry("importAgain", StockShape.AGAIN),
          entry("revisionChanges", StockShape.CHANGES),
          entry("restoreBackup", StockShape.RESTORE),
          entry("listChanges", ChangesQuery.PAGE),
          entry("changesCsv", ChangesQuery.SEARCH));

  private Sent() {}
}
