package org.staywright.web.fit;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import org.staywright.web.query.Bench;
import org.staywright.web.query.JobQuery;

/** The pages and pieces about one part for a job, which the benches show. */
@CheckedTemplate(basePath = "fit")
public final class FitTemplates {

  private FitTemplates() {}

  public static native TemplateInstance fit(
      Bench bench, List<JobQuery.Pair> job, String back, FitView fit);

  public static native TemplateInstance detail(Bench bench, FitView fit);

  public static native TemplateInstance rows(Bench bench, List<FitRow> rows, boolean near);

  public static native TemplateInstance why(String path, WhyView why);

  public static native TemplateInstance rejected(RejectedView out);

  public static native TemplateInstance ideal(
      IdealView ideal, List<JobQuery.Pair> job, String back);

  public static native TemplateInstance out(OutView out);
}
