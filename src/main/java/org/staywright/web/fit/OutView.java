package org.staywright.web.fit;

import java.util.List;
import org.staywright.web.query.JobQuery;

/**
 * A part that is out for a job.
 *
 * @param path of the bench that the job is described on
 * @param count of equal springs, as typed
 * @param partNumber of the spring, as typed
 * @param reason why, in words
 * @param possible whether it can be ordered for it all the same
 * @param pick for the button that does, "" where no part has that number
 * @param job that it is for
 * @param back address of the ranking
 */
public record OutView(
    String path,
    String count,
    String partNumber,
    String reason,
    boolean possible,
    String pick,
    List<JobQuery.Pair> job,
    String back) {

  public static OutView of(JobQuery query, AskedPart judged) {
    String[] sides = judged.asked().split("x", 2);
    return new OutView(
        query.bench().path(),
        sides[0],
        sides.length > 1 ? sides[1].replace("!", "") : "",
        judged.reason(),
        judged.possible(),
        judged.pick() == null ? "" : judged.pick().toString().replace("!", ""),
        query.pairs(),
        query.address());
  }
}
