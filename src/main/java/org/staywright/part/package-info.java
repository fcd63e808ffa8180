/** What can be bought: springs and end fittings, their offers, and the whole range as columns. */
@NullMarked
package org.staywright.part;

import org.jspecify.annotations.NullMarked;
