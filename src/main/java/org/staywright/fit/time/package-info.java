/** What a fit does as it moves, and how sure it is when everything strays. */
@NullMarked
package org.staywright.fit.time;

import org.jspecify.annotations.NullMarked;
