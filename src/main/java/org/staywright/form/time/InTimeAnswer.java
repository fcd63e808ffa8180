package org.staywright.form.time;

import static org.staywright.unit.Unit.MILLIMETRE;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.time.TimeFigures;
import org.staywright.unit.Unit;

/** What a fit does in time at worst, and the requirements in time, each kept or not. */
public record InTimeAnswer(
    double stopSpeedMmPerS,
    double stopEnergyJ,
    @Nullable Double openingTimeS,
    double peakMountLoadN,
    boolean choked,
    TimeFigures.Failing whenOneFails,
    @Nullable Double failedEndTimeS,
    double failedSpeedMmPerS,
    double failedEnergyJ,
    double failedHandN,
    List<KeptAnswer> requirements) {

  /** One requirement in time. */
  public record KeptAnswer(
      @Schema(enumeration = {"max-stop-speed", "max-stop-energy", "max-opening-time"}) String code,
      double most,
      @Nullable Double has,
      String unit,
      boolean met,
      SpringState spring,
      LoadState load) {

    static KeptAnswer of(Kept kept) {
      Unit unit = kept.criterion().unit(null);
      return new KeptAnswer(
          "max-" + kept.criterion().code(),
          unit.of(kept.needed()),
          unit.of(kept.has()),
          unit.symbol(),
          kept.met(),
          kept.corner().spring(),
          kept.corner().load());
    }
  }

  public static InTimeAnswer of(TimeFigures figures, Requirements asked) {
    return new InTimeAnswer(
        MILLIMETRE.of(figures.opening().stopSpeed().value()),
        figures.opening().stopEnergy().value(),
        figures.opening().time().value(),
        figures.peakLoad(),
        figures.choked(),
        figures.failing(),
        figures.failingTime(),
        MILLIMETRE.of(figures.failingSpeed()),
        figures.failingEnergy(),
        Math.max(0, figures.failedForce()),
        figures.opening().kept(asked).stream().map(KeptAnswer::of).toList());
  }
}
