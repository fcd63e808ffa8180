package org.staywright.form.table;

import org.staywright.unit.Fault;

/**
 * A fault in a file of rows.
 *
 * @param row line of the file, the first being 1
 * @param fault column, value and what would have been right
 */
public record RowFault(int row, Fault fault) {}
