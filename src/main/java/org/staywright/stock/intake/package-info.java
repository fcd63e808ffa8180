/** An import: checked whole, then taken whole. */
package org.staywright.stock.intake;
