/** The columns of a stock file and of a backup. */
package org.staywright.form.stock;
