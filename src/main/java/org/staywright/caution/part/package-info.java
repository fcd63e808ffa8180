/** What a part calls for wherever it is used. */
@NullMarked
package org.staywright.caution.part;

import org.jspecify.annotations.NullMarked;
