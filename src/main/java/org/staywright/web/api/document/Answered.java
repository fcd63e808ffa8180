package org.staywright.web.api.document;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import org.staywright.form.batch.BatchJson;
import org.staywright.form.fit.FitFigures;
import org.staywright.form.fit.FitsAnswer;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.JobAnswer;
import org.staywright.form.job.JobKnobs;
import org.staywright.form.job.LoadShape;
import org.staywright.form.order.ListAnswer;
import org.staywright.form.part.RangeAnswer;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;
import org.staywright.form.stock.BackupShape;
import org.staywright.form.stock.StockShape;
import org.staywright.form.time.ChanceAnswer;

/** What tables describe of the answers; all else the extension finds in their records. */
final class Answered {

  /** By the names that records refer to, {@code @Schema(ref = "part-number")}. */
  static final Map<String, Kind> TABLES =
      Map.ofEntries(
          entry("part-number", AnswerShape.PART_NUMBER),
          entry("part-numbers", new Kind.Many(AnswerShape.PART_NUMBER)),
          entry("frame-or-moving", AnswerShape.END),
          entry("weak-or-strong", Choice.of("weak", "strong")),
          entry("heavy-or-light", Choice.of("heavy", "light")),
          entry("mounts", LoadShape.MOUNTS),
          entry("figures", FitFigures.SHAPE),
          entry("rejected", FitsAnswer.REJECTED),
          entry("shares", ChanceAnswer.SHARES),
          entry("change-path", new Choice(JobKnobs.paths(), List.of())),
          entry("holds-from-path", new Choice(ConditionKnobs.paths(), List.of())),
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
