/** What a part calls for in its job, and all rules in one list, the nearest harm first. */
@NullMarked
package org.staywright.caution.fit;

import org.jspecify.annotations.NullMarked;
