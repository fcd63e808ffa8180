package org.staywright.web.api.request;

import jakarta.ws.rs.core.HttpHeaders;
import java.util.stream.Stream;
import org.staywright.job.SavedJob;
import org.staywright.job.Stale;

/** Versions of a job as entity tags (RFC 9110, 8.8.3 and 13.1.1). */
public final class IfMatch {

  private IfMatch() {}

  public static String tag(SavedJob job) {
    return "\"" + job.version + "\"";
  }

  /** The version a change was made from: the job's own, or the change is refused. */
  public static int version(HttpHeaders headers, SavedJob job) {
    String header = headers.getHeaderString(HttpHeaders.IF_MATCH);
    if (header == null) {
      throw new Unconditional();
    }
    if (Stream.of(header.split(",")).map(String::strip).noneMatch(t -> matches(t, job))) {
      throw new Stale();
    }
    return job.version;
  }

  private static boolean matches(String tag, SavedJob job) {
    return tag.equals("*") || tag.equals(tag(job));
  }

  /** Thrown where a change names no version. */
  public static final class Unconditional extends RuntimeException {}
}
