package org.staywright.web.shell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.staywright.job.SavedJob;

/**
 * A saved job as somebody saw it, as forms and addresses carry it: {@code 12.3} is job 12 in its
 * version 3.
 *
 * @param id of the job
 * @param version it had
 */
public record SeenVersion(long id, int version) {

  private static final Pattern SPELLING = Pattern.compile("([0-9]{1,18})\\.([0-9]{1,9})");

  public static SeenVersion of(SavedJob job) {
    return new SeenVersion(job.id, job.version);
  }

  /** Empty for what was never saved. */
  public static Optional<SeenVersion> read(String text) {
    Matcher matcher = SPELLING.matcher(text);
    return matcher.matches()
        ? Optional.of(
            new SeenVersion(Long.parseLong(matcher.group(1)), Integer.parseInt(matcher.group(2))))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return id + "." + version;
  }
}
