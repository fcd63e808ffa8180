/** Nitrogen as a real gas: states, isotherms and isentropes. SI throughout. */
@NullMarked
package org.staywright.gas;

import org.jspecify.annotations.NullMarked;
