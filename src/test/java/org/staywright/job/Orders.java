package org.staywright.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.Jobs;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.JobForm;
import org.staywright.job.order.Alternate;
import org.staywright.job.order.Item;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.part.Part;
import org.staywright.part.Range;

/** Choices and lists made without a database. */
public final class Orders {

  private Orders() {}

  /** The sample lid under a name, with the best fit of a range, two sets and a spare. */
  public static Chosen lid(String name, Range range) {
    Job job = job(name);
    Fit best = Ranking.of(range, job).fits().get(0);
    return chosen(job, range, best.part().number(), best.count(), false);
  }

  /** The sample lid with the nearest part that does not fit. */
  public static Chosen nearLid(Range range) {
    Job job = job("Floor locker lid");
    Fit near = Ranking.of(range, job).near().get(0);
    return chosen(job, range, near.part().number(), near.count(), true);
  }

  /** The sample lid with a part that is out altogether. */
  public static Chosen outLid(Range range) {
    return chosen(job("Floor locker lid"), range, range.number(0), 1, true);
  }

  /** A job of any kind with the best of a range, near if nothing fits. */
  public static Chosen best(String json, Range range) {
    Job job = JobForm.read(JobForm.withDefaults(Jobs.tree(json)), range);
    Ranking ranking = Ranking.of(range, job);
    Fit best = ranking.fits().isEmpty() ? ranking.near().get(0) : ranking.fits().get(0);
    return chosen(job, range, best.part().number(), best.count(), true);
  }

  /** The same job with another part. */
  public static Chosen with(Chosen chosen, String part) {
    return chosen(chosen.job(), chosen.range(), part, chosen.choice().count(), false);
  }

  /** A choice as a client makes it. */
  static Chosen chosen(Job job, Range range, String part, int count, boolean evenIfMisfit) {
    ChoiceForm wish = new ChoiceForm(part, count, null, null, 2, 1, false, evenIfMisfit);
    return Chosen.of(job, Choosing.first(job, range, wish, Instant.EPOCH), range);
  }

  static Job job(String name) {
    ObjectNode lid = Jobs.lid().put("name", name);
    return JobForm.read(JobForm.withDefaults(lid));
  }

  public static PartsList list(Chosen... chosen) {
    return PartsList.of(List.of(chosen).stream().map(Chosen::wanted).toList());
  }

  /** A list of so many different springs of a range and nothing else. */
  public static PartsList ofLines(Range range, int lines) {
    List<OrderLine> springs =
        IntStream.range(0, lines)
            .mapToObj(row -> range.part(row))
            .map(part -> OrderLine.of(Item.of(part, 1), 3, 2, alternate(part)))
            .toList();
    return new PartsList(springs, List.of(), list(lid("Lid", range)).jobs());
  }

  private static Alternate alternate(Part part) {
    return new Alternate(part.number(), 9, 40.0, 30.0, 1.5, -2.5, "hinged-flap");
  }
}
