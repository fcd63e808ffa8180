/** The whole range judged for a job: screened in blocks, ranked, and why a part is where it is. */
package org.staywright.fit.rank;
