/**
 * The range in the database: revisions, which are entities; parts and fittings, of which there may
 * be a million and which {@link org.staywright.stock.StockRows} reads and writes by JDBC; the
 * sample range, and the columns that ranking reads.
 */
package org.staywright.stock;
