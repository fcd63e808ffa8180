/** Everything in the database as one file, and back: from H2 or PostgreSQL to either. */
package org.staywright.backup;
