package org.staywright.form.fit;

import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Bare;

/** The load without a spring. */
public record BareAnswer(
    double handOpenWorstN,
    double handCloseWorstN,
    double handRmsN,
    double holdOpenN,
    double dropJ) {

  /** Null under a seat. */
  static @Nullable BareAnswer of(@Nullable Bare bare) {
    return bare == null
        ? null
        : new BareAnswer(
            bare.hand().openWorst().value(),
            bare.hand().closeWorst().value(),
            bare.hand().rms(),
            bare.hold().open().value(),
            bare.drop());
  }
}
