package org.staywright.form.fit;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.MILLILITRE;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.ideal.Balance;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.spring.GasSpring;

/** The spring that would be made for a job, beside the best of the range. */
public record IdealAnswer(
    int count,
    BalanceAnswer balance,
    @Nullable MadeSpring made,
    @Nullable Room room,
    @Nullable JudgedFit stock,
    @Nullable Costs costs,
    @Nullable BareAnswer bare,
    Ideal.Advice advice) {

  /** The straight line that balances the load best. */
  public record BalanceAnswer(
      double longForceN, double shortForceN, double progression, double handRmsN) {

    static BalanceAnswer of(Balance line) {
      return new BalanceAnswer(
          line.longForce(), line.shortForce(), line.progression(), line.handRms());
    }
  }

  /** What would be made. */
  public record MadeSpring(
      double forceN,
      double forceToleranceN,
      double progression,
      double strokeMm,
      double extendedLengthMm,
      double compressedLengthMm,
      double rodDiameterMm,
      double tubeDiameterMm,
      double gasVolumeMl,
      double oilVolumeMl,
      double restPressureBar,
      MadeFit fit) {

    static @Nullable MadeSpring of(Job job, @Nullable Fit fit, Function<Fit, List<Note>> cautions) {
      if (fit == null) {
        return null;
      }
      GasSpring spring = (GasSpring) fit.part().spring();
      return new MadeSpring(
          spring.force(),
          fit.part().forceTolerance(),
          spring.progression(),
          MILLIMETRE.of(spring.stroke()),
          MILLIMETRE.of(spring.extendedLength()),
          MILLIMETRE.of(spring.compressedLength()),
          MILLIMETRE.of(spring.rodDiameter()),
          MILLIMETRE.of(spring.tubeDiameter()),
          MILLILITRE.of(spring.gasVolume()),
          MILLILITRE.of(spring.oilVolume()),
          BAR.of(spring.restPressure()),
          MadeFit.of(job, fit, cautions));
    }
  }

  /** No such part can be ordered, nor ranked: its number is empty, its score null. */
  public record MadeFit(
      int rank,
      String partNumber,
      int count,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable EndFittings fittings,
      @Schema(ref = "frame-or-moving") RodEnd rodEndAt,
      RankedFit.Verdict verdict,
      @Nullable Double score,
      @JsonUnwrapped ToldFit told,
      @JsonUnwrapped @Nullable Misses misses) {

    static MadeFit of(Job job, Fit fit, Function<Fit, List<Note>> cautions) {
      return new MadeFit(
          1,
          fit.part().number(),
          fit.count(),
          EndFittings.of(fit.rodFitting(), fit.tubeFitting()),
          fit.rodEndAt(),
          RankedFit.Verdict.of(fit),
          fit.score(),
          ToldFit.of(job, fit, 1, cautions),
          Misses.of(job, fit));
    }
  }

  /** Where there is too little. */
  public record Room(double neededMm, double hasMm) {

    static @Nullable Room of(Ideal ideal) {
      return ideal.shortfall() == null
          ? null
          : new Room(
              MILLIMETRE.of(ideal.shortfall().needed()), MILLIMETRE.of(ideal.shortfall().has()));
    }
  }

  /** What the part of the range costs the hand. */
  public record Costs(double handRmsN, double handForceN) {

    static @Nullable Costs of(Ideal ideal) {
      return ideal.costsRms() == null ? null : new Costs(ideal.costsRms(), ideal.costsMost());
    }
  }

  public static IdealAnswer of(Job job, Ideal ideal, Function<Fit, List<Note>> cautions) {
    return new IdealAnswer(
        ideal.count(),
        BalanceAnswer.of(ideal.balance()),
        MadeSpring.of(job, ideal.made(), cautions),
        Room.of(ideal),
        ideal.stock() == null ? null : JudgedFit.of(job, ideal.stock(), cautions),
        Costs.of(ideal),
        BareAnswer.of(ideal.bare()),
        ideal.advice());
  }
}
