/** Transactions, whatever the database, and how to tell that there is none. */
package org.staywright.database;
