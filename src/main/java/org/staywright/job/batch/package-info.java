/** Many jobs of one file, judged in the background. */
package org.staywright.job.batch;
