package org.staywright.web;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.document.Drawing;
import org.staywright.document.ForceChart;
import org.staywright.document.HandForceChart;
import org.staywright.document.MeasuringView;
import org.staywright.document.OverlayChart;
import org.staywright.document.SideView;
import org.staywright.document.Sparkline;
import org.staywright.document.SpringOutline;
import org.staywright.document.Svg;
import org.staywright.fit.Fit;
import org.staywright.fit.FitCurve;
import org.staywright.fit.Job;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Part;
import org.staywright.wording.Wording;

/** Drawings as the pages take them in: SVG that needs no escaping, as its writer escapes. */
final class Pictures {

  private Pictures() {}

  static RawString sideView(Job job, Fit fit, Wording wording) {
    return of(SideView.of(job, fit, wording));
  }

  static RawString whereToMeasure(Wording wording) {
    return of(MeasuringView.spring(wording));
  }

  static RawString whereItHangs(Wording wording) {
    return of(MeasuringView.places(wording));
  }

  static RawString forces(Part part, Wording wording) {
    return of(ForceChart.withFastLimit(part, wording));
  }

  static RawString handForces(Job job, Fit fit, Wording wording) {
    return of(
        HandForceChart.of(
            FitCurve.of(job, fit),
            job.mechanism().kind(),
            job.requirements().maxHandForce(),
            wording));
  }

  /** Null where there is none, or their travels are of different kinds. */
  static RawString overlay(List<Rival> rivals, Wording wording) {
    List<Mechanism.Kind> kinds =
        rivals.stream().map(rival -> rival.job().mechanism().kind()).distinct().toList();
    if (kinds.size() != 1) {
      return null;
    }
    List<Double> limits =
        rivals.stream().map(rival -> rival.job().requirements().maxHandForce()).distinct().toList();
    return of(
        OverlayChart.of(
            rivals.stream()
                .map(
                    each ->
                        new OverlayChart.Line(each.letter(), FitCurve.of(each.job(), each.fit())))
                .toList(),
            kinds.get(0),
            limits.size() == 1 ? limits.get(0) : null,
            wording));
  }

  static RawString sparkline(Job job, Fit fit, Wording wording) {
    return of(Sparkline.of(FitCurve.of(job, fit), job.requirements().maxHandForce(), wording));
  }

  static RawString outline(Part part, Wording wording) {
    return of(SpringOutline.of(part, wording));
  }

  static RawString of(Drawing drawing) {
    return new RawString(Svg.of(drawing));
  }
}
