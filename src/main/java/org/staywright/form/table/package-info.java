/** Rows and cells: what files and lists have in common. */
package org.staywright.form.table;
