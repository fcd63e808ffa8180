/** Curves, with the table that tells them in numbers. */
package org.staywright.document.chart;
