/** What stands in for an old spring: from what can be measured of it to the parts of the range. */
@NullMarked
package org.staywright.fit.replace;

import org.jspecify.annotations.NullMarked;
