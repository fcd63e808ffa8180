package org.staywright.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages, one checked template each. */
@CheckedTemplate(basePath = "")
final class Templates {

  private Templates() {}

  static native TemplateInstance start(List<JobsView.Row> jobs);

  static native TemplateInstance flap(
      FormFields form, String saved, RawString view, RankingView ranking, boolean live);

  static native TemplateInstance live(FormFields form, RawString view, RankingView ranking);

  static native TemplateInstance fit(List<JobQuery.Pair> job, String back, FitView fit);

  static native TemplateInstance detail(FitView fit);

  static native TemplateInstance part(PartView part);

  static native TemplateInstance search(FormFields form, SearchView found);

  static native TemplateInstance jobs(JobsView jobs);

  static native TemplateInstance job(JobView job);

  static native TemplateInstance error(int status, String heading, String advice);
}
