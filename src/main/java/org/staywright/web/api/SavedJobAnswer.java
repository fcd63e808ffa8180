package org.staywright.web.api;

import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.staywright.job.JobJson;
import org.staywright.job.SavedJob;

/** A saved job as it is sent: the document it was saved as, and what was added then. */
@Schema(name = "saved-job")
public record SavedJobAnswer(@JsonValue ObjectNode tree) {

  static SavedJobAnswer of(SavedJob job) {
    return new SavedJobAnswer(JobJson.of(job));
  }
}
