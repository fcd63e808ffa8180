package org.staywright.web.api.document;

import static java.util.Map.entry;

import java.util.Map;
import org.staywright.form.batch.BatchJson;
import org.staywright.form.fit.FitAnswer;
import org.staywright.form.fit.IdealJson;
import org.staywright.form.fit.WhyJson;
import org.staywright.form.job.JobAnswer;
import org.staywright.form.mounts.FoundAnswer;
import org.staywright.form.order.ListAnswer;
import org.staywright.form.part.RangeAnswer;
import org.staywright.form.replace.ReplacementShape;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.form.stock.BackupShape;
import org.staywright.form.stock.StockShape;
import org.staywright.form.time.InTimeAnswer;

/** What tables describe of the answers; all else the extension finds in their records. */
final class Answered {

  /** By the names that records refer to, {@code @Schema(ref = "part-number")}. */
  static final Map<String, Kind> TABLES = Map.ofEntries(
          entry("part-number", AnswerShape.PART_NUMBER),
          entry(JobAnswer.SAVED_JOB.name(), JobAnswer.SAVED_JOB));

  /** Answers that are no records yet, by the id of the operation. */
  static final Map<String, Shape> SHAPES =
      Map.ofEntries(
          entry("listParts", AnswerShape.page(RangeAnswer.PART)),
          entry("part", RangeAnswer.PART),
          entry("partCurve", RangeAnswer.PART_CURVE),
          entry("lockedCurve", RangeAnswer.LOCKED_CURVE),
          entry("listFittings", AnswerShape.page(RangeAnswer.FITTING)),
          entry("fitting", RangeAnswer.FITTING),
          entry("rank", FitAnswer.FITS),
          entry("fitIdeal", IdealJson.IDEAL),
          entry("fitWhy", WhyJson.ANSWER),
          entry("fitCurve", FitAnswer.HAND_CURVE),
          entry("replace", ReplacementShape.REPLACEMENTS),
          entry("fitMotion", InTimeAnswer.MOTION),
          entry("fitChance", InTimeAnswer.CHANCE),
          entry("findMounts", FoundAnswer.FOUND),
          entry("listBatches", BatchJson.BATCHES),
          entry("batch", BatchJson.BATCH),
          entry("batchResults", BatchJson.RESULTS),
          entry("importStock", StockShape.IMPORTED),
          entry("importAgain", StockShape.IMPORTED),
          entry("revisions", StockShape.REVISIONS),
          entry("revisionChanges", StockShape.DIFFERENCE),
          entry("restoreRevision", StockShape.RESTORED),
          entry("restoreBackup", BackupShape.RESTORED),
          entry("partsList", ListAnswer.PARTS_LIST),
          entry("commonList", ListAnswer.PARTS_LIST));

  private Answered() {}
}
