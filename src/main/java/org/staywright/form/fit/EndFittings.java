package org.staywright.form.fit;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Fitting;

/** Numbers of the end fittings of a spring. */
public record EndFittings(
    @Schema(ref = "part-number") String rodEnd, @Schema(ref = "part-number") String tubeEnd) {

  /** Null where there are none. */
  public static @Nullable EndFittings of(@Nullable Fitting rod, @Nullable Fitting tube) {
    return rod == null || tube == null ? null : new EndFittings(rod.number(), tube.number());
  }
}
