/** What swapping an old spring calls for. */
@NullMarked
package org.staywright.caution.replace;

import org.jspecify.annotations.NullMarked;
