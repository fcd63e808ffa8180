/** A stock file as rows, whatever its format, and what is refused of it. */
package org.staywright.stock.file;
