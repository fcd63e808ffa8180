/**
 * Everything in the database but accounts and who did what as one file, and back: from H2 or
 * PostgreSQL to either. By JDBC: a table is copied whatever its columns, so that none is forgotten
 * here.
 */
package org.staywright.backup;
