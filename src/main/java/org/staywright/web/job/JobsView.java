package org.staywright.web.job;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.staywright.job.Jobs;
import org.staywright.job.SavedJob;
import org.staywright.web.query.JobQuery;
import org.staywright.web.shell.Address;
import org.staywright.web.shell.Pages;
import org.staywright.web.shell.SeenVersion;
import org.staywright.wording.Wording;

/**
 * A page of the saved jobs.
 *
 * @param rows of this page, the newest first
 * @param pages of all
 * @param ticked on this page and on others
 */
public record JobsView(List<Row> rows, Pages pages, Set<Long> ticked) {

  /**
   * @param id of the job
   * @param name given, or a word for none
   * @param changed last
   * @param chosen part and count, "" for none
   * @param ranking address of its ranking
   * @param version as seen, named by whatever changes it
   */
  public record Row(
      Long id, String name, String changed, String chosen, String ranking, int version) {

    static Row of(SavedJob job, Wording wording) {
      return new Row(
          job.id,
          title(job, wording),
          LocalDate.ofInstant(job.changed, ZoneId.systemDefault()).toString(),
          job.choice == null ? "" : job.choice.count() + " × " + job.choice.part(),
          JobQuery.of(Jobs.document(job), SeenVersion.of(job).toString()).address(),
          job.version);
    }
  }

  static String title(SavedJob job, Wording wording) {
    return job.name.isBlank() ? wording.text("jobs.unnamed", job.id.toString()) : job.name;
  }

  static JobsView of(Jobs jobs, int asked, Set<Long> ticked, Wording wording) {
    Pages pages = Pages.of((int) jobs.count(), asked, new Address("/jobs", Map.of()));
    return new JobsView(some(jobs, pages.page() - 1, Pages.SIZE, wording), pages, ticked);
  }

  /** Those of other pages, for the form to carry along. */
  public List<Long> elsewhere() {
    return ticked.stream()
        .filter(id -> rows.stream().noneMatch(row -> row.id().equals(id)))
        .toList();
  }

  /** The first few, for the start page. */
  public static List<Row> some(Jobs jobs, int most, Wording wording) {
    return some(jobs, 0, most, wording);
  }

  private static List<Row> some(Jobs jobs, int page, int size, Wording wording) {
    return jobs.page(page, size).stream().map(job -> Row.of(job, wording)).toList();
  }
}
