package org.staywright.web.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.staywright.caution.fit.Cautions;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.clear.Clearing;
import org.staywright.fit.clear.HoldsFrom;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.rank.Why;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.fit.FitsAnswer;
import org.staywright.form.fit.HandCurveAnswer;
import org.staywright.form.fit.IdealAnswer;
import org.staywright.form.fit.Note;
import org.staywright.form.fit.WhyAnswer;
import org.staywright.form.fit.WhyRequest;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.CurveRequest;
import org.staywright.form.job.JobForm;
import org.staywright.form.job.JobKnobs;
import org.staywright.form.time.ChanceAnswer;
import org.staywright.form.time.ChanceRequest;
import org.staywright.form.time.MotionAnswer;
import org.staywright.form.time.MotionRequest;
import org.staywright.motion.Motion;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.api.request.JsonBody;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Preference;
import org.staywright.web.shell.ProgramMetrics;
import org.staywright.wording.CautionText;
import org.staywright.wording.FitText;

/** The range judged for a job. */
@Path("/api/v1/fits")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class FitResource {

  private final CurrentRange current;

  FitResource(CurrentRange current) {
    this.current = current;
  }

  @POST
  public FitsAnswer rank(byte[] body, UriInfo uri) {
    Query.none(uri);
    ObjectNode tree = JobForm.withDefaults(JsonBody.read(body));
    Range range = current.get();
    Job job = JobForm.read(tree, range);
    Ranking ranking = ProgramMetrics.ranking(() -> Ranking.of(range, job));
    return FitsAnswer.of(
        job,
        ranking,
        fit -> cautions(job, fit),
        new Clearing(job, range, JobKnobs.of(tree, range)),
        new HoldsFrom(range, ConditionKnobs.of(tree, range)));
  }

  static List<Note> cautions(Job job, Fit fit) {
    CautionText text = CautionText.in(Preference.now().metric().about(job.mechanism().code()));
    return Cautions.of(job, fit).stream()
        .map(caution -> new Note(caution.code(), text.sentence(caution)))
        .toList();
  }

  @POST
  @Path("curve")
  public HandCurveAnswer fitCurve(byte[] body, UriInfo uri) {
    Query.none(uri);
    CurveRequest asked = CurveRequest.read(JsonBody.read(body), current.get());
    return HandCurveAnswer.of(asked.job(), FitCurve.of(asked.job(), fit(asked)));
  }

  @POST
  @Path("motion")
  public MotionAnswer fitMotion(byte[] body, UriInfo uri) {
    Query.none(uri);
    MotionRequest asked = MotionRequest.read(JsonBody.read(body), current.get());
    Motion motion = Motion.of(asked.scene(fit(asked.of())));
    return MotionAnswer.of(asked.of().job().mechanism(), motion);
  }

  @POST
  @Path("chance")
  public ChanceAnswer fitChance(byte[] body, UriInfo uri) {
    Query.none(uri);
    ChanceRequest asked = ChanceRequest.read(JsonBody.read(body), current.get());
    Job job = asked.of().job();
    Fit fit = fit(asked.of());
    Uncertainties spreads = Uncertainties.usual(job, fit.part()).or(asked.spreads());
    return ChanceAnswer.of(Chance.of(job, fit, spreads, asked.draws(), asked.seed()), asked.seed());
  }

  /** The part in its job; a refusal where there is none or it is out. */
  private Fit fit(CurveRequest asked) {
    Range range = current.get();
    Part part =
        range
            .part(asked.partNumber())
            .orElseThrow(() -> new Refusal(fault(asked, "", "no-such-part")));
    Assessment assessment = Assessment.of(asked.job(), range, part, asked.count());
    if (assessment.rejection() != null) {
      throw new Refusal(fault(asked, assessment.rejection().code(), "part-rejected"));
    }
    return assessment.fit();
  }

  /** What would be made for a job, beside the best of the range. */
  @POST
  @Path("ideal")
  public IdealAnswer fitIdeal(byte[] body, UriInfo uri) {
    Query.none(uri);
    Range range = current.get();
    Job job = JobForm.read(JobForm.withDefaults(JsonBody.read(body)), range);
    if (!Ideal.askedOf(job)) {
      String type = job.mechanism().code();
      throw new Refusal(new Fault("#/load/type", type, "", "none-to-make"));
    }
    return IdealAnswer.of(job, Ideal.of(job, range), fit -> cautions(job, fit));
  }

  /** Why a part is where it is in the ranking, in every number asked for. */
  @POST
  @Path("why")
  public WhyAnswer fitWhy(byte[] body, UriInfo uri) {
    Query.none(uri);
    Range range = current.get();
    WhyRequest asked = WhyRequest.read(JsonBody.read(body), range);
    String number = asked.partNumber();
    Part part =
        range
            .part(number)
            .orElseThrow(() -> new Refusal(new Fault("#/partNumber", number, "", "no-such-part")));
    FitText text = FitText.in(Preference.now().metric().about(asked.job().mechanism().code()));
    return WhyAnswer.of(asked.job(), Why.of(asked.job(), range, part), text::rejection);
  }

  private static Fault fault(CurveRequest asked, String bound, String code) {
    return new Fault("#/partNumber", asked.partNumber(), bound, code);
  }
}
