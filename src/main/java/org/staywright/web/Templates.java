package org.staywright.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages, one checked template each. */
@CheckedTemplate(basePath = "")
final class Templates {

  private Templates() {}

  static native TemplateInstance start(List<Way> ways, List<JobsView.Row> jobs);

  static native TemplateInstance centre(
      FormFields form, List<JobQuery.Pair> job, String back, CentrePage.Result result);

  static native TemplateInstance bench(
      Bench bench,
      JobQuery query,
      FormFields form,
      Held held,
      RankingView ranking,
      boolean live,
      List<String> misread);

  static native TemplateInstance live(
      Bench bench, JobQuery query, FormFields form, Held held, RankingView ranking);

  static native TemplateInstance step(Bench bench, Held held);

  static native TemplateInstance fit(
      Bench bench, List<JobQuery.Pair> job, String back, FitView fit);

  static native TemplateInstance mounts(
      Bench bench,
      FormFields form,
      List<JobQuery.Pair> rest,
      List<JobQuery.Pair> all,
      String back,
      Scene scene,
      MountsView found);

  static native TemplateInstance scene(Scene scene);

  static native TemplateInstance motion(
      Bench bench,
      FormFields form,
      List<JobQuery.Pair> job,
      Pick pick,
      String back,
      InTimeView time,
      MotionsView motions,
      PlayedView played,
      String beyond,
      ChanceView chance);

  static native TemplateInstance detail(Bench bench, FitView fit);

  static native TemplateInstance rows(Bench bench, List<FitRow> rows, boolean near);

  static native TemplateInstance part(PartView part);

  static native TemplateInstance search(FormFields form, SearchView found);

  static native TemplateInstance jobs(JobsView jobs);

  static native TemplateInstance job(JobView job);

  static native TemplateInstance removal(JobsView.Row job, boolean stale);

  static native TemplateInstance conflict(Conflict conflict);

  static native TemplateInstance list(CommonView common);

  static native TemplateInstance compare(CompareView compare);

  static native TemplateInstance why(String path, WhyView why);

  static native TemplateInstance rejected(RejectedView out);

  static native TemplateInstance ideal(IdealView ideal, List<JobQuery.Pair> job, String back);

  static native TemplateInstance out(OutView out);

  static native TemplateInstance replace(ReplaceFields form, LabelView label, SwapView swap);

  static native TemplateInstance replaceFlap(ReplaceFields form);

  static native TemplateInstance replaceList(ListView list, String pdf, String part);

  static native TemplateInstance stock(List<StockView.RevisionRow> revisions);

  static native TemplateInstance taken(ImportView taken);

  static native TemplateInstance columns(List<ColumnRow> columns);

  static native TemplateInstance revision(RevisionView view);

  static native TemplateInstance batches(
      List<BatchView> batches, String fault, List<StockView.Row> faults);

  static native TemplateInstance batch(BatchView batch, List<BatchView.Row> rows);

  static native TemplateInstance backup(BackupView view, boolean done, List<String> faults);

  static native TemplateInstance error(int status, String heading, String advice);
}
