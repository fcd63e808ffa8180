package org.staywright.form.part;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.part.Family;

/** What may stand in the column of families of a file of the whole stock. */
public final class FamilyColumn {

  /** Of end fittings and brackets. */
  public static final String FITTING = "fitting";

  private FamilyColumn() {}

  public static List<String> codes() {
    return Stream.concat(Arrays.stream(Family.values()).map(Family::code), Stream.of(FITTING))
        .toList();
  }
}
