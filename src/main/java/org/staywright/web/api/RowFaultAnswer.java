package org.staywright.web.api;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.staywright.form.table.RowFault;
import org.staywright.wording.Wording;

/**
 * What is wrong with a cell of a file.
 *
 * @param value as it stands there
 * @param detail the mend, in a sentence
 */
public record RowFaultAnswer(
    int row, String column, @Nullable String value, String expected, String code, String detail) {

  static List<RowFaultAnswer> all(List<RowFault> faults, Wording wording) {
    return faults.stream().map(each -> of(each, wording)).toList();
  }

  private static RowFaultAnswer of(RowFault found, Wording wording) {
    return new RowFaultAnswer(
        found.row(),
        found.fault().where(),
        Objects.toString(found.fault().value(), null),
        found.fault().bound(),
        found.fault().code(),
        wording.fault(found.fault()));
  }
}
