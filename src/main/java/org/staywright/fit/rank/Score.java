package org.staywright.fit.rank;

import java.util.List;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Weights;
import org.staywright.part.Range;

/**
 * What the balanced score of a candidate is made of: terms from 0 to 1, the more the better.
 *
 * @param effort of the hand, 1 for none
 * @param margin to the requirements, 1 for ample
 * @param landing 1 where damping lets it arrive without speed
 * @param price of the set, 1 for the cheapest that fits
 * @param supply 1 for what is on the shelf
 * @param lost points that one spring at one side of a flap costs
 */
public record Score(
    double effort, double margin, double landing, double price, double supply, double lost) {

  /** Of fits among all that a range has for their job. */
  public static List<Score> of(Job job, Range range, List<Fit> fits) {
    Screening screening = new Screening(job, range);
    Standing standing = new Standing(job, screening.fits(), screening.near());
    Criteria criteria = Criteria.of(job);
    return fits.stream()
        .map(fit -> Candidate.of(criteria, range.row(fit.part().number()).orElseThrow(), fit))
        .map(standing::terms)
        .toList();
  }

  /** 100·Σ weight·term, less what is lost. */
  public double total(Weights weights) {
    return 100
            * (weights.effort() * effort
                + weights.margin() * margin
                + weights.landing() * landing
                + weights.price() * price
                + weights.supply() * supply)
        - lost;
  }
}
