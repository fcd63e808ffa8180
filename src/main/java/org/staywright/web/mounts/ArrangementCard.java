package org.staywright.web.mounts;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.staywright.document.view.SideView;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Arrangement;
import org.staywright.fit.mounts.Sensitivity;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.web.chart.Pictures;
import org.staywright.web.fit.FitRow;
import org.staywright.web.query.JobQuery;
import org.staywright.wording.Wording;

/**
 * Mounts that were found, and the part that suits them.
 *
 * @param row the part there in short
 * @param view from the side
 * @param frame where the frame mount sits
 * @param moving where the moving mount sits
 * @param millimetre what one millimetre changes, in words
 * @param address of the bench with these mounts
 */
public record ArrangementCard(
    FitRow row,
    RawString view,
    String frame,
    String moving,
    List<String> millimetre,
    String address) {

  static List<ArrangementCard> all(
      JobQuery query, Job job, List<Arrangement> arrangements, Wording wording) {
    return IntStream.range(0, arrangements.size())
        .mapToObj(i -> of(i + 1, query, job, arrangements.get(i), wording))
        .toList();
  }

  private static ArrangementCard of(
      int rank, JobQuery query, Job job, Arrangement found, Wording wording) {
    Mounts mounts = found.mounts();
    Job there = job.at(mounts);
    Sensitivity sensitivity = found.sensitivity();
    return new ArrangementCard(
        FitRow.of(rank, there, found.fit(), wording),
        Pictures.of(SideView.of(there, found.fit(), wording)),
        point(mounts.frame(), wording),
        point(mounts.moving(), wording),
        List.of(
            millimetre(
                "mounts.millimetre.frame", Sensitivity.Gradient::frame, sensitivity, wording),
            millimetre(
                "mounts.millimetre.moving", Sensitivity.Gradient::moving, sensitivity, wording)),
        hung(query, mounts).address());
  }

  /** The most that a millimetre in any direction changes. */
  private static String millimetre(
      String key,
      Function<Sensitivity.Gradient, Point> of,
      Sensitivity sensitivity,
      Wording wording) {
    double step = MILLIMETRE.si(1);
    double reserve =
        Math.max(
            of.apply(sensitivity.compressedReserve()).distance(),
            of.apply(sensitivity.extendedReserve()).distance());
    return wording.text(
        key,
        wording.quantity(of.apply(sensitivity.handForce()).distance() * step, NEWTON, 1),
        wording.quantity(reserve * step, MILLIMETRE, 1));
  }

  private static String point(Point point, Wording wording) {
    return wording.text(
        "mounts.point",
        wording.bare(point.x(), MILLIMETRE, 1),
        wording.bare(point.y(), MILLIMETRE, 1));
  }

  private static JobQuery hung(JobQuery query, Mounts mounts) {
    return query
        .with("mounts.frameMm.x", plain(mounts.frame().x()))
        .with("mounts.frameMm.y", plain(mounts.frame().y()))
        .with("mounts.movingMm.x", plain(mounts.moving().x()))
        .with("mounts.movingMm.y", plain(mounts.moving().y()))
        .with("mounts.lateralOffsetMm", plain(mounts.lateralOffset()))
        .with("mounts.rodEndAt", mounts.rodEnd().name().toLowerCase(Locale.ROOT));
  }

  /** The very coordinate, without the noise of its conversion. */
  private static String plain(double metres) {
    return new BigDecimal(MILLIMETRE.of(metres), new MathContext(15))
        .stripTrailingZeros()
        .toPlainString();
  }
}
