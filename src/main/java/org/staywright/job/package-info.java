/** Saved jobs, the part chosen for each, and what must be ordered for it: entities, all of it. */
package org.staywright.job;
