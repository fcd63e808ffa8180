/** Files of rows, whatever their format, and the cells of a row. */
package org.staywright.form.table;
