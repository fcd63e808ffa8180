/** The whole range judged for a job: screened in blocks, ranked, and why a part is where it is. */
@NullMarked
package org.staywright.fit.rank;

import org.jspecify.annotations.NullMarked;
