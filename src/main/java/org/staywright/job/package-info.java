/** Saved jobs, the part chosen for each, and what must be ordered for it. */
package org.staywright.job;
