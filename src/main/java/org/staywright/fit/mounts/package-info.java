/** Mounts and part found together in zones. */
@NullMarked
package org.staywright.fit.mounts;

import org.jspecify.annotations.NullMarked;
