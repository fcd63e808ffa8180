package org.staywright.form.batch;

import static com.fasterxml.jackson.annotation.JsonInclude.Include.NON_NULL;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.fit.JudgedFit;
import org.staywright.form.schema.GasBeyond;
import org.staywright.gas.BeyondEquation;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * What comes of one job of many: how much of the range does, and the best of it.
 *
 * @param row of the file
 * @param best that fits, else the nearest miss
 * @param faults of a job that could be read and yet not be computed
 * @param beyond where the gas would leave what can be computed
 */
public record BatchResultAnswer(
    int row,
    String name,
    JobVerdict verdict,
    @JsonInclude(NON_NULL) @Nullable Integer fitsTotal,
    @JsonInclude(NON_NULL) @Nullable Integer nearTotal,
    @JsonInclude(NON_NULL) @Nullable Boolean springNeeded,
    @JsonInclude(NON_NULL) @Nullable JudgedFit best,
    @JsonInclude(NON_NULL) @Nullable List<JobFault> faults,
    @JsonInclude(NON_NULL) @Nullable GasBeyond beyond) {

  /** As they come. */
  public record BatchResultsAnswer(List<BatchResultAnswer> items) {}

  /** What the range has for a job. */
  public enum JobVerdict {
    FITS,
    NEAR,
    NONE,
    REFUSED
  }

  /** What is wrong with a job. */
  public record JobFault(String column, String value, String expected, String code) {

    private static JobFault of(Fault fault) {
      return new JobFault(
          fault.where(), String.valueOf(fault.value()), fault.bound(), fault.code());
    }
  }

  public static BatchResultAnswer of(int row, String name, Job job, Ranking ranking) {
    Fit best =
        Stream.concat(ranking.fits().stream(), ranking.near().stream()).findFirst().orElse(null);
    JobVerdict verdict =
        best == null
            ? JobVerdict.NONE
            : ranking.fits().isEmpty() ? JobVerdict.NEAR : JobVerdict.FITS;
    return new BatchResultAnswer(
        row,
        name,
        verdict,
        ranking.fitsTotal(),
        ranking.nearTotal(),
        ranking.springNeeded(),
        best == null ? null : JudgedFit.of(job, best, fit -> List.of()),
        null,
        null);
  }

  public static BatchResultAnswer refused(int row, String name, Refusal refusal) {
    List<JobFault> faults = refusal.faults().stream().map(JobFault::of).toList();
    return refused(row, name, faults, null);
  }

  public static BatchResultAnswer beyond(int row, String name, BeyondEquation gas) {
    return refused(row, name, null, GasBeyond.of(gas));
  }

  private static BatchResultAnswer refused(
      int row, String name, @Nullable List<JobFault> faults, @Nullable GasBeyond beyond) {
    return new BatchResultAnswer(
        row, name, JobVerdict.REFUSED, null, null, null, null, faults, beyond);
  }
}
