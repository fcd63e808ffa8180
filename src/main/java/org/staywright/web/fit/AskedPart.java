package org.staywright.web.fit;

import java.util.Optional;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.web.query.Pick;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * A part named for a job, and what came of it.
 *
 * @param job that it is for
 * @param asked part and count as sent
 * @param pick the same, null where it cannot be read or no part has that number
 * @param fit null where it is out
 * @param reason why it is out, "" where it is not
 * @param possible whether it could be ordered all the same
 */
public record AskedPart(
    Job job, String asked, Pick pick, Fit fit, String reason, boolean possible) {

  public static AskedPart of(Job job, Range range, String asked, Wording wording) {
    Pick pick = Pick.read(asked).orElse(null);
    Optional<Part> part = pick == null ? Optional.empty() : range.part(pick.partNumber());
    if (part.isEmpty()) {
      String reason = wording.text(pick == null ? "saved.judge.unreadable" : "saved.judge.unknown");
      return new AskedPart(job, asked, null, null, reason, false);
    }
    Assessment assessment = Assessment.of(job, range, part.get(), pick.count());
    Rejection rejection = assessment.rejection();
    return new AskedPart(
        job,
        asked,
        pick,
        assessment.fit(),
        rejection == null ? "" : FitText.in(wording).rejection(rejection),
        rejection != Rejection.FITTING);
  }
}
