/** What must be ordered for jobs, line by line. */
package org.staywright.job.order;
