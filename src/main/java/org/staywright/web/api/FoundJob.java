package org.staywright.web.api;

import org.staywright.job.Jobs;
import org.staywright.job.SavedJob;
import org.staywright.web.api.request.NotThere;

/** The job an address names. */
final class FoundJob {

  private FoundJob() {}

  static SavedJob by(String id, Jobs jobs) {
    if (!id.matches("[0-9]{1,18}")) {
      throw new NotThere("problem.no-job", id);
    }
    return jobs.find(Long.parseLong(id)).orElseThrow(() -> new NotThere("problem.no-job", id));
  }
}
