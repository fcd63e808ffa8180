/** Many jobs of one file, judged in the background: entities, and leases by the database's SQL. */
package org.staywright.job.batch;
