package org.staywright.form.table;

import org.staywright.unit.Fault;

/** A file of rows that cannot be read on: what is wrong, and in which row. */
public final class Spoiled extends RuntimeException {

  private final transient RowFault fault;

  public Spoiled(int row, Object value, String expected, String code) {
    super(code + " in row " + row);
    fault = new RowFault(row, new Fault("", value, expected, code));
  }

  public RowFault fault() {
    return fault;
  }
}
