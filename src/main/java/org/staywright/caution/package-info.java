/** Rules from figures to cautions: codes, severities and figures, no text. */
@NullMarked
package org.staywright.caution;

import org.jspecify.annotations.NullMarked;
