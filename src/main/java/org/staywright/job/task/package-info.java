/** Long work, its progress, and how it is stopped. */
package org.staywright.job.task;
