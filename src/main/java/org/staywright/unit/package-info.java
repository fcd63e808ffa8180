/** Units, bounds and faults: what every number that crosses a boundary needs; and languages. */
@NullMarked
package org.staywright.unit;

import org.jspecify.annotations.NullMarked;
