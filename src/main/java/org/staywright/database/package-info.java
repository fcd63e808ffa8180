/**
 * Transactions by JDBC for what no entity is for, rows by the million and whole tables; the audit,
 * which is written in them; and how to tell that there is no database.
 */
package org.staywright.database;
