package org.staywright.web.api.document;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import org.staywright.form.fit.FitFigures;
import org.staywright.form.fit.FitsAnswer;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.JobKnobs;
import org.staywright.form.job.JobShape;
import org.staywright.form.job.LoadShape;
import org.staywright.form.part.PartAnswer;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;
import org.staywright.form.time.ChanceAnswer;
import org.staywright.job.SavedJobAnswer;

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
          entry("holds-from-path", new Choice(ConditionKnobs.paths(), List.of())));

  /** Members of a record one by one, in the place of its map. */
  static final Map<Class<?>, Shape> MEMBERS =
      Map.of(PartAnswer.class, PartAnswer.NUMBERS, SavedJobAnswer.class, JobShape.JOB);

  private Answered() {}
}
