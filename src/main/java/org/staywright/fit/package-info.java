/** Choosing: a job, the assessment of one part for it, and the ranking of all. SI throughout. */
package org.staywright.fit;
